using System.Text;
using Panside.Commands;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Guide.Wording;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Practice.Scenarios;

namespace Panside.Fuzz.Targets;

/// <summary>A file that is read whole: it is right and can be used, or every fault in it is told with its place.</summary>
internal abstract class FileTrial : ITrial
{
    /// <inheritdoc/>
    public void Try(byte[] input)
    {
        try
        {
            Read(input);
        }
        catch (FaultyFileException faulty)
        {
            _ = faulty.Faults.Take(3).SelectMany(fault => fault.More(Text(input))).Count();
            if (faulty.Faults.Count == 0 || faulty.Faults.Any(fault => fault.Line < 1 || fault.Column < 1))
            {
                throw new InvalidOperationException($"A fault has no place: {faulty.Message}", faulty);
            }
        }
        catch (UnusableException)
        {
            // A sentence for the operator.
        }
    }

    /// <inheritdoc/>
    public virtual void Dispose()
    {
    }

    /// <summary>Reads it, and uses it where it is right.</summary>
    protected abstract void Read(byte[] input);

    /// <summary>Its text.</summary>
    protected static string Text(byte[] input) => Encoding.UTF8.GetString(input);

    /// <summary>Says a few words to a session that runs on what was read.</summary>
    protected static void Talk(Setting setting, params string[] words)
    {
        var session = new Session(setting);
        var time = new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
        foreach (var word in words)
        {
            time = time.AddMinutes(1);
            foreach (var answer in session.Hear(new Text(Moment.Of(time), word)))
            {
                LineWriter.Write(answer);
            }
        }
    }
}

/// <summary>A flow: drawn, judged for its wording, and walked.</summary>
internal sealed class FlowTrial(long number) : FileTrial
{
    private static readonly Rig Rig = RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig));

    /// <inheritdoc/>
    protected override void Read(byte[] input)
    {
        var flow = FlowFile.Read("flow.yaml", Text(input), Vocabularies.Flow);
        FlowDiagram.Of(flow);
        FlowWording.Of("flow.yaml", flow);
        Talk(new(flow, Rig, Guidance.Beginner, "panside fuzz") { Members = Places.Members(number) }, "yes", "no", "later", "lit", "wood", "emergency", "yes", "undo", "leave", "yes");
    }
}

/// <summary>A rig: a boil begins on it.</summary>
internal sealed class RigTrial(long number) : FileTrial
{
    private static readonly Flow Flow = Library.Flow(null);

    /// <inheritdoc/>
    protected override void Read(byte[] input) =>
        Talk(new(Flow, RigFile.Read("rig.yaml", Text(input)), Guidance.Practised, "panside fuzz") { Members = Places.Members(number) }, "yes", "depth 1 1/2", "tank 20", "lit", "rolling", "status");
}

/// <summary>A scenario to practise.</summary>
internal sealed class ScenarioTrial : FileTrial
{
    /// <inheritdoc/>
    protected override void Read(byte[] input) => ScenarioFile.Read("scenario.yaml", Text(input), ScenarioLibrary.Rigs);
}

/// <summary>What past boils have taught.</summary>
internal sealed class LearnedTrial : FileTrial
{
    /// <inheritdoc/>
    protected override void Read(byte[] input) => LearnedFile.Read("rig.learned.yaml", Text(input)).Says(null);
}

/// <summary>A record, in memory: checked, its ends looked up as for a season, and one of four heard again.</summary>
internal sealed class RecordTrial(long number) : FileTrial
{
    /// <inheritdoc/>
    protected override void Read(byte[] input)
    {
        using (var ends = new MemoryStream(input))
        {
            RecordEnds.Read(ends);
        }

        var record = Record.Of(RecordBytes.Lines(input));
        if (number % 4 == 0)
        {
            new PastSession("boil.jsonl", () => RecordBytes.Lines(input), Opening.SettingOf("boil.jsonl", record, null).With(Places.Members(number))).Verify(TextWriter.Null, TextWriter.Null);
        }

        using var bytes = new MemoryStream(input);
        RecordCheck.Demand("boil.jsonl", bytes);
    }
}
