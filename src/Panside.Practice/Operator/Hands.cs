using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Operator;

/// <summary>What each action of an advice means at the rig, done as a person does it: with a while, and not to the gram.</summary>
internal sealed class Hands(PracticeRig rig, Instruments instruments, UnitSystem units, RandomStream chance)
{
    private const int FloodSecondsAtMost = 900;
    private const int DrawSecondsAtMost = 240;
    private const int StillLooks = 3;
    private const double RisesMeters = 0.0002;

    private Volume Pailful => Volume.FromLiters(10 * rig.Makeup.Area);

    /// <summary>Whether the operator was told that no more wood goes in.</summary>
    public bool IsHeld { get; private set; }

    /// <summary>How often wood was asked for all the same.</summary>
    public int WoodAskedAfterHold { get; private set; }

    /// <summary>Whether something is done, or half done, that was not told yet.</summary>
    public bool IsUntold { get; private set; }

    /// <summary>The deed for an action, said when it is done; nothing is said where an action has no deed.</summary>
    /// <param name="action">The action.</param>
    /// <param name="text">The words of the advice: figures stand in them.</param>
    /// <param name="isReady">Whether it was only made ready for: then it is done once it is time.</param>
    /// <param name="isRoutine">Whether it is asked as a thing that comes back, as a pour where a hand feeds the pan.</param>
    public IEnumerable<Act> Do(string action, string text, bool isReady = false, bool isRoutine = false) => action switch
    {
        // As a person does, into the pan that the words name. An advice of its own comes without a step whose question would tell the pan.
        "raise-level" or "cool-pan" when !isRoutine && rig.BackDepth is not null && NamesBackPan(text) => PourIntoBack(),
        "light-fire" => Light(),
        "add-wood" => AddWood(),
        "hold-wood" => Hold(),
        "open-draw" when rig.Makeup.Rig.IsBatch => isReady ? [new(chance.Between(20, 60), at => new Answer(at, AnswerWords.Yes))] : EmptyPan(),
        "open-draw" => rig.IsDrawOpen ? CloseDraw(null) : OpenDraw(),
        "close-draw" => isReady ? CloseDraw(Temperatures.In(text)) : ShutDraw(),
        "spread-coals" => Simple(45, 120, rig.SpreadCoals, DeedName.SpreadCoals),
        "flood-pan" => Flood(),
        "add-defoamer" => Simple(10, 30, rig.AddDefoamer, DeedName.AddDefoamer),
        "cover-pan" => Simple(20, 60, rig.Cover, DeedName.CoverPan),
        "raise-level" => isRoutine ? PourPortion() : Pour(atDrawOff: false),
        "cool-pan" => isRoutine ? Pour(atDrawOff: false) : Pour(atDrawOff: true),
        "check-level" => CheckLevel(),
        "clear-to-leave" => [new(chance.Between(30, 90), at => new Did(at, DeedName.Leave, null))],
        _ => [],
    };

    /// <summary>Whether the pail under the open draw-off is full: then anybody shuts it.</summary>
    public bool IsPailFull => rig.IsDrawOpen && rig.Pail >= Pailful;

    /// <summary>The draw-off is shut because the pail is full.</summary>
    public IEnumerable<Act> ShutFullPail() => Drawn();

    /// <summary>Whether a deed is told for an action, so that no yes is wanted.</summary>
    /// <param name="action">The action.</param>
    /// <param name="isRoutine">Whether it is asked as a thing that comes back.</param>
    public static bool HasDeed(string action, bool isRoutine) => (action is "raise-level" or "cool-pan" && isRoutine) || action is "light-fire" or "add-wood" or "open-draw" or "close-draw"
        or "spread-coals" or "flood-pan" or "add-defoamer" or "cover-pan" or "clear-to-leave";

    /// <summary>Whether the words of an advice speak of the pan behind; all that ask for sap in it must.</summary>
    internal static bool NamesBackPan(string text) => text.Contains("back pan", StringComparison.Ordinal);

