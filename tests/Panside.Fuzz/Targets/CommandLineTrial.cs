using System.Text;
using Panside.Commands;

namespace Panside.Fuzz.Targets;

/// <summary>A command line, an argument a line, run in this process. Only of commands that write no file: a changed name could be anything's.</summary>
internal sealed class CommandLineTrial : ITrial
{
    private static readonly string[] Writing = ["boil", "rig", "practice", "import"];

    private static readonly int[] Promised = [ExitStatus.Done, ExitStatus.Wrong, ExitStatus.Unusable, ExitStatus.Interrupted];

    private readonly (TextWriter Out, TextWriter Error, TextReader In) _before = (Console.Out, Console.Error, Console.In);

    /// <inheritdoc/>
    public void Try(byte[] input)
    {
        var words = Encoding.UTF8.GetString(input).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (words.Any(word => Writing.Contains(word) || word.StartsWith("/dev", StringComparison.Ordinal)))
        {
            return;
        }

        using var said = new StringWriter();
        Console.SetOut(said);
        Console.SetError(said);
        Console.SetIn(TextReader.Null);
        int status;
        try
        {
            status = CommandLine.Run(words);
        }
        finally
        {
            Dispose();
        }

        if (!Promised.Contains(status) || said.ToString().Any(letter => char.IsControl(letter) && letter is not ('\n' or '\t')))
        {
            throw new InvalidOperationException($"Status {status}: {said.ToString().Split('\n')[0]}");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Console.SetOut(_before.Out);
        Console.SetError(_before.Error);
        Console.SetIn(_before.In);
    }
}
