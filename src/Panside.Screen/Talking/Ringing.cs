using Panside.Guide.Lines;

namespace Panside.Screen.Talking;

/// <summary>
/// When the terminal's bell is rung: once for what is to be done soon, three times for what is to be done now, and for danger on and on
/// until somebody answers. Who typed it is there: what comes as an answer to typed words is never rung on and on.
/// </summary>
internal sealed class Ringing
{
    private const int ForSoon = 1;
    private const int ForNow = 3;

    /// <summary>Danger is rung at every second look: so each stroke is heard as one.</summary>
    private const int DangerEvery = 2;

    private int _left;
    private int _looks;
    private bool _isDanger;

    /// <summary>Takes in what was said.</summary>
    /// <param name="answers">The answers to a line.</param>
    /// <param name="wasTyped">Whether somebody typed the line; else time brought it.</param>
    public void Hear(IReadOnlyList<LineOut> answers, bool wasTyped)
    {
        if (wasTyped)
        {
            (_left, _isDanger) = (0, false);
        }

        foreach (var urgency in answers.OfType<AdviceLine>().Select(line => line.Advice.Urgency))
        {
            var strokes = urgency switch
            {
                "danger" or "now" => ForNow,
                "soon" => ForSoon,
                _ => 0,
            };
            _left = int.Max(_left, strokes);
            if (urgency == "danger" && !wasTyped)
            {
                (_isDanger, _looks) = (true, 0);
            }
        }
    }

    /// <summary>Whether the bell is to be rung at this look; each look takes a stroke.</summary>
    public bool Take()
    {
        if (_isDanger)
        {
            return _looks++ % DangerEvery == 0;
        }

        _left = int.Max(_left - 1, -1);
        return _left >= 0;
    }
}
