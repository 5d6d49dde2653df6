using Panside.Practice.Simulation;

namespace Panside.Workshop.Judging;

/// <summary>How often charges really go in: what "going on as now" means at a rig whose operator is late.</summary>
/// <param name="interval">What the rig file says.</param>
internal sealed class ChargePace(TimeSpan interval)
{
    private const int Newest = 8;

    /// <summary>How late the simulated operator is with a charge on the mean, in seconds, before there is anything to tell it by.</summary>
    private const long Late = 75;

    private readonly Queue<long> _between = new();
    private long _last;

    /// <summary>Seconds from charge to charge, of the newest.</summary>
    public long Seconds => _between.Count < 2 ? (long)interval.TotalSeconds + Late : (long)_between.Average();

    /// <summary>Looks whether a charge went in.</summary>
    public void Look(PracticeRig rig)
    {
        var wood = rig.Second - rig.SecondsSinceWood;
        if (wood == _last)
        {
            return;
        }

        // A longer pause is no pace: something else was done.
        if (_last > 0 && wood - _last < 3 * interval.TotalSeconds)
        {
            _between.Enqueue(wood - _last);
        }

        if (_between.Count > Newest)
        {
            _between.Dequeue();
        }

        _last = wood;
    }
}
