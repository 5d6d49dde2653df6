namespace Panside.Reckoning.Ensemble;

/// <summary>What a run comes to, for each member.</summary>
/// <param name="count">How many members.</param>
internal sealed class RunResult(int count)
{
    /// <summary>Minutes until it boiled for the last time; 0 where it never did.</summary>
    public double[] StillMinutes { get; } = new double[count];

    /// <summary>Minutes until the last cell came to the fraction that was looked for; infinite where it never did.</summary>
    public double[] DrawMinutes { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>
    /// The least liquid that the pan had, in liters. Of two, the pan where the draw-off is, taken as if nothing came into it out of the
    /// one behind: its float can hang.
    /// </summary>
    public double[] LeastLiters { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>The least liquid that the pan behind had, in liters; infinite where there is none.</summary>
    public double[] LeastBackLiters { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>Minutes until the pan came down to <see cref="Run.LowLiters"/>, or the one behind to its own; infinite where neither did.</summary>
    public double[] LowMinutes { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>Minutes until the tank was empty; infinite where it never was.</summary>
    public double[] EmptyMinutes { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>Heat that the pan took up from fire and brick, in liters of water that it boils away; 0 without <see cref="Run.Accounts"/>.</summary>
    public double[] TakenLiters { get; } = new double[count];

    /// <summary>Heat that the air took from its surface, in the same measure; vapor and steam are not in it.</summary>
    public double[] AirLiters { get; } = new double[count];

    private static double[] Filled(int count, double value)
    {
        var array = new double[count];
        Array.Fill(array, value);
        return array;
    }
}
