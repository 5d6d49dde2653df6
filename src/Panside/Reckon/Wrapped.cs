using System.Text;
using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>Breaks sentences into lines.</summary>
internal static class Wrapped
{
    private const int Width = 76;

    /// <summary>Appends words from a column on; further lines start in that column too.</summary>
    public static StringBuilder AppendWrapped(this StringBuilder text, string words, int column, int width = Width)
    {
        var at = column;
        foreach (var word in Together(words.Split(' ')))
        {
            if (at > column && at + 1 + word.Length > width)
            {
                text.Append('\n').Append(' ', column);
                at = column;
            }
            else if (at > column)
            {
                text.Append(' ');
                at++;
            }

            text.Append(word);
            at += word.Length;
        }

        return text.Append('\n');
    }

    /// <remarks>A value stays with its unit.</remarks>
    private static List<string> Together(string[] words)
    {
        List<string> parts = [];
        foreach (var word in words)
        {
            var isUnit = UnitNames.FromWord(word.TrimEnd('.', ',', ';', ':', ')')) is not null;
            if (isUnit && parts.Count > 0 && parts[^1].Any(char.IsAsciiDigit))
            {
                parts[^1] += " " + word;
            }
            else
            {
                parts.Add(word);
            }
        }

        return parts;
    }
}
