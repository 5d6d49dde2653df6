using Panside.Guide.Lines;

namespace Panside.Reporting;

/// <summary>The steps by which a total has grown. Where it shrinks, the last steps were taken back or put right.</summary>
internal sealed class RunningTotal
{
    private const double Least = 1e-9;

    private readonly List<(Moment At, double Amount)> _steps = [];

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<(Moment At, double Amount)> Steps => _steps;

    /// <summary>The total at a time.</summary>
    public void Now(Moment at, double total)
    {
        var more = total - _steps.Sum(step => step.Amount);
        while (more < -Least && _steps.Count > 0)
        {
            var (when, last) = _steps[^1];
            _steps.RemoveAt(_steps.Count - 1);
            more += last;
            (at, more) = more > Least ? (when, more) : (at, more);
        }

        if (more > Least)
        {
            _steps.Add((at, more));
        }
    }
}
