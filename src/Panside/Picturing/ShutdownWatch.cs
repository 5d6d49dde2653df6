using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Judging;
using Panside.Practice;
using Panside.Practice.Operator;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Picturing;

/// <summary>
/// Practises one boil without a person and keeps what was forecast, and what truly comes, until it is known which charge was the
/// last: only then is the simulated rig run ahead, from the looks that the picture shows.
/// </summary>
internal sealed class ShutdownWatch
{
    /// <summary>So long before the last charge the picture begins.</summary>
    private const int MinutesBefore = 30;

    /// <summary>Of the looks within so many minutes the last one is kept: it knows what was read and done in them.</summary>
    private const int EveryMinutes = 2;

    private readonly Setting _setting;
    private readonly SessionDoor _door;
    private readonly PracticeRig _rig;
    private readonly DateTimeOffset _midnight;
    private readonly List<Taken> _taken = [];
    private readonly List<double> _clear = [];

    private ShutdownWatch(Setting setting, PracticeRig rig, DateTimeOffset start)
    {
        (_setting, _door, _rig) = (setting, new(setting), rig);
        _midnight = start - start.TimeOfDay;
    }

    /// <summary>Practises a boil.</summary>
    /// <param name="setting">What it runs on.</param>
    /// <param name="scenario">Where it begins.</param>
    /// <param name="seed">Which rig of that size.</param>
    /// <param name="start">When it begins.</param>
    /// <returns>Its shutdown; null where it came to none.</returns>
    public static Shutdown? Of(Setting setting, Scenario scenario, long seed, DateTimeOffset start)
    {
        var rig = new PracticeRig(setting.Rig, scenario, seed);
        var watch = new ShutdownWatch(setting, rig, start);
        var outcome = new Unattended(watch._door, rig, new(rig, setting.Units, seed), start)
        {
            Overheard = (_, answers) => watch.Look(answers),
        }.Run();
        return outcome.SecondsAtHold is null ? null : watch.Close();
    }

    private void Look(IReadOnlyList<LineOut> answers)
    {
        var now = new Situation(_setting, _door.State);
        if (!now.IsLit || _door.State.Now is not { } moment)
        {
            return;
        }

        var minute = Minute(moment);
        if (answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" }))
        {
            _clear.Add(minute);
        }

        if (_taken.Count > 0 && (int)_taken[^1].Minute / EveryMinutes == (int)minute / EveryMinutes)
        {
            _taken.RemoveAt(_taken.Count - 1);
        }

        _taken.Add(new(minute, now.State.Rigs.WithoutWood, RunAhead.WithoutWoodFromNow(_rig), _rig.Tank, _rig.Depth));
    }

    private Shutdown? Close()
    {
        if (new Situation(_setting, _door.State).LastWood is not { } wood)
        {
            return null;
        }

        var lastCharge = Minute(wood);
        var looks = _taken.Where(look => look.Minute >= lastCharge - MinutesBefore).Select(Shown).ToList();
        return new()
        {
            Boil = $"{_setting.Rig.Name}; scenario {_rig.Scenario.Name}; seed {_rig.Seed}; guidance {_setting.Header.Guidance}",
            Units = _setting.Units,
            LeastDepth = _setting.Units.From(_setting.Rig.LeastDepth).Value,
            Looks = looks,
            Marks = [.. Marks(lastCharge, looks).Where(mark => mark.Minute <= looks[^1].Minute).OrderBy(mark => mark.Minute)],
        };
    }

    private IEnumerable<Mark> Marks(double lastCharge, IReadOnlyList<ShutdownLook> looks)
    {
        yield return new(lastCharge, "last charge");
        foreach (var deed in new[] { DeedName.SpreadCoals, DeedName.FloodPan, DeedName.CoverPan })
        {
            if (_door.State.Last(deed) is { } done && Minute(done.At) >= lastCharge)
            {
                yield return new(Minute(done.At), deed.Spoken);
            }
        }

        if (looks.LastOrDefault(look => look.Still.Truth > 0) is { } boiling)
        {
            yield return new(boiling.Minute + boiling.Still.Truth, "truly still");
        }

        foreach (var clear in _clear.Where(clear => clear >= lastCharge).Take(1))
        {
            yield return new(clear, "clear to leave");
        }
    }

    private ShutdownLook Shown(Taken look)
    {
        double Liters(double liters) => _setting.Units.From(Volume.FromLiters(liters)).Value;
        var (liters, still) = look.Truth.Value;
        return new(
            look.Minute,
            Fan.Of(quantile => Liters(look.Outlook.ResidualLiters(quantile)), Liters(liters)),
            Fan.Of(look.Outlook.StillMinutes, still),
            _setting.Units.From(look.Tank).Value,
            _setting.Units.From(look.Depth).Value);
    }

    private double Minute(Moment at) => (at.Time - _midnight).TotalMinutes;

    private sealed record Taken(
        double Minute, Outlook Outlook, Lazy<(double Liters, double StillMinutes)> Truth, Volume Tank, Length Depth);
}
