namespace Panside.Reckoning.Ensemble;

/// <summary>How members are run on.</summary>
internal readonly record struct Run
{
    /// <summary>Steps to take.</summary>
    public required int Steps { get; init; }

    /// <summary>Minutes of a step. Up to a minute the cells move on as well; longer steps are for heat and water alone.</summary>
    public double StepMinutes { get; init; }

    /// <summary>Heat of the wood that goes in, in MJ a minute, evenly; 0 with no more wood.</summary>
    public double WoodMegajoules { get; init; }

    /// <summary>Liters that the float holds the pan at; 0 without feed.</summary>
    public double HeldLiters { get; init; }

    /// <summary>Whether the feed ends with what is in the tank.</summary>
    public bool TankEnds { get; init; }

    /// <summary>Sugar fraction by mass at which the draw-off is looked for; 1 where it is not.</summary>
    public double DrawFraction { get; init; }
}

/// <summary>What a run comes to, for each member.</summary>
/// <param name="count">How many members.</param>
internal sealed class RunResult(int count)
{
    /// <summary>Minutes until it boiled for the last time; 0 where it never did.</summary>
    public double[] StillMinutes { get; } = new double[count];

    /// <summary>Minutes until the last cell came to the fraction that was looked for; infinite where it never did.</summary>
    public double[] DrawMinutes { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>The least liquid that the pan had, in liters.</summary>
    public double[] LeastLiters { get; } = Filled(count, double.PositiveInfinity);

    /// <summary>Minutes until the tank was empty; infinite where it never was.</summary>
    public double[] EmptyMinutes { get; } = Filled(count, double.PositiveInfinity);

    private static double[] Filled(int count, double value)
    {
        var array = new double[count];
        Array.Fill(array, value);
        return array;
    }
}
