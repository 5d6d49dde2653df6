using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Knowledge;

/// <summary>Everything that is known after the lines so far. Immutable; <c>Evolver</c> alone makes the next one.</summary>
public sealed record SessionState
{
    /// <summary>The time of the last line that had a good one; null before the first.</summary>
    public Moment? Now { get; init; }

    /// <summary>The time of the first line.</summary>
    public Moment? Started { get; init; }

    /// <summary>The sequence number of the last line out.</summary>
    public int Sequence { get; init; }

    /// <summary>Where the flow stands; empty before the first line.</summary>
    public string Step { get; init; } = "";

    /// <summary>When the step was reached.</summary>
    public Moment StepSince { get; init; }

    /// <summary>Where a side trip leads back to.</summary>
    public string ReturnTo => Back.IsEmpty ? Step : Back.Peek();

    /// <summary>The steps that side trips began at, the innermost on top.</summary>
    public ImmutableStack<string> Back { get; init; } = [];

    /// <summary>The open prompt; null where nothing is asked.</summary>
    public Prompt? Open { get; init; }

    /// <summary>When it was asked.</summary>
    public Moment OpenSince { get; init; }

    /// <summary>The question that is open: a line that is not believed yet.</summary>
    public LineIn? Doubted { get; init; }

    /// <summary>Steps and watches put off until a time.</summary>
    public ImmutableDictionary<string, DateTimeOffset> PutOff { get; init; } = ImmutableDictionary<string, DateTimeOffset>.Empty;

    /// <summary>Steps that were skipped, in order.</summary>
    public ImmutableList<string> Skipped { get; init; } = [];

    /// <summary>Steps that were done, in order.</summary>
    public ImmutableList<string> Done { get; init; } = [];

    /// <summary>When each watch was last answered.</summary>
    public ImmutableDictionary<string, Moment> Watched { get; init; } = ImmutableDictionary<string, Moment>.Empty;

