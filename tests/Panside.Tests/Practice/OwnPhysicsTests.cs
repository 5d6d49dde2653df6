using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

/// <summary>A forecast that is judged by its own model proves nothing: the practice knows no dynamics but its own.</summary>
public class OwnPhysicsTests
{
    [Fact]
    public void The_practice_refers_to_no_type_of_the_forecaster()
    {
        var spaces = Referred();
        Assert.Contains("Panside.Reckoning.Properties", spaces);
        Assert.DoesNotContain("Panside.Reckoning.Rig", spaces);
        Assert.DoesNotContain("Panside.Reckoning.Ensemble", spaces);
        Assert.DoesNotContain("Panside.Guide.Advice", spaces);
    }

    [Fact]
    public void Of_the_reckoning_only_chance_properties_and_quantities_are_shared() => Assert.Equal(
        ["Panside.Reckoning.Chance", "Panside.Reckoning.Properties", "Panside.Reckoning.Quantities"],
        Referred().Where(space => space.StartsWith("Panside.Reckoning", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

    private static HashSet<string> Referred()
    {
        using var file = File.OpenRead(typeof(PracticeRig).Assembly.Location);
        using var image = new PEReader(file);
        var metadata = image.GetMetadataReader();
        return [.. metadata.TypeReferences.Select(handle => metadata.GetString(metadata.GetTypeReference(handle).Namespace))];
    }
}
