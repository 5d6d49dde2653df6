using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Practice.Mishaps;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Simulation;

/// <summary>
/// A simulated rig: charges, coals, brick, pan and tank with physics of their own, stepped by the second. It knows no clock
/// and no chance once it is made: the same rig, scenario and seed with the same deeds come to the same end.
/// </summary>
public sealed partial class PracticeRig : IMishapRig
{
    private const int WeatherEverySeconds = 300;

    private readonly Makeup _made;
    private readonly MishapCourse _mishaps;
    private readonly List<Drawn> _draws = [];
    private long _wood;

    /// <summary>A rig of its own around what the rig file says.</summary>
    public PracticeRig(Rig rig, Scenario scenario, long seed)
        : this(Makeup.Drawn(rig, RandomStream.For(seed, "rig")), scenario, RandomStream.For(seed, "start"), seed)
    {
    }

    /// <summary>The same rig on another day, or one whose fire gives the pan more heat than its file lets expect.</summary>
    /// <param name="rig">The rig's file.</param>
    /// <param name="scenario">Where the day begins.</param>
    /// <param name="seed">The rig.</param>
    /// <param name="day">The day: other sap, another depth, another fill of the tank.</param>
    /// <param name="heat">Heat to the pan beside what this rig would have.</param>
    public static PracticeRig OnDay(Rig rig, Scenario scenario, long seed, long day, double heat)
    {
        var makeup = Makeup.Drawn(rig, RandomStream.For(seed, "rig"));
        makeup = makeup with { ToPan = makeup.ToPan * heat, SweptToPan = makeup.SweptToPan * heat };
        return new(makeup, scenario, RandomStream.For(day, "start"), seed);
    }

    /// <summary>A rig of another world.</summary>
    /// <exception cref="NotSupportedException">The rig has two pans, and the world makes one.</exception>
    internal static PracticeRig In(World world, Rig rig, Scenario scenario, long seed) => rig.Back is not null && world != World.Practised
        ? throw new NotSupportedException($"The world '{world.Name}' makes one pan, and this rig has two.")
        : new(
        world.Made(Makeup.Drawn(rig, RandomStream.For(seed, "rig")) with { World = world }, RandomStream.For(seed, world.Name)),
        scenario, RandomStream.For(seed, "start"), seed);

    internal PracticeRig(Makeup makeup, Scenario scenario, RandomStream start, long seed = 0)
    {
        (_made, Seed, Scenario) = (makeup, seed, scenario);
        Makeup = scenario.Weather.Of(makeup, 0);
        Truth = Makeup.World.Begun(Makeup, scenario.Start(Makeup, start));
        Temper = Temper.In(Makeup.World);
        _mishaps = new(scenario.Mishaps, Tank.Liters, seed);
        WaterLeft = Volume.FromLiters(50 * makeup.Area);
        (LeastDepth, LeastBackDepth) = (Depth, BackDepth);
        MostSugar = SugarContent.FromMassFraction(Truth.Pan.Max(cell => cell.Fraction));
    }

    /// <summary>Where it began.</summary>
    public Scenario Scenario { get; }

    /// <summary>What it was drawn from.</summary>
    public long Seed { get; private init; }

    /// <summary>Seconds since the start.</summary>
    public long Second => Truth.Second;

    /// <summary>Depth at the shallowest place; of two pans, of the one where the draw-off is.</summary>
    public Length Depth => Length.FromMeters(Pan.Depths(Makeup, Truth).Min());

    /// <summary>Depth of the pan behind over its flues, at the shallowest place; null where there is none.</summary>
    public Length? BackDepth => Makeup.BackCells > 0 ? Length.FromMeters(Pan.BackDepths(Makeup, Truth).Min()) : null;

    /// <summary>Depths of all pans together, by which one sees whether anything rises.</summary>
    internal double Level => Depth.Meters + (BackDepth?.Meters ?? 0);

    /// <summary>Liquid in the pan over what keeps it at its least depth; less than none where it is below.</summary>
    public Volume OverLeast => (Makeup.Rig.PanArea * Length.FromMeters(Pan.Depths(Makeup, Truth).Average())) - (Makeup.Rig.PanArea * Makeup.Rig.LeastDepth);

    /// <summary>Sap in the tank.</summary>
    public Volume Tank => Volume.FromLiters(Liters(Truth.Tank));

    /// <summary>Sugar of the sap in the tank.</summary>
    public SugarContent Sap => SugarContent.FromMassFraction(Truth.Tank.Fraction);

    /// <summary>What ran out of the draw-off since it was last opened.</summary>
    public Volume Pail => Volume.FromLiters(Liters(Truth.Pail));

    /// <summary>Clean water that stands ready in pails.</summary>
    public Volume WaterLeft { get; private set; }

    /// <summary>The shallowest that the pan has been over a fire.</summary>
    public Length LeastDepth { get; private set; }

    /// <summary>The same of the pan behind, over its flues; null where there is none.</summary>
    public Length? LeastBackDepth { get; private set; }

