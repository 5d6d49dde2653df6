namespace Panside.Journal;

/// <summary>How long to wait before a thing that failed is tried again, counted in lines in: at the next one, then at every second, fourth, eighth.</summary>
internal sealed class Patience
{
    /// <summary>So many lines in at most go by between two tries.</summary>
    private const int LongestWait = 64;

    private int _failures;
    private int _wait;

    /// <summary>Whether to try at this line.</summary>
    public bool IsDue() => _wait == 0 || --_wait < 0;

    /// <summary>It failed.</summary>
    public void Fail() => _wait = int.Min((1 << int.Min(_failures++, 10)) - 1, LongestWait);

    /// <summary>It went well.</summary>
    public void Succeed() => (_failures, _wait) = (0, 0);
}
