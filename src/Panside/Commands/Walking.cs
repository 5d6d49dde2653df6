using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Plans;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Commands;

/// <summary>Plays a flow through plan files on a rig, and tells the first difference of each.</summary>
internal sealed class Walking(TextWriter output, TextWriter errors)
{
    /// <summary>Walks.</summary>
    /// <param name="flowFile">The flow.</param>
    /// <param name="rigFile">The rig.</param>
    /// <param name="plans">The plans; none for the one that is kept beside the flow under the rig's name, in <c>plans</c>.</param>
    /// <param name="asWalked">Whether each plan is printed as it was walked instead.</param>
    /// <returns>The exit status: wrong where a plan or a walk is.</returns>
    /// <exception cref="UnusableException">A file cannot be read.</exception>
    /// <exception cref="FaultyFileException">Flow or rig have faults.</exception>
    public int Run(string flowFile, string rigFile, IReadOnlyList<string> plans, bool asWalked)
    {
        var rig = RigFile.Read(rigFile, Library.ReadFile(rigFile, "rig"));
        var flow = Library.FlowFor(rig, flowFile);
        var status = ExitStatus.Done;
        foreach (var path in plans.Count > 0 ? plans : [BesideFlow(flowFile, rigFile)])
        {
            status = int.Max(status, Walk(path, flow, rig, asWalked) ? ExitStatus.Done : ExitStatus.Wrong);
        }

        return status;
    }

    /// <summary>Where the plan of a flow for a rig is kept: <c>plans/RIG</c> beside the flow.</summary>
    internal static string BesideFlow(string flowFile, string rigFile) =>
        Path.Combine(Path.GetDirectoryName(flowFile) ?? "", "plans", Path.GetFileName(rigFile));

    private bool Walk(string path, Flow flow, Rig rig, bool asWalked)
    {
        var text = Library.ReadFile(path, "plan");
        try
        {
            // What is to be printed as walked may ask for what this flow has not.
            var plan = PlanFile.Read(path, text, asWalked ? null : flow);
            if (asWalked)
            {
                plan = plan with { Lines = [.. plan.Lines.Select(line => line with { Asks = null })] };
            }

            var walked = PlanWalk.Of(path, plan, new Setting(flow, rig, plan.Guidance, Product.Name));
            if (asWalked)
            {
                output.Write(PlanText.Of(plan, walked));
            }

            if (walked.Difference is { } difference)
            {
                Telling.Faults(asWalked ? errors : output, errors, [difference], text);
                return false;
            }

            errors.WriteLine($"{path}: {walked.Asked.Count} lines walked with the flow '{flow.Name}' on the rig '{rig.Name}', no difference.");
            return true;
        }
        catch (FaultyFileException fault)
        {
            Telling.Faults(output, errors, fault.Faults, text);
            return false;
        }
    }
}