    /// <summary>Whether a pan has been under its least depth over a fire.</summary>
    public bool HasBeenLow => LeastDepth < Makeup.Rig.LeastDepth || LeastBackDepth < Makeup.Rig.Back?.LeastDepth;

    /// <summary>The sweetest that any cell has been.</summary>
    public SugarContent MostSugar { get; private set; }

    /// <summary>Whether sugar has charred on the pan's floor.</summary>
    public bool IsScorched => Truth.Scorch >= 1;

    /// <summary>Whether foam has gone over the wall.</summary>
    public bool HasFoamedOver { get; private set; }

    /// <summary>Whether sap can come from the tank to the pan.</summary>
    public bool IsFed => Makeup.Rig.Feed != Feed.ByHand && Truth.ValveOpen && Truth.Tank.Mass > 0.5 && Makeup.FloatHangs is not 0;

    /// <summary>Whether float and valve do what they should, as one sees who presses the float down.</summary>
    public bool FeedsWell => IsFed && Makeup.FloatHangs is null && Makeup.MostFeed > 0.7 * _made.MostFeed;

    /// <summary>Whether wood has gone in.</summary>
    public bool IsFired => Truth.Ledger.Wood > 0;

    /// <summary>Whether the draw-off is open.</summary>
    public bool IsDrawOpen => Truth.DrawOpen;

    /// <summary>Whether the pan stands as deep as it is flooded.</summary>
    public bool IsFlooded => Depth.Meters >= Makeup.Rig.FloodDepth.Meters - 0.002
        && (Makeup.Rig.Back is not { } back || BackDepth!.Value.Meters >= back.FloodDepth.Meters - 0.002);

    /// <summary>The draws so far.</summary>
    public IReadOnlyList<Drawn> Draws => _draws;

    /// <summary>The mishaps that have begun, by name, with the second of their beginning.</summary>
    public IEnumerable<(string Name, long Second)> Begun => _mishaps.Begun.Select(one => (one.Kind.Name, one.Second));

    /// <summary>Seconds since wood went in last, or since the start.</summary>
    public long SecondsSinceWood => Second - _wood;

    internal Makeup Makeup { get; private set; }

    internal Truth Truth { get; private set; }

    /// <summary>How wrong the instruments are now.</summary>
    internal Kit Kit { get; private set; } = new();

    /// <summary>How the simulated operator is now.</summary>
    internal Temper Temper { get; private set; } = new();

    /// <inheritdoc/>
    Makeup IMishapRig.Makeup => Makeup;

    /// <inheritdoc/>
    Truth IMishapRig.Truth => Truth;

    /// <inheritdoc/>
    bool IMishapRig.HasDrawn => _draws.Count > 0;

    /// <summary>A note for the record: what the rig was made from.</summary>
    public Text NoteAt(Moment at) => new(at, $"note practice: scenario {Scenario.Name}, seed {Seed}");

    /// <summary>Time passes.</summary>
    public void Step(long seconds)
    {
        for (var second = 0L; second < seconds; second++)
        {
            Truth = Stepped(Makeup, Truth);
            if (_mishaps.IsDue(Second) ? _mishaps.ComeTo(this) : Scenario.Weather.Drifts && Second % WeatherEverySeconds == 0)
            {
                Shape();
            }

            HasFoamedOver |= Truth.Foam >= 1;
            if (Truth.Ledger.Wood > 0 && !Truth.PanOff)
            {
                LeastDepth = Depth < LeastDepth ? Depth : LeastDepth;
                LeastBackDepth = BackDepth < LeastBackDepth ? BackDepth : LeastBackDepth;
                var most = SugarContent.FromMassFraction(Truth.Pan.Max(cell => cell.Fraction));
                MostSugar = most > MostSugar ? most : MostSugar;
            }
        }
    }

    /// <summary>A charge of wood goes in.</summary>
    public void AddWood(Mass wood)
    {
        Truth = Makeup.World.Charged(Makeup, Truth, wood.Kilograms);
        _wood = Second;
    }

    /// <summary>The burner is lit.</summary>
    public void LightBurner()
    {
        Truth = Truth with { BurnerOn = true };
        _wood = Second;
    }

    /// <summary>The burner is shut off.</summary>
    public void ShutBurner() => Truth = Truth with { BurnerOn = false };

    /// <summary>The coals are raked level.</summary>
    public void SpreadCoals()
    {
        Mend(kind => kind.IsRaked);
        Truth = Truth with { CoalsLevel = true };
    }

    /// <summary>The draw-off is opened over an empty pail.</summary>
    public void OpenDraw() => Truth = Truth with { DrawOpen = true, Pail = default };

    /// <summary>The draw-off is shut.</summary>
    public void CloseDraw()
    {
        if (Truth.DrawOpen && Truth.Pail.Mass > 0.05)
        {
            _draws.Add(new(Second, SugarContent.FromMassFraction(Truth.Pail.Fraction), Pail));
        }

        Truth = Truth with { DrawOpen = false };
    }

