using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Practice.Mishaps;

/// <summary>Which mishaps a boil has, by its scenario and seed; begins and ends them as time and the rig come to it.</summary>
internal sealed class MishapCourse
{
    private readonly List<Pending> _pending = [];
    private readonly List<Active> _active = [];
    private readonly double _fullTank;
    private long? _boiledAt;
    private long? _drawnAt;
    private long? _halfAt;
    private long? _lowAt;
    private long? _dyingAt;
    private long? _litAt;

    /// <summary>The course of a scenario.</summary>
    public MishapCourse(IReadOnlyList<PlannedMishap> planned, double fullTank, long seed)
    {
        _fullTank = fullTank;
        var random = RandomStream.For(seed, "mishaps");
        foreach (var one in planned)
        {
            // Each draws all its numbers, whether it needs them or not: one more in a file changes no other.
            var (chance, place, which) = (random.Unit(), random.Unit(), random.Unit());
            var kind = one.Kind is { } name
                ? MishapKinds.Named(name) ?? throw new ArgumentException($"No mishap is called '{name}'.", nameof(planned))
                : MishapKinds.All[(int)(which * MishapKinds.All.Count)];
            if (chance < one.Chance)
            {
                _pending.Add(new(kind, one, one.After + ((one.Until - one.After) * place)));
            }
        }
    }

    /// <summary>What has begun so far, with its second.</summary>
    public List<(MishapKind Kind, long Second)> Begun { get; } = [];

    /// <summary>Whether the rig has to be looked at again now.</summary>
    public bool IsDue(long second) =>
        _active.Any(one => second >= one.Ends || (one.Kind.Grows && second % 60 == 0)) || (_pending.Count > 0 && second % 10 == 0);

    /// <summary>Time comes to a second: what is due begins, and what is over ends.</summary>
    /// <returns>Whether anything has changed.</returns>
    public bool ComeTo(IMishapRig rig)
    {
        var (second, truth) = (rig.Truth.Second, rig.Truth);
        _litAt ??= truth.Ledger.Wood > 0 ? second : null;
        _boiledAt ??= truth.Boil / rig.Makeup.Area > 0.0065 ? second : null;
        _drawnAt ??= rig.HasDrawn ? second : null;
        _halfAt ??= rig.Tank.Liters < _fullTank / 2 ? second : null;
        _lowAt ??= rig.Tank.Liters < _fullTank / 3 ? second : null;
        _dyingAt ??= _boiledAt is not null && rig.SecondsSinceWood > 2.5 * rig.Makeup.Rig.Interval.TotalSeconds ? second : null;
        var changed = _active.RemoveAll(one => second >= one.Ends) > 0;
        foreach (var one in _pending.Where(one => Since(one.Planned.When) is { } since && second >= since + (60 * one.Minutes)).ToList())
        {
            _pending.Remove(one);
            var minutes = one.Planned.Minutes ?? one.Kind.Minutes;
            _active.Add(new(one.Kind, one.Planned.Strength, second, second + (60 * minutes ?? double.PositiveInfinity), rig.Tank.Liters));
            Begun.Add((one.Kind, second));
            rig.Strike(one.Kind, one.Planned.Strength);
            changed = true;
        }

        return changed || _active.Any(one => one.Kind.Grows);
    }

    /// <summary>Whoever frees the feed, or rakes the coals, ends what that ends.</summary>
    /// <returns>Whether anything has ended.</returns>
    public bool Mend(Func<MishapKind, bool> which) => _active.RemoveAll(one => which(one.Kind)) > 0;

    /// <summary>The rig, the instruments and the operator as they are with what goes on now.</summary>
    public (Makeup Makeup, Kit Kit, Temper Temper) Shape(Makeup makeup, long second)
    {
        var (kit, temper) = (new Kit(), Temper.In(makeup.World));
        foreach (var one in _active)
        {
            var onset = new Onset(one.Strength, (second - one.Began) / 60.0, one.Tank);
            (makeup, kit, temper) = (one.Kind.Rig(makeup, onset), one.Kind.Kit(kit, onset), one.Kind.Operator(temper, onset));
        }

        return (makeup, kit, temper);
    }

    private long? Since(Awaits when) => when switch
    {
        Awaits.Beginning => 0,
        Awaits.FireLit => _litAt,
        Awaits.Boiling => _boiledAt,
        Awaits.FirstDraw => _drawnAt,
        Awaits.TankHalf => _halfAt,
        Awaits.TankLow => _lowAt,
        _ => _dyingAt,
    };

    private sealed record Pending(MishapKind Kind, PlannedMishap Planned, double Minutes);

    private sealed record Active(MishapKind Kind, double Strength, long Began, double Ends, double Tank);
}
