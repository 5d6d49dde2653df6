using Panside.Guide;
using Panside.Guide.Answering;
using Panside.Guide.Flows;
using Panside.Guide.Plans;
using Panside.Guide.Rigs;
using Panside.Guide.Wording;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Practice.Scenarios;

namespace Panside.Commands;

/// <summary>Checks files one after the other. Faults are the values asked for and go to the output; all other words to the errors.</summary>
internal sealed class Checking(TextWriter output, TextWriter errors)
{
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>Checks the files.</summary>
    /// <returns>The exit status: unusable where a file cannot be read, else wrong where one has a fault.</returns>
    public int Run(IReadOnlyList<string> paths, bool graph)
    {
        var status = ExitStatus.Done;
        foreach (var path in paths)
        {
            try
            {
                var isRight = !_seen.Add(Path.GetFullPath(path)) ? Twice(path) : graph ? Draw(path) : Check(path);
                status = isRight ? status : int.Max(status, ExitStatus.Wrong);
            }
            catch (UnusableException fault)
            {
                errors.WriteLine(fault.Message);
                status = ExitStatus.Unusable;
            }
        }

        return status;
    }

    private bool Twice(string path)
    {
        errors.WriteLine($"{path}: is named twice; it is checked once.");
        return true;
    }

    private bool Check(string path)
    {
        byte[]? bytes = null;
        try
        {
            IReadOnlyList<Fault> warnings = [];
            var what = IsRecord(path) ? CheckedRecord(path) : Checked(path, bytes = GivenFile.Read(path), out warnings);
            foreach (var warning in warnings)
            {
                errors.WriteLine($"{warning.File}:{warning.Line}:{warning.Column}: warning: {warning.Wrong}, expected {warning.Expected}");
            }

            errors.WriteLine($"{path}: {what}, nothing wrong{(warnings.Count == 0 ? "" : warnings.Count == 1 ? "; one warning" : $"; {warnings.Count} warnings")}.");
            return true;
        }
        catch (FaultyFileException fault)
        {
            Tell(output, path, fault, bytes);
            return false;
        }
    }

    private bool Draw(string path)
    {
        var bytes = GivenFile.Read(path);
        try
        {
            var text = FileText.Of(path, bytes);
            output.Write(FileKinds.Of(path, text) == FileKind.Flow
                ? FlowDiagram.Of(FlowFile.Read(path, text, Vocabularies.Flow))
                : throw new UnusableException($"{path}: is no flow. --graph draws flows only; leave it out to check other files."));
            return true;
        }
        catch (FaultyFileException fault)
        {
            Tell(errors, path, fault, bytes);
            return false;
        }
    }

    private void Tell(TextWriter to, string path, FaultyFileException fault, byte[]? bytes)
    {
        Telling.Faults(to, errors, fault.Faults, bytes is null ? null : FileText.Readable(bytes));
        errors.WriteLine(fault.Faults.Count == 1 ? $"{path}: one fault." : $"{path}: {fault.Faults.Count} faults.");
    }

    /// <summary>A record may be too long to be read at once.</summary>
    private static bool IsRecord(string path)
    {
        var start = new byte[4096];
        using var file = GivenFile.Open(path);
        return FileKinds.Of(path, FileText.Readable(start.AsSpan(0, file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false)))) == FileKind.Record;
    }

    private string CheckedRecord(string path)
    {
        using var file = GivenFile.Open(path);
        using var progress = new Progress("Checking the record", errors, TimeProvider.System);
        return $"a record of {RecordCheck.Demand(path, file, number => progress.Tell(file.Position, file.Length))} lines";
    }

    /// <summary>What a file is; a text that reads badly is warned of, and is no fault: the flow guides all the same.</summary>
    private static string Checked(string path, byte[] bytes, out IReadOnlyList<Fault> warnings)
    {
        warnings = [];
        var text = FileText.Of(path, bytes);
        switch (FileKinds.Of(path, text))
        {
            case FileKind.Flow:
                var flow = FlowFile.Read(path, text, Vocabularies.Flow);
                warnings = FlowWording.Of(path, flow);
                return $"the flow '{flow.Name}', {flow.Steps.Count} steps";
            case FileKind.Rig:
                return $"the rig '{RigFile.Read(path, text).Name}'";
            case FileKind.Scenario:
                var scenario = ScenarioFile.Read(path, text, ScenarioLibrary.Rigs);
                return $"the scenario '{scenario.Name}', {(scenario.Mishaps.Count == 1 ? "one fault" : $"{scenario.Mishaps.Count} faults")} in it";
            case FileKind.Plan:
                var plan = PlanFile.Read(path, text);
                return $"the plan '{plan.Name}', {plan.Lines.Count} lines";
            case FileKind.Words:
                return WordFiles.Told(path, text);
            default:
                throw new FaultyFileException(
                    [new(path, 1, 1, "this is no file of ours", "a flow with the key 'flow', a rig with the key 'rig', a scenario with the key 'scenario', a plan with the key 'plan', words with the key 'words', or a record in JSON lines")]);
        }
    }
}
