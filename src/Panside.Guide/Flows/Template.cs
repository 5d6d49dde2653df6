using System.Text;

namespace Panside.Guide.Flows;

/// <summary>A text with figures in braces: <c>Tank at {tank}.</c></summary>
public static class Template
{
    /// <summary>The names in braces; an open brace that nothing closes gives itself, which is no name.</summary>
    public static IEnumerable<string> FiguresIn(string template)
    {
        for (var open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', open + 1))
        {
            var close = template.IndexOf('}', open);
            yield return close < 0 ? template[open..] : template[(open + 1)..close];
        }
    }

    /// <summary>The text with each figure put in.</summary>
    public static string Fill(string template, Func<string, string> figure)
    {
        if (!template.Contains('{', StringComparison.Ordinal))
        {
            return template;
        }

        var text = new StringBuilder();
        var rest = template.AsSpan();
        for (var open = rest.IndexOf('{'); open >= 0; open = rest.IndexOf('{'))
        {
            text.Append(rest[..open]);
            rest = rest[(open + 1)..];
            var close = rest.IndexOf('}');
            text.Append(figure(rest[..close].ToString()));
            rest = rest[(close + 1)..];
        }

        return text.Append(rest).ToString();
    }
}
