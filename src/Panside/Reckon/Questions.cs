using Panside.Commands;
using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>Gathers the inputs of a calculation: what was typed, what is asked for, what is usual.</summary>
/// <param name="calculation">The calculation.</param>
/// <param name="units">The units of bare numbers.</param>
/// <param name="ask">Asks a person and returns the answer, null at the end of input; null where there is nobody to ask.</param>
internal sealed class Questions(Calculation calculation, UnitSystem units, Func<string, string?>? ask)
{
    private readonly Dictionary<string, Value> _values = [];

    /// <summary>The values, in the order of the calculation's inputs.</summary>
    /// <exception cref="UnusableException">One is not believed, or missing with nobody to ask.</exception>
    public IReadOnlyDictionary<string, Value> Gather(IReadOnlyDictionary<string, string> typed)
    {
        foreach (var input in calculation.Inputs.Where(input => typed.ContainsKey(input.Name)))
        {
            var (value, fault) = InputReader.Read(input, typed[input.Name], units);
            _values[input.Name] = value ?? throw new UnusableException(fault!);
        }

        foreach (var input in calculation.Inputs.Where(input => input.IsNeeded && !Has(input.Name) && !IsChoice(input.Name)))
        {
            Need(input);
        }

        FillCompanions();
        FillChoice(calculation.OneOf);
        FillChoice(calculation.AlsoOneOf);
        FillCompanions();
        foreach (var input in calculation.Inputs.Where(input => input.Usual is not null && !Has(input.Name)))
        {
            _values[input.Name] = InputReader.Usual(input, units);
        }

        return new OrderedDictionary<string, Value>(calculation.Inputs
            .Where(input => Has(input.Name)).Select(input => KeyValuePair.Create(input.Name, _values[input.Name])));
    }

    private bool Has(string name) => _values.ContainsKey(name);

    private bool IsChoice(string name) => calculation.OneOf.Contains(name) || calculation.AlsoOneOf.Contains(name);

    private Input InputOf(string name) => calculation.Inputs.First(input => input.Name == name);

    private void FillCompanions()
    {
        foreach (var input in calculation.Inputs.Where(input => Has(input.Name) && input.With is { } with && !Has(with)))
        {
            Need(InputOf(input.With!), $" {input.Option} needs it.");
        }
    }

    private void FillChoice(IReadOnlyList<string> names)
    {
        if (names.Count == 0 || names.Any(Has))
        {
            return;
        }

        if (ask is not null && names.Any(name => Asked(InputOf(name), "; Enter if you do not know it")))
        {
            return;
        }

        var options = names.Select(name => $"{InputOf(name).Option} '{InputOf(name).Example}' ({InputOf(name).What})");
        throw new UnusableException($"One of these is needed: {string.Join(", ", options)}.");
    }

    private void Need(Input input, string why = "")
    {
        if (ask is null || !Asked(input, ""))
        {
            throw new UnusableException($"{input.Option} is missing: {input.What}. Write it like {input.Option} '{input.Example}'.{why}");
        }
    }

    /// <remarks>Asks until the answer is believed; an empty one is none.</remarks>
    private bool Asked(Input input, string aside)
    {
        var before = "";
        while (ask!($"{before}{Sentence(input.What)}{Hint(input)}{aside}: ") is { } answer && answer.Trim().Length > 0)
        {
            var (value, fault) = InputReader.Read(input, answer, units);
            if (value is not null)
            {
                _values[input.Name] = value;
                return true;
            }

            before = fault + Environment.NewLine;
        }

        return false;
    }

    private string Hint(Input input) => input.Words.Count > 0
        ? $" ({string.Join(", ", input.Words)})"
        : $", in {input.UnitIn(units)?.Shown() ?? "degrees Baume"} (like {input.Example})";

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
