using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;

namespace Panside.Practice;

/// <summary>
/// A person at the simulated rig: what the person says was done is done at the rig, once the assistant has believed it, and
/// time at the rig is the time of the lines.
/// </summary>
public sealed class Attended(IDoor door, PracticeRig rig, DateTimeOffset start)
{
    /// <summary>What the person who wrote the flow calls the mark that no more wood goes in.</summary>
    private const string HeldMark = "wood-held";

    private readonly Account _account = new();

    /// <summary>The rig.</summary>
    public PracticeRig Rig => rig;

    private bool IsHeld => door.State.Marks.Contains(HeldMark) || (rig.Makeup.Rig.IsBurner && rig.IsFired && !rig.Truth.BurnerOn);

    /// <summary>A line to the assistant; what it makes of it is done at the rig.</summary>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        ComeTo(line.At.Time);
        var before = door.State;
        var answers = door.Hear(line);
        foreach (var (name, deed) in door.State.Deeds)
        {
            if (before.Last(name) != deed)
            {
                Do(name, deed.Value);
            }
        }

        foreach (var pour in door.State.Pours.Where(pour => !before.Pours.Exists(known => known.At == pour.At && known.Liquid == pour.Liquid && known.Measure == pour.Measure)))
        {
            Pour(pour, before.Pours is [.., { IsUnmeasured: true } told] && !door.State.Pours.Contains(told) ? rig.Makeup.Rig.Portion : default);
        }

        if (door.State.Last(ReadingName.PanDepth) is { } read && before.Last(ReadingName.PanDepth) != read)
        {
            rig.SetValve(UnitSystem.Length(read.Value));
        }

        _account.Hear(line, answers, IsHeld, rig);
        return answers;
    }

    /// <param name="pour">The pour; one that nobody measured is a portion.</param>
    /// <param name="already">What went in while its amount was not told yet.</param>
    private void Pour(Pour pour, Volume already)
    {
        var volume = pour.IsUnmeasured ? rig.Makeup.Rig.Portion : pour.Volume > already ? pour.Volume - already : default;
        if (pour.IsOutOfTank)
        {
            rig.PourPortion(volume);
        }
        else
        {
            rig.FillPan(volume, pour.Liquid == Liquids.Water, pour.Pan == Pans.Front);
        }
    }

    /// <summary>Time passes at the rig.</summary>
    public void ComeTo(DateTimeOffset time)
    {
        rig.Step(long.Max((long)(time - start).TotalSeconds - rig.Second, 0));
        _account.Look(rig, IsHeld, door);
    }

    /// <summary>Pours a pail of sap into the pan by hand; water where the tank is empty.</summary>
    /// <returns>How much it was.</returns>
    public Volume Pour() => rig.PourIn(Volume.FromLiters(10 * rig.Makeup.Area)).Whole;

    /// <summary>The end, with what truly was.</summary>
    public PracticeOutcome Close() => _account.Close(rig);

    private void Do(DeedName name, Measure? measure)
    {
        var charge = rig.Makeup.Rig.Charge;
        switch (name.Code)
        {
            case "lit-fire" when rig.Makeup.Rig.IsBurner:
                rig.LightBurner();
                break;
            case "shut-off":
                rig.ShutBurner();
                break;
            case "lit-fire" or "add-wood":
                rig.AddWood(measure is { } wood ? UnitSystem.Mass(wood) : charge);
                break;
            case "open-draw":
                rig.OpenDraw();
                break;
            case "close-draw":
                rig.CloseDraw();
                break;
            case "empty-pan":
                rig.EmptyPan();
                break;
            case "spread-coals":
                rig.SpreadCoals();
                break;
            case "flood-pan":
                rig.Flood();
                break;
            case "add-defoamer":
                rig.AddDefoamer();
                break;
            case "cover-pan":
                rig.Cover();
                break;
            case "refill-tank":
                rig.Refill(measure is { } sap ? rig.Makeup.Rig.Units.Volume(sap) : Volume.FromUsGallons(5));
                break;
        }
    }
}
