using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Simulation;

namespace Panside.Practice.Operator;

/// <summary>How the operator answers what is asked: by reading, by looking, or with yes and no as things are.</summary>
internal sealed class Eyes(PracticeRig rig, Instruments instruments, RandomStream chance)
{
    /// <summary>The answer to a prompt.</summary>
    public IEnumerable<Act> Answer(Prompt prompt)
    {
        if (prompt.Ask != Prompt.Confirm && rig.Temper.Skips > 0 && chance.Chance(rig.Temper.Skips))
        {
            return [new(Delay(10), at => new Answer(at, prompt.CanSkip ? AnswerWords.Skip : AnswerWords.Later))];
        }

        if (KnownReadings.BuiltIn.Find(prompt.Ask) is { } reading)
        {
            return Instruments.CanRead(reading) && !(reading == ReadingName.PanBrix && rig.Scenario.PanBrix is null)
                ? Read(reading, prompt.Unit)
                : [new(Delay(10), at => new Answer(at, AnswerWords.Skip))];
        }

        return ObservationName.FromCode(prompt.Ask) is not { } observation ? Confirm(prompt.Step) : prompt.Step == "stir" ? Stir(observation) : Look(observation);
    }

    /// <summary>A reading, now and then typed.</summary>
    public IEnumerable<Act> Read(ReadingName name, Unit? unit)
    {
        yield return new(Delay(name == ReadingName.TankVolume ? 45 : 25));
        var measure = instruments.Read(name, unit);
        if (name == ReadingName.PanDepth)
        {
            rig.SetValve(UnitSystem.Length(measure));
        }

        if (rig.Temper.Mistypes > 0 && chance.Chance(rig.Temper.Mistypes))
        {
            yield return new(5, at => new Text(at, Typed.Slipped(measure)));
            yield break;
        }

        yield return new(5, chance.Chance(0.25)
            ? at => new Text(at, Typed.Bare(measure))
            : at => new Reading(at, name, measure));
    }

    /// <summary>Reads again what is doubted: yes where both agree within the scale, else what it reads now.</summary>
    public IEnumerable<Act> ReadAgain(Reading doubted)
    {
        yield return new(Delay(40));
        var again = instruments.Read(doubted.Name, doubted.Measure.Unit);
        var step = instruments.Scale(doubted.Name, doubted.Measure.Unit).Step;
        var agrees = double.Abs(again.Value - doubted.Measure.Value) <= (2 * step) + 1e-9;
        yield return new(5, at => agrees ? new Answer(at, AnswerWords.Yes) : new Reading(at, doubted.Name, again));
    }

    /// <summary>What needs no question: a smell of burning, foam over the wall.</summary>
    public Observed? Alarm(Moment at)
    {
        foreach (var (name, state) in new[] { (ObservationName.Smell, "scorched"), (ObservationName.Foam, "over") })
        {
            if (Seen(name) == state)
            {
                return new(at, name, state);
            }
        }

        return null;
    }

    /// <summary>A person's delay around a usual one; now and then the operator is elsewhere for some minutes.</summary>
    public double Delay(double usual) =>
        (usual * rig.Temper.Slowness * chance.Factor(0.4)) + (chance.Chance(0.04) ? chance.Between(90, 360) : 0);

    /// <summary>Stirs end to end, as asked, and looks then.</summary>
    private IEnumerable<Act> Stir(ObservationName name)
    {
        yield return new(Delay(90));
        rig.Stir();
        foreach (var look in Look(name))
        {
            yield return look;
        }
    }

    private IEnumerable<Act> Look(ObservationName name)
    {
        yield return new(Delay(15), at => new Observed(at, name, Seen(name)));
    }

    private string Seen(ObservationName name) =>
        rig.Temper.HasACold && name == ObservationName.Smell ? "sweet" : Sights.Of(rig, name);

    /// <summary>What each confirmation asks for: a fact, or something that a person just does. Others are done, and yes.</summary>
    private IEnumerable<Act> Confirm(string step)
    {
        yield return new(Delay(25));
        if (step is "keep-fed" or "dry-cause" or "emergency-float" or "feed-cause" or "hand-feed" && !rig.FeedsWell)
        {
            // What hangs is freed, and an empty tank filled with water, before anybody says yes.
            rig.FreeFeed();
            if (rig.Tank.Liters < 2)
            {
                rig.RefillWithWater(Reckoning.Quantities.Volume.FromLiters(15 * rig.Makeup.Area));
            }

            yield return new(Delay(60));
        }

        var yes = step switch
        {
            "season-first" or "pan-leftover" => rig.Scenario.PanBrix is not null,
            "season-last" => false,
            "float-works" or "tank-valve" => rig.FeedsWell || !rig.Makeup.Rig.HasFloat,
            _ => true,
        };
        if (step == "too-thin")
        {
            rig.PourBack();
        }

        yield return new(2, at => new Answer(at, yes ? AnswerWords.Yes : AnswerWords.No));
        if (step is "float-works" or "tank-valve" && !yes)
        {
            rig.FreeFeed();
            yield return new(Delay(60), at => new Answer(at, AnswerWords.Yes));
        }
    }
}
