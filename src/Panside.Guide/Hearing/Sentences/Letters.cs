using System.Text;

namespace Panside.Guide.Hearing.Sentences;

/// <summary>The letters of a text: small, without accents, one kind of apostrophe.</summary>
internal static class Letters
{
    private const string Accented = "àâäáãçéèêëîïíìôöóòûüùúÿñ";
    private const string Bare = "aaaaaceeeeiiiioooouuuuyn";

    /// <summary>The text in plain letters.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            var small = char.ToLowerInvariant(letter);
            var place = small < 128 ? -1 : Accented.IndexOf(small);
            _ = place >= 0 ? plain.Append(Bare[place])
                : small is '’' or '‘' or '`' or '´' ? plain.Append('\'')
                : small == 'œ' ? plain.Append("oe")
                : plain.Append(small);
        }

        return plain.ToString();
    }

    /// <summary>A letter that stands there so often or more, <c>heeelp</c>, as often as asked for.</summary>
    public static string Shorten(string word, int from, int most)
    {
        var shortened = new StringBuilder(word.Length);
        for (var at = 0; at < word.Length; at++)
        {
            var run = 1;
            while (at + 1 < word.Length && word[at + 1] == word[at])
            {
                (run, at) = (run + 1, at + 1);
            }

            shortened.Append(word[at], run >= from ? most : run);
        }

        return shortened.ToString();
    }
}
