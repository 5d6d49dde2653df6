using System.Globalization;

namespace Panside.Commands;

/// <summary>Says how far a long reading has come, a sentence every few seconds; nothing where it is quick.</summary>
/// <param name="what">What is done: <c>Hearing the record again</c>.</param>
/// <param name="output">Where it is said.</param>
/// <param name="clock">What time it is.</param>
internal sealed class Progress(string what, TextWriter output, TimeProvider clock) : IDisposable
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(2);

    /// <summary>A shorter record is read before anybody wonders, in bytes; what takes time there is the playing.</summary>
    private const long Long = 4_000_000;

    private readonly long _begin = clock.GetTimestamp();
    private TimeSpan _said;

    /// <summary>So many of so many bytes are read.</summary>
    public void Tell(long done, long all)
    {
        var passed = clock.GetElapsedTime(_begin);
        if (passed - _said < Every || all < Long)
        {
            return;
        }

        _said = passed;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: {100 * done / all} % of {double.Max(all / 1e6, 0.1):0.0} MB after {passed.TotalSeconds:0} s. Ctrl-C leaves it; nothing is lost."));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_said > TimeSpan.Zero)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: done after {clock.GetElapsedTime(_begin).TotalSeconds:0} s."));
        }
    }
}
