using System.Globalization;

namespace Panside.Guide.Hearing.Cries;

/// <summary>
/// How much each trait of a sentence says for each kind of meaning, a hazard or a fact, and for none: the weights of a multinomial logistic regression, fitted to
/// sentences that people say (<c>panside-workshop ear</c> and <c>talk</c>). A line of its file is a trait, a tab, and hazards with hundredths.
/// </summary>
public sealed class FittedWeights
{
    /// <summary>What stands for no danger at all.</summary>
    public const string None = "none";

    private const string Bias = "bias";

    private readonly string[] _hazards;
    private readonly Dictionary<string, (byte Hazard, short Hundredths)[]> _weights = new(StringComparer.Ordinal);

    /// <summary>Reads weights.</summary>
    /// <param name="text">The file's text: comments (<c>#</c>), a line <c>hazards</c> with their names, and a line for each trait.</param>
    /// <exception cref="FormatException">A line is none of these; the message tells its number.</exception>
    public FittedWeights(string text)
    {
        var (number, hazards) = (0, new List<string>());
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            number++;
            if (line.IsEmpty || line[0] == '#')
            {
                continue;
            }

            var tab = line.IndexOf('\t');
            if (tab < 0)
            {
                throw new FormatException($"line {number}: expected a trait, a tab and its weights.");
            }

            if (hazards.Count == 0)
            {
                hazards.AddRange(line[(tab + 1)..].ToString().Split(' '));
                continue;
            }

            _weights[line[..tab].ToString()] = Row(line[(tab + 1)..], number, hazards.Count);
        }

        _hazards = [.. hazards];
    }

    /// <summary>The kinds that they know, of a cry its hazards, <see cref="None"/> among them.</summary>
    public IReadOnlyList<string> Kinds => _hazards;

    /// <summary>Whether they know a trait.</summary>
    public bool Has(string trait) => _weights.ContainsKey(trait);

    /// <summary>How likely each of <see cref="Kinds"/> is, by the traits of a sentence: shares of 1.</summary>
    /// <remarks>The soft maximum of the sums of weights (Bishop, Pattern Recognition and Machine Learning, 4.3.4).</remarks>
    public double[] Shares(IEnumerable<string> traits)
    {
        var sums = new int[_hazards.Length];
        foreach (var trait in traits.Append(Bias))
        {
            foreach (var (hazard, hundredths) in _weights.GetValueOrDefault(trait, []))
            {
                sums[hazard] += hundredths;
            }
        }

        var most = sums.Max();
        var shares = Array.ConvertAll(sums, sum => double.Exp((sum - most) / 100.0));
        var all = shares.Sum();
        return Array.ConvertAll(shares, share => share / all);
    }

    /// <summary>The text of a file.</summary>
    /// <param name="comment">What it was fitted on; a line of its own.</param>
    /// <param name="hazards">The hazards in the order of the weights.</param>
    /// <param name="biases">What each begins with.</param>
    /// <param name="weights">Each trait's weights. </param>
    /// <param name="least">What is smaller is left out.</param>
    public static string Write(string comment, IReadOnlyList<string> hazards, IReadOnlyList<double> biases, IEnumerable<(string Trait, IReadOnlyList<double> Weights)> weights, double least)
    {
        var rows = weights.OrderBy(row => row.Trait, StringComparer.Ordinal).Prepend((Bias, biases))
            .Select(row => (row.Item1, Said: Said(row.Item2, row.Item1 == Bias ? 0 : least))).Where(row => row.Said.Length > 0).Select(row => $"{row.Item1}\t{row.Said}");
        return string.Join('\n', rows.Prepend($"hazards\t{string.Join(' ', hazards)}").Prepend($"# {comment}")) + "\n";
    }

    private static string Said(IReadOnlyList<double> weights, double least) => string.Join(' ', weights
        .Select((weight, hazard) => (Hazard: hazard, Hundredths: (int)double.Round(100 * weight))).Where(weight => int.Abs(weight.Hundredths) >= 100 * least)
        .Select(weight => string.Create(CultureInfo.InvariantCulture, $"{weight.Hazard}:{weight.Hundredths}")));

    private static (byte Hazard, short Hundredths)[] Row(ReadOnlySpan<char> written, int number, int hazards)
    {
        var row = new List<(byte, short)>(hazards);
        foreach (var range in written.Split(' '))
        {
            var one = written[range];
            var colon = one.IndexOf(':');
            if (colon < 1 || !byte.TryParse(one[..colon], CultureInfo.InvariantCulture, out var hazard) || hazard >= hazards
                || !short.TryParse(one[(colon + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var hundredths))
            {
                throw new FormatException($"line {number}: '{one}' is no weight. Expected a hazard's place, a colon and hundredths, as in 3:-25.");
            }

            row.Add((hazard, hundredths));
        }

        return [.. row];
    }
}
