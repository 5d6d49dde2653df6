using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Panside.Fuzz;

/// <summary>Changes inputs of a corpus: the same seed and number give the same input, whatever was tried before.</summary>
internal sealed partial class Mutator
{
    private static readonly string[] Pieces =
    [
        "\"", "{", "}", "[", "]", ":", ",", "\\", "\\ud800", "\\u0000", "\uD83D", "\0", "null", "true", "-", "1e400", "99999999999999999999", "\"at\":", "\"seq\":1,", "\"unit\":\"gal\"",
        "\"value\":1", "T", "+00:00", "é", "🍁", "\u001b[31m", "\u009b", "\u202e", "\u200b", "\u2028", "\r", "\t", "\n", "\n\n", "  ", "- ", "? ", "&a ", "*a", "!!str ", "|", ">", "#", "%", "@", "`",
        "'", "<<: *a", "---\n", "...", "٣", "½", "ſ", "K", "İ", "=cmd|", "yes", "no", "later", "undo", "emergency", "leave", "what if ", "until ", "when", "facts", "goto",
    ];

    private static readonly string[] Numbers =
    [
        "0", "-0", "-1", "1e-9", "-1e-9", "5e-324", "1e9", "-1e9", "1e400", "27", "31.3", "100.1", "-273.15", "-459.67", "-460", "999999999", "2147483648", "9223372036854775808", "0.1", "00", "1.", ".5",
        "1/0", "60", "24:00", "NaN",
    ];

    private readonly string[][] _corpus;

    /// <summary>A mutator over inputs, each of one line or more.</summary>
    public Mutator(IEnumerable<string[]> corpus) => _corpus = [.. corpus.Where(item => item.Length > 0)];

    /// <summary>The inputs of a case.</summary>
    /// <param name="seed">The seed of the run.</param>
    /// <param name="number">The number of the case.</param>
    /// <param name="parts">How many inputs a case has at the most.</param>
    public IReadOnlyList<byte[]> Make(int seed, long number, int parts)
    {
        var chance = new Random(HashCode(seed, number));
        var inputs = new byte[chance.Next(1, parts + 1)][];
        for (var at = 0; at < inputs.Length; at++)
        {
            // Most stays well formed, so that what lies behind the first check is reached too.
            var text = new StringBuilder(One(chance));
            for (var change = chance.Next(chance.Next(2) == 0 ? 2 : 7); change > 0; change--)
            {
                Change(text, chance);
            }

            var bytes = Encoding.UTF8.GetBytes(text.ToString());
            for (var broken = chance.Next(12) == 0 ? chance.Next(1, 4) : 0; broken > 0 && bytes.Length > 0; broken--)
            {
                bytes[chance.Next(bytes.Length)] = (byte)chance.Next(256);
            }

            inputs[at] = bytes;
        }

        return inputs;
    }

    private string One(Random chance)
    {
        var item = _corpus[chance.Next(_corpus.Length)];
        return item[chance.Next(item.Length)];
    }

    private void Change(StringBuilder text, Random chance)
    {
        var at = chance.Next(text.Length + 1);
        var length = int.Min(chance.Next(chance.Next(3) == 0 ? 60 : 6), text.Length - at);
        switch (chance.Next(9))
        {
            case 0:
                text.Remove(at, length);
                break;
            case 1:
                text.Insert(at, Pieces[chance.Next(Pieces.Length)]);
                break;
            case 2:
                text.Remove(at, length).Insert(at, Pieces[chance.Next(Pieces.Length)]);
                break;
            case 3:
                text.Insert(at, text.ToString(at, length));
                break;
            case 4:
                text.Insert(at, (char)chance.Next(chance.Next(2) == 0 ? 128 : 0x10000));
                break;
            case 5:
                var other = One(chance);
                var from = chance.Next(other.Length + 1);
                text.Insert(at, other.AsSpan(from, int.Min(chance.Next(80), other.Length - from)));
                break;
            case 6 when chance.Next(20) == 0:
                text.Insert(at, Pieces[chance.Next(Pieces.Length)], chance.Next(1, 3000));
                break;
            default:
                Number(text, chance);
                break;
        }
    }

    private static void Number(StringBuilder text, Random chance)
    {
        var found = Digits().Matches(text.ToString());
        if (found.Count > 0 && found[chance.Next(found.Count)] is var one)
        {
            var instead = chance.Next(2) == 0 ? Numbers[chance.Next(Numbers.Length)]
                : (Math.Pow(10, chance.Next(-3, 5)) * (chance.NextDouble() - 0.1)).ToString("0.###", CultureInfo.InvariantCulture);
            text.Remove(one.Index, one.Length).Insert(one.Index, instead);
        }
    }

    private static int HashCode(int seed, long number) => unchecked((int)(((ulong)number + ((ulong)(uint)seed << 32)) * 0x9E3779B97F4A7C15UL >> 33));

    [GeneratedRegex(@"-?[0-9]+(?:\.[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Digits();
}
