using System.Globalization;
using Panside.Guide.Flows;
using Panside.Guide.Wording;
using Panside.Guide.Yaml;

namespace Panside.Workshop.Linting;

/// <summary>The texts of a flow as a tired person reads them: years of school that they ask for, and what reads badly.</summary>
/// <param name="Name">The flow's file.</param>
/// <param name="Groups">The texts by where they are said.</param>
/// <param name="Faults">What reads badly, each with its place.</param>
internal sealed record LintedFlow(string Name, IReadOnlyList<LintedTexts> Groups, IReadOnlyList<Fault> Faults)
{
    /// <summary>Fewer sentences make no average.</summary>
    public const int FewSentences = 3;

    /// <summary>What stands for a figure: a number and a unit.</summary>
    private const string SomeFigure = "12.5 gal";

    /// <summary>Whether nothing is to be mended.</summary>
    public bool ReadsWell => Faults.Count == 0 && Groups.All(group => group.Grade.Value <= group.Most);

    /// <summary>A table of the grades, then what reads badly.</summary>
    public IEnumerable<string> Rows =>
    [
        $"| {Name} | texts | sentences | grade | at the most |",
        "| --- | --: | --: | --: | --: |",
        .. Groups.Select(group => string.Create(
            CultureInfo.InvariantCulture, $"| {group.Where} | {group.Texts} | {group.Grade.Sentences} | {group.Grade.Value:0.0} | {group.Most} |")),
        "",
        .. Faults.Select(fault => fault.ToString()),
        .. Faults.Count == 0 ? new[] { "No text reads badly." } : [],
    ];

    /// <summary>Reads a flow's texts.</summary>
    public static LintedFlow Of(string name, Flow flow)
    {
        var texts = FlowText.Of(flow, _ => SomeFigure);
        var groups = texts.GroupBy(LintedTexts.WhereOf).Select(group => LintedTexts.Of(group.Key, [.. group]));
        var hard = texts.Select(text => (Text: text, Grade: ReadingGrade.Of(text.All), Most: LintedTexts.MostOf(LintedTexts.WhereOf(text))))
            .Where(one => one.Grade.Sentences >= FewSentences && one.Grade.Value > one.Most)
            .Select(one => new Fault(
                name, one.Text.Place.Line, one.Text.Place.Column, string.Create(CultureInfo.InvariantCulture, $"'{one.Text.Id}' is of grade {one.Grade.Value:0.0}"), $"{one.Most} at the most"));
        return new(name, [.. groups], [.. FlowWording.Of(name, flow).Concat(hard).OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);
    }
}

/// <summary>Texts that are said in one place.</summary>
/// <param name="Where">A phase, a watch, an advice; alarms and emergencies together.</param>
/// <param name="Texts">How many.</param>
/// <param name="Grade">Of all of them together.</param>
/// <param name="Most">The grade that they may have.</param>
internal sealed record LintedTexts(string Where, int Texts, ReadingGrade Grade, double Most)
{
    private const string Grave = "alarms and emergencies";

    /// <summary>Where a text is said.</summary>
    public static string WhereOf(FlowText text) => text.IsAlarm || text.Phase == "emergency" ? Grave : text.Phase;

    /// <summary>What is read in danger is read by somebody frightened.</summary>
    public static double MostOf(string where) => where == Grave ? 6 : 8;

    /// <summary>The texts of a place together.</summary>
    public static LintedTexts Of(string where, IReadOnlyList<FlowText> texts) =>
        new(where, texts.Count, ReadingGrade.Of(texts.SelectMany(text => text.All)), MostOf(where));
}
