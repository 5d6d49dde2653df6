using System.Collections.Immutable;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>What this world remembers beside the practised states, kept in <see cref="Truth.Own"/> in this order.</summary>
/// <param name="BackCelsius">The brick's back, in °C; its face is <see cref="Truth.BrickCelsius"/>.</param>
/// <param name="SteelCelsius">The arch's steel sides, in °C.</param>
/// <param name="PipeCelsius">The metal of the stack, in °C.</param>
/// <param name="GasCelsius">The gas that enters the stack, over the last 20 s, in °C.</param>
/// <param name="Ash">Heat of the char whose ash still lies over the coals, in MJ.</param>
/// <param name="Radiant">Share of the pan's heat that came to it as radiation.</param>
/// <param name="BulbCelsius">The bulb of the thermometer at the draw-off, in °C.</param>
internal readonly record struct UnseenState(
    double BackCelsius, double SteelCelsius, double PipeCelsius, double GasCelsius, double Ash, double Radiant, double BulbCelsius)
{
    /// <summary>As a truth has it.</summary>
    public static UnseenState Of(Truth truth) =>
        new(truth.Own[0], truth.Own[1], truth.Own[2], truth.Own[3], truth.Own[4], truth.Own[5], truth.Own[6]);

    /// <summary>As a truth keeps it.</summary>
    public ImmutableArray<double> Kept() => [BackCelsius, SteelCelsius, PipeCelsius, GasCelsius, Ash, Radiant, BulbCelsius];
}
