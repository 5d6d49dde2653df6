using Panside.Guide.Lines;
using Panside.Practice.Physics;

namespace Panside.Practice;

/// <summary>Keeps account of a boil while it runs, and looks back at its end.</summary>
internal sealed class Account
{
    private readonly List<Truth> _sinceHeld = [];
    private int _lines;
    private int _alarms;
    private int _refused;
    private int _questions;
    private int _woodAfterHold;
    private int _draws;
    private double _steamAtHold;

    /// <summary>The outcome as the assistant says it; null before the end.</summary>
    public Outcome? Over { get; private set; }

    /// <summary>A line and its answers.</summary>
    public void Hear(LineIn line, IReadOnlyList<LineOut> answers, bool isHeld)
    {
        _lines++;
        _woodAfterHold += isHeld && line is Did { Name.Code: "add-wood" } ? 1 : 0;
        _draws += line is Did { Name.Code: "open-draw" } ? 1 : 0;
        _refused += answers.Count(answer => answer is RefusedLine);
        _questions += answers.Count(answer => answer is QuestionLine);
        _alarms += answers.Count(answer => answer is AdviceLine { Advice: { Urgency: "danger" or "now" } advice }
            && !answers.Any(other => other is PromptLine prompt && prompt.Prompt.Text == advice.Text));
        Over ??= answers.OfType<OverLine>().FirstOrDefault()?.Outcome;
    }

    /// <summary>The rig now.</summary>
    public void Look(PracticeRig rig, bool isHeld)
    {
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
            LeastDepth = rig.LeastDepth,
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
            Alarms = _alarms,
            Refused = _refused,
            Questions = _questions,
            Draws = _draws,
            WoodAfterHold = _woodAfterHold,
        };
    }
}