    private IEnumerable<Act> Light()
    {
        yield return new(chance.Between(60, 180));
        if (rig.Makeup.Rig.IsBurner)
        {
            IsHeld = false;
            rig.LightBurner();
            yield return Told(5, at => new Did(at, DeedName.LitFire, null));
            yield break;
        }

        var wood = rig.Makeup.Rig.Charge * chance.Factor(0.1);
        rig.AddWood(wood);
        yield return Told(5, at => new Did(at, DeedName.LitFire, null));
    }

    private IEnumerable<Act> AddWood()
    {
        if (IsHeld)
        {
            // Told to hold wood and told to add some: the safer of the two is followed.
            WoodAskedAfterHold++;
            yield return new(chance.Between(10, 30), at => new Answer(at, AnswerWords.No));
            yield break;
        }

        yield return new(chance.Between(20, 70));

        var wood = rig.Makeup.Rig.Charge * chance.Factor(0.15);
        rig.AddWood(wood * rig.Temper.Charges);
        var said = units.From(wood);
        said = said.With(double.Round(said.Value * 2) / 2);
        yield return Told(5, chance.Chance(0.3)
            ? at => new Text(at, "wood")
            : at => new Did(at, DeedName.AddWood, said));
    }

    private IEnumerable<Act> Hold()
    {
        IsHeld = true;
        yield return new(chance.Between(5, 20));
        if (rig.Makeup.Rig.IsBurner && rig.Truth.BurnerOn)
        {
            rig.ShutBurner();
            yield return Told(5, at => new Did(at, DeedName.ShutOff, null));
        }
    }

    /// <summary>The pan is poured out, and how much it was is told to the quarter.</summary>
    private IEnumerable<Act> EmptyPan()
    {
        yield return new(chance.Between(40, 90));
        var said = units.From(rig.EmptyPan());
        said = said.With(double.Round(said.Value * 4) / 4);
        yield return Told(20, at => new Did(at, DeedName.EmptyPan, said.Value > 0 ? said : null));
    }

    private IEnumerable<Act> OpenDraw()
    {
        yield return new(chance.Between(10, 30));
        rig.OpenDraw();
        yield return Told(2, at => new Did(at, DeedName.OpenDraw, null));
    }

    /// <summary>Shuts when the thermometer is under the figure that was said, or by half a degree under its highest.</summary>
    private IEnumerable<Act> CloseDraw(Temperature? under)
    {
        var highest = double.MinValue;
        for (var seconds = 0; seconds < DrawSecondsAtMost && rig.IsDrawOpen; seconds += 4)
        {
            yield return new(4);
            var now = UnitSystem.Temperature(instruments.Read(ReadingName.DrawTemperature)).Celsius;
            highest = double.Max(highest, now);
            if (now < (under?.Celsius ?? (highest - 0.3)) || rig.Depth < rig.Makeup.Rig.LeastDepth)
            {
                break;
            }
        }

        foreach (var act in Drawn())
        {
            yield return act;
        }
    }

    private IEnumerable<Act> ShutDraw()
    {
        yield return new(chance.Between(5, 15));
        foreach (var act in Drawn())
        {
            yield return act;
        }
    }

    private IEnumerable<Act> Drawn()
    {
        rig.CloseDraw();
        var drawn = instruments.Read(ReadingName.DrawnVolume);
        var typed = chance.Chance(0.3);
        yield return Told(20, at => drawn.Value <= 0 ? new Did(at, DeedName.CloseDraw, null)
            : typed ? new Text(at, $"drew {Typed.Number(drawn.Value)} {drawn.Unit.Shown()}")
            : new Did(at, DeedName.CloseDraw, drawn));
    }

