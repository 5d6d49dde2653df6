using System.Text;
using System.Text.Json;
using Panside.Commands;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Words;
using Panside.Journal;

namespace Panside.Fuzz.Targets;

/// <summary>A line or a text read and understood, and no more: no session hears it, so that a thousand times as many can be tried.</summary>
internal sealed class ReaderTrial : ITrial
{
    private static readonly DateTimeOffset Time = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));

    private static readonly Listener Listener =
        new(new Setting(Library.Flow(null), RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig)), Guidance.Beginner, "panside fuzz"));

    /// <summary>The ear is made when it first hears something, and that is no answer's time.</summary>
    private static readonly Understood Warm = Listener.Understand(Moment.Of(Time), "nothing that anybody knows", null);

    private static readonly Prompt?[] Prompts =
    [
        null, new("one", Prompt.Confirm, null, ""), new("two", "boil", null, ""),
        .. KnownReadings.BuiltIn.All.Select(name => new Prompt(name.Code, name.Code, UnitSystem.Us.Preferred(name.Kind), "")),
    ];

    private int _asked;

    /// <inheritdoc/>
    public void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        GC.KeepAlive(Warm);
        var line = LineReader.Read(text.Replace("NOW", Moment.Of(Time).Written, StringComparison.Ordinal));
        LineShape.Of(text);
        RecordBytes.Damage(input);
        ClockTime.Read(text);
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            MeasureText.Read(text, dimension, UnitSystem.Metric.Preferred(dimension));
        }

        // Nobody types a whole line of the stream: the ear is not made to weigh each of them for cries.
        if (line is Text || text is not ['{', ..] || _asked % 8 == 0)
        {
            Listened(line is Text said ? said.Words : text);
        }

        _asked++;
        if (line is not Unreadable)
        {
            using var written = JsonDocument.Parse(LineWriter.Write(line));
        }

        if (Visible.Line(text).Any(char.IsControl) && !text.Contains('\t', StringComparison.Ordinal))
        {
            throw new InvalidOperationException("A control is shown.");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private void Listened(string words)
    {
        switch (Listener.Understand(Moment.Of(Time), words, Prompts[_asked % Prompts.Length]))
        {
            case MeansLine(var meant):
                LineWriter.Write(meant);
                break;
            case MeansWord(Supposition.Word, var rest):
                Supposition.Read(rest, Time, UnitSystem.Imperial);
                break;
        }
    }
}
