using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Yaml;

namespace Panside.Guide.Tests.Flows;

/// <summary>A file that must be refused: it marks the place itself, with <c># &lt;- here, column 12: what is wrong</c>.</summary>
internal static partial class MarkedFault
{
    /// <summary>The rejected files beside a folder of tests, by the rule that each breaks.</summary>
    public static IEnumerable<TheoryDataRow<string>> In(string folder) => Directory
        .EnumerateFiles(Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", folder, "rejected"), "*.yaml")
        .Select(Path.GetFileNameWithoutExtension)
        .Order(StringComparer.Ordinal)
        .Select(rule => new TheoryDataRow<string>(rule!));

    /// <summary>Reading the file must find just the fault that it marks.</summary>
    public static void MustBeFound(string folder, string rule, Action<string, string> read)
    {
        var text = RepositoryFiles.Read("tests", "Panside.Guide.Tests", folder, "rejected", rule + ".yaml");
        var (line, mark) = text.Split('\n').Index().Select(row => (row.Index + 1, Mark().Match(row.Item))).Single(row => row.Item2.Success);
        var faults = Assert.Throws<FaultyFileException>(() => read(rule, text)).Faults;
        Assert.Equal(faults.Distinct(), faults);
        var fault = Assert.Single(faults.DistinctBy(one => (one.Line, one.Column)));
        Assert.Equal((line, int.Parse(mark.Groups["column"].Value, CultureInfo.InvariantCulture)), (fault.Line, fault.Column));
        Assert.StartsWith(mark.Groups["wrong"].Value, fault.Wrong, StringComparison.Ordinal);
        Assert.StartsWith($"{rule}:{fault.Line}:{fault.Column}: ", fault.ToString(), StringComparison.Ordinal);
    }

    [GeneratedRegex("# <- here, column (?<column>[0-9]+): (?<wrong>.*)$")]
    private static partial Regex Mark();
}
