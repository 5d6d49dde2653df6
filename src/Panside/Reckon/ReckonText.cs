using System.Text;

namespace Panside.Reckon;

/// <summary>An answer for a person: the figures first, then what they mean, then what they stand on.</summary>
internal static class ReckonText
{
    private const int Indent = 16;

    /// <summary>The answer's lines.</summary>
    public static string Of(Answer answer)
    {
        var text = new StringBuilder();
        var column = answer.Result.Figures.Max(figure => figure.Name.Length) + 2;
        foreach (var figure in answer.Result.Figures)
        {
            text.Append(Spoken(figure.Name).PadRight(column)).Append(figure.Text).Append('\n');
        }

        foreach (var note in answer.Result.Notes)
        {
            text.AppendWrapped(note, 0);
        }

        var basis = answer.Calculation.Basis;
        text.Append('\n');
        Part(text, "from", string.Join(", ", answer.Inputs.Select(pair =>
            $"{Spoken(pair.Key)} {pair.Value}{(pair.Value.IsUsual ? " (usual)" : "")}")));
        Part(text, "method", basis.Method);
        Part(text, "source", SourceNames.Spelled(basis.Sources));
        Part(text, "range", basis.Range);
        Part(text, "does not cover", basis.DoesNotCover);
        return text.ToString();
    }

    private static string Spoken(string name) => name.Replace('-', ' ');

    private static void Part(StringBuilder text, string title, string words) =>
        text.Append(title.PadRight(Indent)).AppendWrapped(words, Indent);
}
