using Panside.Guide.Lines;
using Panside.Practice.Physics;

namespace Panside.Practice.Simulation;

/// <summary>What one truly sees and smells at the simulated rig, in the words of the observations.</summary>
public static class Sights
{
    /// <summary>What is seen of a kind now.</summary>
    public static string Of(PracticeRig rig, ObservationName name) => name.Code switch
    {
        "boil" => Boil(rig.Makeup, rig.Truth),
        "coals" => Coals(rig.Makeup, rig.Truth),
        "gradient" => Gradient(rig.Makeup, rig.Truth),
        "foam" => rig.Truth.Foam switch { >= 1 => "over", > 0.6 => "rising", _ => "low" },
        _ => rig.Truth.Smoke > 0.05 ? "scorched" : "sweet",
    };

    /// <summary>By the steam of the boil for each square meter: no source, calibrated to what the words say.</summary>
    internal static string Boil(Makeup makeup, Truth truth) => (truth.Boil / makeup.Area) switch
    {
        > 0.0065 => "rolling",
        > 0.0025 => "steady",
        > 0.0003 => "simmering",
        _ => "still",
    };

    /// <summary>By what is left of fuel beside the usual bed: flame over the bed counts as deep.</summary>
    internal static string Coals(Makeup makeup, Truth truth) => (makeup.World.Fuel(truth) / makeup.UsualCoals) switch
    {
        > 0.4 => "deep",
        > 0.04 => "thin",
        _ => "spent",
    };

    /// <summary>By how far the ends of the path differ beside the mean: the color goes with the sugar.</summary>
    internal static string Gradient(Makeup makeup, Truth truth)
    {
        var whole = truth.Pan.Skip(makeup.BackCells).Aggregate((a, b) => a + b);
        var contrast = (truth.Pan[^1].Fraction - truth.Pan[makeup.BackCells].Fraction) / double.Max(whole.Fraction, 1e-6);
        return contrast switch
        {
            > 0.6 => "clear",
            > 0.25 => "fading",
            _ => "gone",
        };
    }
}
