using System.Text;

namespace Panside.Guide.Flows;

/// <summary>A text with figures in braces: <c>Tank at {tank}.</c></summary>
public static class Template
{
    /// <summary>The names in braces.</summary>
    public static IEnumerable<string> FiguresIn(string template)
    {
        for (var open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', open + 1))
        {
            var close = template.IndexOf('}', open);
            yield return close < 0 ? template[(open + 1)..] : template[(open + 1)..close];
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
            var close = rest.IndexOf('}');
            text.Append(rest[..open]).Append(figure(rest[(open + 1)..close].ToString()));
            rest = rest[(close + 1)..];
        }

        return text.Append(rest).ToString();
    }
}
