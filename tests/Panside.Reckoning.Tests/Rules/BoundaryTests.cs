using System.Reflection;
using Panside.Reckoning.Properties;

namespace Panside.Reckoning.Tests.Rules;

public class BoundaryTests
{
    private static readonly string[] Spaces =
        ["Panside.Reckoning.Properties", "Panside.Reckoning.Instruments", "Panside.Reckoning.Batch"];

    private static readonly string[] Units =
        ["Fraction", "Percent", "Brix", "Baume", "KilojoulesPer", "MegajoulesPer", "JoulesPer", "Cords"];

    [Fact]
    public void A_number_that_crosses_the_boundary_has_its_unit_in_its_name()
    {
        string[] naked = [.. PublicMethods().SelectMany(NakedNumbers)];
        Assert.Empty(naked);
    }

    [Fact]
    public void The_rule_sees_the_assembly() => Assert.True(PublicMethods().Count() > 40);

    private static IEnumerable<MethodInfo> PublicMethods() => typeof(BoilingWater).Assembly.GetExportedTypes()
        .Where(t => Spaces.Contains(t.Namespace) && !t.IsEnum)
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly));

    private static IEnumerable<string> NakedNumbers(MethodInfo method)
    {
        string name = $"{method.DeclaringType!.Name}.{method.Name}";
        if (method.ReturnType == typeof(double) && !HasUnit(method.Name))
        {
            yield return $"{name} returns a naked number";
        }

        foreach (ParameterInfo parameter in method.GetParameters().Where(p => p.ParameterType == typeof(double) && !HasUnit(p.Name!)))
        {
            yield return $"{name} takes a naked {parameter.Name}";
        }
    }

    private static bool HasUnit(string name) => Units.Any(u => name.Contains(u, StringComparison.OrdinalIgnoreCase));
}
