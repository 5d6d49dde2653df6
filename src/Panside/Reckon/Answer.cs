using Panside.Commands;

namespace Panside.Reckon;

/// <summary>A calculation carried out: its inputs and its result.</summary>
internal sealed record Answer(Calculation Calculation, IReadOnlyList<KeyValuePair<string, Value>> Inputs, Result Result)
{
    /// <summary>Carries it out.</summary>
    /// <exception cref="UnusableException">Inputs that do not go together, as a sentence.</exception>
    public static Answer To(Calculation calculation, Guide.Measures.UnitSystem units, IReadOnlyDictionary<string, Value> inputs)
    {
        try
        {
            var given = new Given(units, inputs);
            var result = calculation.Reckon(given);
            return new(calculation, [.. inputs.Where(pair => !pair.Value.IsUsual || given.IsUsed(pair.Key))], result);
        }
        catch (ArgumentOutOfRangeException fault)
        {
            // The framework appends the parameter and the value to the reckoning's own sentence.
            var end = fault.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
            var sentence = end < 0 ? fault.Message : fault.Message[..end];
            throw new UnusableException($"{calculation.Name}: {sentence.Replace("?.", "?", StringComparison.Ordinal)}");
        }
    }
}
