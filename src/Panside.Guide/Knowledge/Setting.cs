using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Knowledge;

/// <summary>How much is explained.</summary>
public enum Guidance
{
    /// <summary>Every step and its reason.</summary>
    Beginner,

    /// <summary>The clock, the forecast and silence.</summary>
    Practised,
}

/// <summary>What a session runs on, and what does not change through it.</summary>
public sealed class Setting
{
    private readonly Flow _written;
    private readonly Task<FlowMachine> _machine;

    /// <summary>Puts a session's fixed parts together.</summary>
    /// <param name="flow">The procedure.</param>
    /// <param name="rig">The rig as its file describes it.</param>
    /// <param name="guidance">How much is explained.</param>
    /// <param name="program">Name and version.</param>
    /// <param name="practice">Whether the rig is simulated.</param>
    /// <param name="learned">What past boils have taught of the rig; null where nothing was learned.</param>
    /// <param name="imported">Whether the boil is brought in from a table.</param>
    public Setting(Flow flow, Rig rig, Guidance guidance, string program, bool practice = false, LearnedRig? learned = null, bool imported = false)
    {
        (_written, Flow, Rig, Guidance, Learned) = (flow, flow.On(rig), rig, guidance, learned);
        _machine = Task.Run(() => new FlowMachine(Flow));
        Description = new(
            rig.PanArea, rig.RunDepth, rig.LeastDepth, rig.FloodDepth, rig.Channels, rig.Draft == Draft.Forced && !rig.IsBurner, rig.Firebrick,
            rig.Feed != Feed.ByHand,
            rig.IsBurner
                ? BurnerHeat.Of(rig.Boils, rig.Interval)
                : Firewood.HeatAsFired(FirewoodNames.FromName(rig.WoodSpecies), rig.Charge, rig.WoodMoisture),
            rig.Charge, rig.Interval, rig.Target, rig.Tank)
        { Portion = rig.HasFloat ? default : rig.Portion, IsBurner = rig.IsBurner, Back = rig.Back?.Description };
        Header = new(
            program, flow.Name, flow.Hash, rig.Name, rig.Text, guidance == Guidance.Beginner ? "beginner" : "practised", practice)
        {
            FlowVersion = flow.Version,
            LearnedText = learned?.Text,
            Imported = imported,
        };
    }

    /// <summary>The procedure, in the words for this rig.</summary>
    public Flow Flow { get; }

    /// <summary>What can be read off an instrument.</summary>
    public KnownReadings Readings => Flow.Readings;

    /// <summary>The state machine that the procedure becomes: made beside what else a start does, for it takes a twelfth of the time until the first screen.</summary>
    public FlowMachine Machine => _machine.GetAwaiter().GetResult();

    /// <summary>The rig as its file describes it.</summary>
    public Rig Rig { get; }

    /// <summary>The rig as the reckoning takes it.</summary>
    public RigDescription Description { get; }

    /// <summary>What past boils have taught of the rig; null where nothing was learned.</summary>
    public LearnedRig? Learned { get; }

    /// <summary>Members of the ensemble; fewer only where a test of something else must be quick.</summary>
    public int Members { get; init; } = RigEnsemble.UsualCount;

    /// <summary>The same with another number of members.</summary>
    /// <param name="members">How many; a multiple of 8.</param>
    public Setting With(int members) =>
        new(_written, Rig, Guidance, Header.Program, Header.Practice, Learned, Header.Imported) { Members = members, Header = Header };

    /// <summary>The same, where a record says which flow it was made with: its session line stays as it is.</summary>
    /// <param name="header">What the record says of itself in the place of what this setting would say.</param>
    public Setting Recorded(Func<SessionHeader, SessionHeader> header) =>
        new(_written, Rig, Guidance, Header.Program, Header.Practice, Learned, Header.Imported) { Members = Members, Header = header(Header) };

    /// <summary>What is known of the rig before the first line.</summary>
    public RigEnsemble Cold => RigEnsemble.Cold(Description, StandardBoiling, RigPrior.Default, Members).Knowing(Learned?.Traits);

    /// <summary>How much is explained.</summary>
    public Guidance Guidance { get; }

    /// <summary>
    /// Whether a step is passed by as if it had been done: one for beginners by a practised hand, one whose facts do not hold, one that asks
    /// for what this rig has not.
    /// </summary>
    /// <param name="step">The step.</param>
    /// <param name="holds">Whether a fact holds.</param>
    public bool PassesBy(Step step, Func<string, bool> holds) =>
        (step.BeginnerOnly && Guidance == Guidance.Practised) || !step.Given.All(holds) || !IsThere(step.Ask);

    /// <summary>Whether a word of the flow is neither that of a danger of what this rig has not, nor leads on only where a rig has what this one lacks.</summary>
    public bool IsOfThisRig(string word) =>
        Flow.Dangers.All(danger => danger.Code != word || (IsThere(Flow.Steps[danger.Go].Ask) && danger.ListedWhere.All(fact => RigFacts.Holds(Rig, fact))))
        && (Flow.Anywhere.Concat(Flow.Steps.Values.SelectMany(step => step.Passages)).Where(way => way.When == "word " + word).ToList() is not { Count: > 0 } ways
            || ways.Exists(way => way.Given.Where(RigFacts.IsOne).All(fact => RigFacts.Holds(Rig, fact))));

    /// <summary>Whether what is asked is to be seen on this rig, and what it is read with is there.</summary>
    /// <param name="ask">What a step or a watch asks for.</param>
    public bool IsThere(string? ask) => ask is null
        || (ObservationName.FromCode(ask)?.IsThere(Rig) != false && IsThere(Readings.Find(ask)));

    private bool IsThere(ReadingName? name) => name is null || (name.IsThere(Rig) && name.Instruments.All(Rig.Has));

    /// <summary>How often a watch is asked; one that does not say it, as often as wood goes in.</summary>
    /// <param name="watch">The watch.</param>
    public TimeSpan Every(Watch watch) => (Guidance == Guidance.Practised ? watch.EveryPractised ?? watch.Every : watch.Every) ?? Rig.Interval;

    /// <summary>When a watch was last answered, or what it asks for was told unasked; null where neither was.</summary>
    /// <param name="watch">The watch.</param>
    /// <param name="state">What is known.</param>
    public DateTimeOffset? LastAnswered(Watch watch, SessionState state)
    {
        DateTimeOffset?[] times =
        [
            state.Watched.TryGetValue(watch.Id, out var answered) ? answered.Time : null,
            Readings.Find(watch.Ask) is { } reading ? state.Last(reading)?.At.Time : null,
            ObservationName.FromCode(watch.Ask) is { } seen ? state.Last(seen)?.At.Time : null,
            watch.Deed is { } deed ? state.Last(deed)?.At.Time : null,
            watch.Deed == DeedName.AddWood ? state.Last(DeedName.LitFire)?.At.Time : null, // lighting the fire is its first charge
        ];
        return times.Max();
    }

    /// <summary>What the record says of all this.</summary>
    public SessionHeader Header { get; private init; }

    /// <summary>The units shown and assumed.</summary>
    public UnitSystem Units => Rig.Units;

    /// <summary>Where water should boil here on a standard day.</summary>
    public Temperature StandardBoiling => BoilingWater.TemperatureAt(Within(StandardAtmosphere.PressureAt(Rig.Altitude)));

    /// <summary>A pressure brought into the range of the boiling-water formula.</summary>
    public static Pressure Within(Pressure pressure) =>
        Pressure.FromKilopascals(double.Clamp(pressure.Kilopascals, 75, 108));
}
