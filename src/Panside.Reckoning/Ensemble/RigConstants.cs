using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What all members of an ensemble share: sizes of the rig, water and steam today.</summary>
/// <param name="Area">Plan area of all that stands over the fire, in m².</param>
/// <param name="Cells">Cells along its path.</param>
/// <param name="ToPan">Share of the fire's heat that reaches the pan at once.</param>
/// <param name="BrickToPan">Share of the brick's heat that comes to the pan.</param>
/// <param name="BoilingCelsius">Boiling point of water today.</param>
/// <param name="BoilingKilopascals">Vapor pressure there, less that of the air.</param>
/// <param name="Latent">Heat that a liter of water takes up to boil away, in MJ.</param>
/// <param name="AirCelsius">Air over the pan.</param>
/// <param name="SapCelsius">Sap in the tank.</param>
/// <param name="FullFeed">Feed of a full boil, in liters a minute: it holds the channels apart.</param>
/// <param name="Soak">Part of the pan's share that cold brick takes up first.</param>
/// <param name="BrickEvens">The fire, in MJ a minute, beside which brick that holds one MJ is neither cold nor hot: brick that such a fire has long heated holds it.</param>
/// <param name="StillLiters">Steam below which an eye calls the boil still, in liters a minute.</param>
internal readonly record struct RigConstants(
    double Area, int Cells, double ToPan, double BrickToPan, double BoilingCelsius, double BoilingKilopascals, double Latent, double AirCelsius, double SapCelsius,
    double FullFeed, double Soak, double BrickEvens, double StillLiters)
{
    /// <summary>Heat capacity of a liter in the pan, in MJ/K: water's, which is right for thin sap and 5 % high at 30 Brix.</summary>
    public const double LiterHeat = 4.15e-3;

    /// <summary>Liters that a kilogram of dissolved sugar takes up: 0.62, the slope of the density of solutions up to 70 Brix ([S5]).</summary>
    public const double SugarLiters = 0.62;

    /// <summary>A night of the season, in °C, and its air holds all the vapor it can: no source, calibrated.</summary>
    private const double Air = 2;

    /// <summary>Sap in the shade, in °C: no source, calibrated.</summary>
    private const double Sap = 4;

    /// <summary>Cells of the pan behind, which are the first ones; 0 where there is one pan.</summary>
    public int BackCells { get; init; }

    /// <summary>The part of all water that leaves the pan where the draw-off is; 1 where there is no other.</summary>
    public double BoiledInFront { get; init; } = 1;

    /// <summary>Its part of the plan area.</summary>
    public double AreaInFront { get; init; } = 1;

    /// <summary>What the flues of the pan behind hold: as long as no more is in it, nothing goes on to the pan in front. In liters.</summary>
    public double FlueLiters { get; init; }

    /// <summary>For a rig, with water boiling at a temperature.</summary>
    public static RigConstants Of(RigDescription rig, Temperature boiling) => new(
        rig.WholeArea.SquareMeters,
        PanCells.Of(rig),
        FireConstants.Of(rig).ToPan,
        FireConstants.BrickToPan,
        boiling.Celsius,
        VaporPressure.At(boiling.Celsius) - VaporPressure.At(Air),
        Steam.LatentHeatMegajoulesPerKilogram(boiling),
        Air,
        Sap,
        rig.WholeArea.SquareMeters * (rig.ForcedDraft ? 1.02 : 0.68),
        FireConstants.Of(rig).Soak,
        1 / (FireConstants.ToBrick * BrickTime.MinutesOf(rig)),
        EyeBounds.StillBoil * rig.WholeArea.SquareMeters)
    {
        BackCells = PanCells.OfBack(rig),
        BoiledInFront = rig.BoiledInFront,
        AreaInFront = rig.PanArea / rig.WholeArea,
        FlueLiters = rig.Back?.InFlues.Liters ?? 0,
    };

    /// <summary>Liters of sap that bring a kilogram, at a sugar fraction.</summary>
    public static double KilogramsOfSap(double fraction) => 1 / (1 - ((1 - SugarLiters) * fraction));

    /// <summary>By mass. A pan that was read as all but empty holds its sugar all the same: no more than all of it is sugar.</summary>
    /// <param name="sugar">In kg.</param>
    /// <param name="liters">Of the liquid that holds it.</param>
    public static double FractionOf(double sugar, double liters) =>
        sugar > 0 ? double.Min(sugar / (liters + (sugar * (1 - SugarLiters))), 1) : 0;
}
