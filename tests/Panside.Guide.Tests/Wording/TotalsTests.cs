using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Tests.Wording;

/// <summary>The totals at the end in words.</summary>
public sealed class TotalsTests
{
    [Theory]
    [InlineData(0.0, "- sap used 12 gal; no syrup drawn; wood 84 lb; left in the tank 4.7 gal.")]
    [InlineData(0.4, "- sap used 12 gal; syrup made 0.4 gal; density not known; wood 84 lb; left in the tank 4.7 gal.")]
    [InlineData(null, "- sap used 12 gal; syrup made not known; density not known; wood 84 lb; left in the tank 4.7 gal.")]
    public void Where_nothing_was_drawn_no_amount_and_no_density_of_it_are_told(double? syrup, string told)
    {
        var outcome = new Outcome(
            new(12, Unit.Gallon), syrup is { } made ? new(made, Unit.Gallon) : null, null, new(84, Unit.Pound), null, null, new(4.7, Unit.Gallon), Safe: true, [], "Done.");
        Assert.Contains(told, LinesOfText.Of([new OverLine(null, 1, outcome)]));
    }
}