    /// <summary>How often each thing was asked, since an emergency began or while a step stands that is to be done now; empty elsewhere.</summary>
    public ImmutableDictionary<string, int> Asked { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>The dangers that a cry may have meant, the likeliest first.</summary>
    public ImmutableList<string> Suspected { get; init; } = [];

    /// <summary>The clocks that run, in the order in which they were started.</summary>
    public ImmutableList<RunningClock> Clocks { get; init; } = [];

    /// <summary>Marks that steps have set.</summary>
    public ImmutableHashSet<string> Marks { get; init; } = [];

    /// <summary>Readings, the newest last.</summary>
    public ImmutableDictionary<ReadingName, ImmutableList<Noted<Measure>>> Readings { get; init; } =
        ImmutableDictionary<ReadingName, ImmutableList<Noted<Measure>>>.Empty;

    /// <summary>The newest observation of each kind.</summary>
    public ImmutableDictionary<ObservationName, Noted<string>> Observations { get; init; } =
        ImmutableDictionary<ObservationName, Noted<string>>.Empty;

    /// <summary>The newest deed of each kind.</summary>
    public ImmutableDictionary<DeedName, Noted<Measure?>> Deeds { get; init; } =
        ImmutableDictionary<DeedName, Noted<Measure?>>.Empty;

    /// <summary>When wood went in, the lighting among it, the newest last.</summary>
    public ImmutableList<Moment> Charges { get; init; } = [];

    /// <summary>When the draw-off was opened, or told shut after a draw that nobody told before; the newest last.</summary>
    public ImmutableList<Moment> Draws { get; init; } = [];

    /// <summary>What was poured into the pan by hand, the newest last.</summary>
    public ImmutableList<Pour> Pours { get; init; } = [];

    /// <summary>When the operator was last told to pour into the pan; null where that never was.</summary>
    public Moment? ToldToPour { get; init; }

    /// <summary>Readings, observations and deeds said at this very time; a twin of one of them is refused.</summary>
    public ImmutableHashSet<LineIn> SaidNow { get; init; } = [];

    /// <summary>When each advice was last given, while its reason holds.</summary>
    public ImmutableDictionary<string, Moment> Advised { get; init; } = ImmutableDictionary<string, Moment>.Empty;

    /// <summary>Cautions said so far.</summary>
    public ImmutableHashSet<string> Cautioned { get; init; } = [];

    /// <summary>The forecasts as last told.</summary>
    public ImmutableDictionary<string, Forecast> Forecasts { get; init; } = ImmutableDictionary<string, Forecast>.Empty;

    /// <summary>What is known of the rig: many possible rigs.</summary>
    public required RigEnsemble Rigs { get; init; }

    /// <summary>The middle of them.</summary>
    public RigState Rig => Rigs.Summary;

    /// <summary>The last draw-off temperature that told of sugar, from which the draw-off side can only have thickened.</summary>
    public DrawOffAnchor? DrawOff { get; init; }

    /// <summary>When the coals were last seen deep, whatever was seen of them since; null where they never were.</summary>
    public Moment? CoalsDeepAt { get; init; }

    /// <summary>When much cold liquid last went into the pan: flooded, poured, or read deeper than anything told explains; null where none did.</summary>
    public Moment? ChilledAt { get; init; }

    /// <summary>What was told since the depth was read and has changed it: a pour, a flood, a draw; null where nothing was.</summary>
    public DeedName? DepthChangedBy { get; init; }

    /// <summary>When the boil was first seen still so that it counts, with no other look, wood, flood, pour or raking since; null where it was not.</summary>
    public Moment? StillSince { get; init; }

    /// <summary>Since when every look at the boil saw it simmer, with no wood, flood, pour or raking since; null where the last did not.</summary>
    public Moment? SimmersSince { get; init; }

    /// <summary>When a burner that was told off was seen to heat the pan again; null where none was, or it was lit or shut off since.</summary>
    public Moment? RelitAt { get; init; }

    /// <summary>The draw that is open or was shut last.</summary>
    public ThisDraw ThisDraw { get; init; } = new(0, IsShut: true);

    /// <summary>The draws with what is known of each, the newest last.</summary>
    public ImmutableList<DrawnSyrup> Syrup { get; init; } = [];

    /// <summary>The newest draw; null before any.</summary>
    public DrawnSyrup? NewestSyrup => Syrup.Count > 0 ? Syrup[^1] : null;

    /// <summary>Sums over the session.</summary>
    public Totals Totals { get; init; } = new();

    /// <summary>The states before the last things that the operator said, the newest last; <c>undo</c> goes back through them.</summary>
    public ImmutableList<SessionState> Past { get; init; } = [];

    /// <summary>What the last thing was, in words.</summary>
    public string LastSaid { get; init; } = "";

    /// <summary>What was said last of fire, pan or boil and not understood; null where nothing was, or the boil or the coals were told since.</summary>
    public Text? Unheard { get; init; }

    /// <summary>Whether the session is over.</summary>
    public bool IsOver { get; init; }

    /// <summary>Whether it ended safely.</summary>
    public bool IsSafe { get; init; }

    /// <summary>The state with the newest draw told otherwise; there must be one.</summary>
    internal SessionState WithNewestSyrup(DrawnSyrup draw) => this with { Syrup = Syrup.SetItem(Syrup.Count - 1, draw) };

    /// <summary>The newest reading of a kind; null where there is none.</summary>
    public Noted<Measure>? Last(ReadingName name) => Readings.TryGetValue(name, out var all) ? all[^1] : null;

    /// <summary>The newest observation of a kind; null where there is none.</summary>
    public Noted<string>? Last(ObservationName name) => Observations.TryGetValue(name, out var noted) ? noted : null;

    /// <summary>The newest deed of a kind; null where there is none.</summary>
    public Noted<Measure?>? Last(DeedName name) => Deeds.TryGetValue(name, out var noted) ? noted : null;

    /// <summary>When the last draw was shut, or the last batch poured out; null before any.</summary>
    public Moment? DrawEnded => (Last(DeedName.CloseDraw)?.At, Last(DeedName.EmptyPan)?.At) switch
    {
        ({ } shut, { } emptied) => emptied.Time > shut.Time ? emptied : shut,
        var (shut, emptied) => shut ?? emptied,
    };

    /// <summary>Whole minutes from a moment until now, never negative.</summary>
    public int MinutesSince(Moment moment) =>
        Now is { } now ? (int)double.Max(0, (now.Time - moment.Time).TotalMinutes) : 0;
}

/// <summary>A clock that runs down before the operator's eyes.</summary>
/// <param name="Text">What goes on meanwhile.</param>
/// <param name="Until">When it has run down.</param>
/// <param name="Over">What is said then.</param>
public sealed record RunningClock(string Text, DateTimeOffset Until, string Over);

/// <summary>What stood at the draw-off when its thermometer told of sugar.</summary>
/// <param name="Sugar">The sugar content there.</param>
/// <param name="EvaporatedLiters">Water that the model had boiled away by then.</param>
/// <param name="Before">What the reading before it showed; where it is the first, or something was drawn since, what was expected: one slip is no evidence.</param>
/// <param name="IsReadTwice">Whether that was a reading.</param>
/// <param name="At">When.</param>
public sealed record DrawOffAnchor(SugarContent Sugar, double EvaporatedLiters, SugarContent Before, bool IsReadTwice, Moment At);

/// <summary>One draw.</summary>
/// <param name="Liters">What was told of it so far.</param>
/// <param name="IsShut">Whether the draw-off has been shut.</param>
public sealed record ThisDraw(double Liters, bool IsShut);

/// <summary>Sums over the session.</summary>
public sealed record Totals
{
    /// <summary>Wood, in kilograms.</summary>
    public double WoodKilograms { get; init; }

    /// <summary>Syrup drawn, in liters.</summary>
    public double DrawnLiters { get; init; }

    /// <summary>Sap added to the tank after the first reading, in liters.</summary>
    public double RefilledLiters { get; init; }

    /// <summary>The tank at its first reading, in liters; null before it.</summary>
    public double? TankAtFirst { get; init; }

    /// <summary>Draws with a known density: liters times Brix, and liters.</summary>
    public double MeasuredLiterBrix { get; init; }

    /// <summary>The liters of those.</summary>
    public double MeasuredLiters { get; init; }
}