    /// <summary>The pan is taken off the fire and poured out; a film stays in it. It goes back over the fire with the next sap.</summary>
    /// <returns>How much came out.</returns>
    public Volume EmptyPan()
    {
        var film = FilmMeters * 1000 * Makeup.CellArea;
        var cells = Truth.Pan.ToArray();
        var poured = default(Cell);
        for (var cell = Makeup.BackCells; cell < cells.Length; cell++)
        {
            var part = cells[cell].Part(double.Max(cells[cell].Mass - film, 0));
            (cells[cell], poured) = (cells[cell] - part, poured + part);
        }

        var batch = Volume.FromLiters(Liters(poured));
        Truth = Truth with { Pan = [.. cells], PanOff = true, Pail = poured, Ledger = Truth.Ledger with { Drawn = Truth.Ledger.Drawn + poured } };
        if (!Makeup.Rig.HasFinishingPot && poured.Mass > 0.05)
        {
            _draws.Add(new(Second, SugarContent.FromMassFraction(poured.Fraction), batch));
        }

        return batch;
    }

    /// <summary>What clings to a pan that was poured out, in m. No source.</summary>
    private const double FilmMeters = 0.001;

    /// <summary>The tank's valve is opened all the way, and the float is freed.</summary>
    public void FreeFeed()
    {
        Mend(kind => kind.IsFreed);
        Truth = Truth with { ValveOpen = true };
        SetValve(Depth);
    }

    /// <summary>The tank's valve is shut.</summary>
    public void ShutFeed() => Truth = Truth with { ValveOpen = false };

    /// <summary>The float is set to another depth.</summary>
    public void SetFloat(Length depth) => Truth = Truth with { FloatMeters = depth.Meters };

    /// <summary>The float is set for a shutdown; of two pans, each its own.</summary>
    public void LiftFloats() => Truth = Truth with
    {
        FloatMeters = (Makeup.Rig.Back?.FloodDepth ?? Makeup.Rig.FloodDepth).Meters,
        FrontFloatMeters = Makeup.Rig.FloodDepth.Meters,
    };

    /// <summary>
    /// The feed valve of a pan without a float is set by the depth that was read: to what boils away, and to what brings the pan to its run
    /// depth in a quarter of an hour.
    /// </summary>
    public void SetValve(Length read)
    {
        var missing = (Makeup.Rig.RunDepth.Meters - read.Meters) * 1000 * Makeup.Area / 900;
        Truth = Truth with { ValveLets = double.Max(Truth.Boil + missing, 0) };
    }

    /// <summary>A drop of defoamer goes in: it works for three quarters of an hour.</summary>
    public void AddDefoamer() => Truth = Truth with { DefoamerSeconds = 2700 };

    /// <summary>The lid goes on.</summary>
    public void Cover() => Truth = Truth with { Covered = true };

    /// <summary>One second of a rig.</summary>
    internal static Truth Stepped(Makeup makeup, Truth truth)
    {
        var (toPan, after) = makeup.World.Burned(makeup, truth);
        if (truth.PanOff)
        {
            // Nothing stands over the fire: what would go into the pan goes up the stack.
            (toPan, after) = (0, after with { Ledger = after.Ledger with { Stack = after.Ledger.Stack + toPan } });
        }

        return makeup.World.Boiled(makeup, after, toPan) with { Second = truth.Second + 1 };
    }

    /// <inheritdoc/>
    void IMishapRig.Strike(MishapKind kind, double strength)
    {
        var before = Truth;
        var after = kind.Blow(Makeup, before, strength);
        Truth = after with
        {
            Ledger = after.Ledger with
            {
                Leaked = after.Ledger.Leaked + (before.Tank - after.Tank),
                Found = after.Ledger.Found + Makeup.World.Fuel(after) - Makeup.World.Fuel(before),
            },
        };
        WaterLeft = kind.TakesTheWater ? default : WaterLeft;
    }

    private void Mend(Func<MishapKind, bool> which)
    {
        if (_mishaps.Mend(which))
        {
            Shape();
        }
    }

    /// <summary>The rig as it was made, under today's weather, with what goes wrong now.</summary>
    private void Shape() =>
        (Makeup, Kit, Temper) = _mishaps.Shape(Scenario.Weather.Of(_made, Second / 60.0), Second);

    private double Liters(Cell liquid) =>
        liquid.Mass * Makeup.Materials.LitersOf(liquid.Fraction, liquid.Celsius(Makeup.Materials));
}

/// <summary>What was poured into the pan by hand at once.</summary>
/// <param name="Sap">Sap out of the tank.</param>
/// <param name="Water">Water from the pails.</param>
public readonly record struct ByHand(Volume Sap, Volume Water)
{
    /// <summary>Both together.</summary>
    public Volume Whole => Sap + Water;
}

/// <summary>One draw as it truly was.</summary>
/// <param name="Second">When the draw-off was shut.</param>
/// <param name="Sugar">What ran into the pail.</param>
/// <param name="Volume">How much.</param>
public readonly record struct Drawn(long Second, SugarContent Sugar, Volume Volume);
