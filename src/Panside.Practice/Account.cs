using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Physics;
using Panside.Practice.Simulation;

namespace Panside.Practice;

/// <summary>Keeps account of a boil while it runs, and looks back at its end.</summary>
internal sealed class Account
{
    private const double NearlyScorched = 0.05;

    private readonly List<Truth> _sinceHeld = [];
    private readonly List<long> _alarmedAt = [];
    private Lazy<(double Liters, double StillMinutes)>? _came;
    private (Forecast? Residual, Forecast? Still) _told;
    private (Makeup Makeup, Truth Truth)? _saidClear;
    private int _lines;
    private int _refused;
    private int _questions;
    private int _woodAfterHold;
    private int _draws;
    private double _steamAtHold;

    /// <summary>The outcome as the assistant says it; null before the end.</summary>
    public Outcome? Over { get; private set; }

    /// <summary>A line and its answers.</summary>
    public void Hear(LineIn line, IReadOnlyList<LineOut> answers, bool isHeld, PracticeRig rig)
    {
        _lines++;
        _woodAfterHold += isHeld && line is Did { Name.Code: "add-wood" } ? 1 : 0;
        _draws += line is Did { Name.Code: "open-draw" } ? 1 : 0;
        _refused += answers.Count(answer => answer is RefusedLine);
        _questions += answers.Count(answer => answer is QuestionLine);
        var alarms = answers.Count(answer => answer is AdviceLine { Advice: { Urgency: "danger" or "now" } advice }
            && (advice.Urgency == "danger" || !answers.Any(other => other is PromptLine prompt && prompt.Prompt.Text == advice.Text)));
        _alarmedAt.AddRange(Enumerable.Repeat(rig.Second, alarms));
        if (_saidClear is null && answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" }))
        {
            _saidClear = (rig.Makeup, rig.Truth);
        }

        Over ??= answers.OfType<OverLine>().FirstOrDefault()?.Outcome;
    }

    /// <summary>The rig now.</summary>
    public void Look(PracticeRig rig, bool isHeld, IDoor door)
    {
        if (isHeld && _came is null)
        {
            _came = RunAhead.WithoutWoodFromNow(rig);
            _told = (door.State.Forecasts.GetValueOrDefault("residual-evaporation"), door.State.Forecasts.GetValueOrDefault("minutes-to-still"));
        }

        if (isHeld && (_sinceHeld.Count == 0 || rig.Second >= _sinceHeld[^1].Second + 60))
        {
            _steamAtHold = _sinceHeld.Count == 0 ? rig.Truth.Ledger.Steam.Water : _steamAtHold;
            _sinceHeld.Add(rig.Truth);
        }
    }

    /// <summary>The end: what the assistant says, and what truly was and comes after.</summary>
    public PracticeOutcome Close(PracticeRig rig)
    {
        var after = Hindsight.RunOut(rig.Makeup, rig.Truth);
        var safeFrom = Hindsight.SafeFrom(rig.Makeup, _sinceHeld);
        return new()
        {
            Said = Over,
            Seconds = rig.Second,
            SecondsAtHold = _sinceHeld.Count > 0 ? _sinceHeld[0].Second : null,
            SecondsTrulySafe = safeFrom,
            SecondsSaidClear = _saidClear?.Truth.Second,
            LeastDepth = rig.LeastDepth,
            LeastBackDepth = rig.LeastBackDepth,
            LeastBackDepthAfter = after.LeastBackDepth,
            MostSugar = rig.MostSugar,
            IsScorched = rig.IsScorched || after.IsScorched,
            HasFoamedOver = rig.HasFoamedOver,
            LeastDepthAfter = after.LeastDepth,
            MostSugarAfter = after.MostSugar,
            IsPromiseKept = Over is null || after.IsKept(rig.Makeup),
            TankLeft = rig.Tank,
            BoiledAwayAfterHold = Reckoning.Quantities.Volume.FromLiters(
                double.Max(rig.Truth.Ledger.Steam.Water - _steamAtHold, 0)),
            Lines = _lines,
            Alarms = _alarmedAt.Count,
            AlarmPeak = _alarmedAt.Select(from => _alarmedAt.Count(at => at >= from && at < from + 600)).DefaultIfEmpty().Max(),
            IsNearMiss = !(rig.IsScorched || after.IsScorched)
                && (rig.Truth.Scorch > NearlyScorched || rig.HasBeenLow || rig.HasFoamedOver),
            IsClearTooEarly = _saidClear is var (makeup, truth) && !Hindsight.RunOut(makeup, truth).IsKept(makeup),
            SyrupErrorBrix = rig.Draws.Count == 0 ? null : rig.Draws.Average(draw => double.Abs(draw.Sugar.Brix - rig.Makeup.Rig.Target.Brix)),
            IsResidualCovered = Covers(_told.Residual, measure => rig.Makeup.Rig.Units.Volume(measure).Liters, came => came.Liters),
            IsStillCovered = Covers(_told.Still, measure => measure.Value, came => came.StillMinutes),
            Refused = _refused,
            Questions = _questions,
            Draws = _draws,
            WoodAfterHold = _woodAfterHold,
        };
    }

    /// <summary>Whether what came lies in the 90 % band that was told with the last charge; null where none was.</summary>
    private bool? Covers(Forecast? told, Func<Measure, double> of, Func<(double Liters, double StillMinutes), double> part) =>
        _came is { } came && told is { P5: { } low, P95: { } high, Unit: var unit }
            ? part(came.Value) is var truth && truth >= of(new(low, unit)) && truth <= of(new(high, unit))
            : null;
}