    private IEnumerable<Act> Flood()
    {
        rig.LiftFloats();
        IsUntold = true;

        // In a pan that leans the float shuts before the shallow end is deep: once nothing rises, the rest is poured by hand.
        var (risen, looks) = (rig.Level, 0);
        rig.SetValve(default);
        for (var seconds = 0; seconds < FloodSecondsAtMost && !rig.IsFlooded && rig.IsFed && looks < StillLooks; seconds += 20)
        {
            yield return new(20);
            (risen, looks) = rig.Level > risen + RisesMeters ? (rig.Level, 0) : (risen, looks + 1);
        }

        rig.SetValve(rig.Makeup.Rig.RunDepth);
        for (var pails = 0; pails < 6 && !rig.IsFlooded && rig.PourIn(Pailful).Whole.Liters > 0; pails++)
        {
            yield return new(40);
        }

        yield return Told(10, at => new Did(at, DeedName.FloodPan, null));
    }

    private IEnumerable<Act> Pour(bool atDrawOff)
    {
        yield return new(chance.Between(10, 30));
        foreach (var act in Poured(atDrawOff ? rig.CoolPan(Pailful) : rig.PourIn(Pailful)))
        {
            yield return act;
        }
    }

    private IEnumerable<Act> PourIntoBack()
    {
        yield return new(chance.Between(10, 30));
        foreach (var act in Poured(rig.PourIntoBack(Pailful)))
        {
            yield return act;
        }
    }

    private IEnumerable<Act> Poured(ByHand poured)
    {
        foreach (var (liquid, volume) in new[] { (Liquids.Sap, poured.Sap), (Liquids.Water, poured.Water) })
        {
            var said = units.From(volume);
            said = said.With(double.Round(said.Value * 4) / 4);
            if (said.Value > 0)
            {
                yield return Told(10, at => new Did(at, DeedName.FillPan, said) { Is = liquid });
            }
        }

        foreach (var read in DepthsRead())
        {
            yield return Told(20, read);
        }
    }

    /// <summary>What the ruler shows, one pan after the other; read when it is said.</summary>
    private IEnumerable<Func<Moment, LineIn?>> DepthsRead()
    {
        yield return at => new Reading(at, ReadingName.PanDepth, instruments.Read(ReadingName.PanDepth));
        if (rig.BackDepth is not null)
        {
            yield return at => new Reading(at, ReadingName.BackPanDepth, instruments.Read(ReadingName.BackPanDepth));
        }
    }

    /// <summary>A portion as it was asked for, by eye: told with its amount, or by a yes.</summary>
    private IEnumerable<Act> PourPortion()
    {
        yield return new(chance.Between(15, 40));
        var portion = rig.Makeup.Rig.Portion;
        var poured = rig.PourPortion(portion * chance.Factor(0.08));
        var said = units.From(poured);
        said = said.With(double.Round(said.Value * 4) / 4);
        var isWhole = poured > portion * 0.8;
        yield return Told(5, at => isWhole && chance.Chance(0.5) ? new Answer(at, AnswerWords.Yes)
            : said.Value > 0 ? new Did(at, DeedName.FillPan, said) { Is = Liquids.Sap }
            : new Answer(at, AnswerWords.Skip));
    }

    /// <summary>Looks at pan and tank; an empty tank gets water from the pails.</summary>
    private IEnumerable<Act> CheckLevel()
    {
        yield return new(chance.Between(10, 30));
        if (rig.Tank.Liters < 2 && rig.RefillWithWater(Pailful) is { Liters: > 0.1 } water)
        {
            var said = units.From(water);
            said = said.With(double.Round(said.Value * 4) / 4);
            yield return Told(60, at => new Did(at, DeedName.RefillTank, said));
        }

        foreach (var read in DepthsRead())
        {
            yield return new(20, read);
        }
    }

    private IEnumerable<Act> Simple(double low, double high, Action deed, DeedName name)
    {
        yield return new(chance.Between(low, high));
        deed();
        yield return Told(5, at => new Did(at, name, null));
    }

    /// <summary>What was just done, and is told so many seconds later.</summary>
    private Act Told(double seconds, Func<Moment, LineIn?> say)
    {
        IsUntold = true;
        return new(seconds, at =>
        {
            IsUntold = false;
            return say(at);
        });
    }
}
