using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Wood;

/// <summary>
/// What a kilogram of wood as fired consists of, read back from its heat: 18.7 MJ/kg of dry wood, less 2.443 MJ for each kilogram of water
/// (the practised rig's own figures, EN ISO 17225 from memory). Wood of less heat is moister wood.
/// </summary>
/// <param name="Water">Water, in kg a kilogram as fired.</param>
/// <param name="DryHeat">Heat of the dry wood, in MJ/kg.</param>
internal readonly record struct MoistWood(double Water, double DryHeat)
{
    /// <summary>Heat that a kilogram of water takes to leave as steam, in MJ.</summary>
    public const double Drying = 2.443;

    private const double HeatOfDry = 18.7;

    private const double LeastWater = 0.05;

    private const double MostWater = 0.6;

    /// <summary>Dry wood, in kg a kilogram as fired.</summary>
    public double Dry => 1 - Water;

    /// <summary>The wood of a rig.</summary>
    public static MoistWood Of(Makeup makeup)
    {
        var water = double.Clamp((HeatOfDry - makeup.WoodHeat) / (HeatOfDry + Drying), LeastWater, MostWater);
        return new(water, (makeup.WoodHeat + (Drying * water)) / (1 - water));
    }
}
