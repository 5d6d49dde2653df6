using Panside.Faces;
using Panside.Guide.Yaml;

namespace Panside.Commands;

/// <summary>The one place that decides with what status a command ends that was broken off, and what is said of it.</summary>
internal static class Ending
{
    /// <summary>Tells what broke it off, and gives the exit status.</summary>
    /// <param name="fault">What came up through the command.</param>
    /// <param name="errors">Where it is told.</param>
    public static int Of(Exception fault, TextWriter errors)
    {
        switch (fault)
        {
            case AggregateException { InnerExceptions: [var only] }:
                return Of(only, errors);
            case UnusableException unusable:
                foreach (var line in unusable.More.Prepend(unusable.Message))
                {
                    errors.WriteLine(line);
                }

                return ExitStatus.Unusable;
            case FaultyFileException faulty:
                foreach (var one in faulty.Faults)
                {
                    errors.WriteLine(one.ToString());
                }

                return ExitStatus.Unusable;
            case OutputGoneException { IsClosed: true }:
                return ExitStatus.Interrupted;
            case OutputGoneException:
                errors.WriteLine($"Standard output cannot be written ({fault.Message.TrimEnd('.')}). A boil's record is whole: 'panside boil --journal FILE' goes on.");
                return ExitStatus.Interrupted;
            case IOException or UnauthorizedAccessException:
                errors.WriteLine(fault.Message);
                return ExitStatus.Unusable;
            default:
                errors.WriteLine($"A fault of ours. Please report it with {CrashFile.Write(CommandExamples.Alone, Product.Version, fault)}. The session's record is whole: 'panside boil --journal FILE' goes on.");
                return ExitStatus.OurFault;
        }
    }
}
