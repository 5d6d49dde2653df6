using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Picturing;
using Panside.Practice;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Workshop.Shutdowns;

/// <summary>
/// Practises one boil without a person and keeps what was forecast until it is known which charge was the last: only then is the
/// simulated rig run ahead, from the looks that the picture shows. It listens as the door between the session and the practice,
/// because there time comes by also where nobody says anything.
/// </summary>
internal sealed class ShutdownWatch : IDoor
{
    /// <summary>So long before the last charge the picture begins.</summary>
    private const int MinutesBefore = 30;

    /// <summary>Of the looks within so many minutes the last one is kept: it knows what was read and done in them.</summary>
    private const int EveryMinutes = 2;

    private readonly Session _session;
    private readonly PracticeRig _rig;
    private readonly DateTimeOffset _midnight;
    private readonly List<Taken> _taken = [];
    private readonly List<double> _clear = [];

    private ShutdownWatch(Setting setting, PracticeRig rig, DateTimeOffset start) =>
        (_session, _rig, _midnight) = (new(setting), rig, start - start.TimeOfDay);

    /// <inheritdoc/>
    public SessionState State => _session.State;

    private Setting Setting => _session.Setting;

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
        var outcome = new Unattended(watch, rig, new PracticeOperator(rig, setting.Units, seed), start).Run();
        return outcome.SecondsAtHold is null ? null : watch.Close();
    }

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        var answers = _session.Hear(line);
        if (answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" }))
        {
            _clear.Add(Minute(line.At));
        }

        // The operator has done what the line says before saying it.
        Look(State, line.At);
        return answers;
    }

    /// <inheritdoc/>
    public bool IsDue(Moment at)
    {
        if (_taken.Count == 0 || Slot(_taken[^1].Minute) != Slot(Minute(at)))
        {
            Look(_session.At(at), at);
        }

        return _session.IsDue(at);
    }

    private static int Slot(double minute) => (int)minute / EveryMinutes;

    private void Look(SessionState state, Moment at)
    {
        if (!new Situation(Setting, state).IsLit)
        {
            return;
        }

        if (_taken.Count > 0 && Slot(_taken[^1].Minute) == Slot(Minute(at)))
        {
            _taken.RemoveAt(_taken.Count - 1);
        }

        _taken.Add(new(Minute(at), state.Rigs.Forecasts, RunAhead.WithoutWoodFromNow(_rig), _rig.Tank, _rig.Depth));
    }

    private Shutdown? Close()
    {
        if (new Situation(Setting, State).LastWood is not { } wood)
        {
            return null;
        }

        var lastCharge = Minute(wood);
        var looks = _taken.Where(look => look.Minute >= lastCharge - MinutesBefore).AsParallel().AsOrdered().Select(Shown).ToList();
        return new()
        {
            Boil = $"{Setting.Rig.Name}; scenario {_rig.Scenario.Name}; seed {_rig.Seed}; guidance {Setting.Header.Guidance}",
            Units = Setting.Units,
            LeastDepth = Setting.Units.From(Setting.Rig.LeastDepth).Value,
            Looks = looks,
            Marks = [.. Marks(lastCharge, looks).Where(mark => mark.Minute <= looks[^1].Minute).OrderBy(mark => mark.Minute)],
        };
    }

    private IEnumerable<Mark> Marks(double lastCharge, IReadOnlyList<ShutdownLook> looks)
    {
        yield return new(lastCharge, "last charge");
        foreach (var deed in new[] { DeedName.SpreadCoals, DeedName.FloodPan, DeedName.CoverPan })
        {
            if (State.Last(deed) is { } done && Minute(done.At) >= lastCharge)
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
        double Liters(double liters) => Setting.Units.From(Volume.FromLiters(liters)).Value;
        var ((liters, still), outlook) = (look.Truth.Value, look.Ahead.WithoutWood);
        return new(
            look.Minute,
            Fan.Of(quantile => Liters(outlook.ResidualLiters(quantile)), Liters(liters)),
            Fan.Of(outlook.StillMinutes, still),
            Setting.Units.From(look.Tank).Value,
            Setting.Units.From(look.Depth).Value);
    }

    private double Minute(Moment at) => (at.Time - _midnight).TotalMinutes;

    private sealed record Taken(
        double Minute, RigForecasts Ahead, Lazy<(double Liters, double StillMinutes)> Truth, Volume Tank, Length Depth);
}
