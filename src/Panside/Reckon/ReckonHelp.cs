using System.Text;

namespace Panside.Reckon;

/// <summary>What there is to reckon, and how it is asked.</summary>
internal static class ReckonHelp
{
    /// <summary>All calculations, in groups.</summary>
    public static string List()
    {
        var first = Calculations.All.First();
        var text = new StringBuilder($"panside reckon NAME [inputs]: one calculation.\n\nExample:\n  panside reckon {first.Name} {first.Example}\n");
        foreach (var group in Calculations.Groups)
        {
            text.Append('\n').Append(group.Title).Append('\n');
            foreach (var calculation in group.Calculations)
            {
                text.Append("  ").Append(calculation.Name.PadRight(16)).Append(calculation.Help).Append('\n');
            }
        }

        return text.Append(
            """

            'panside reckon NAME --help' shows the inputs of one, with an example.
            Values are written as you would say them: 211F, '900 ft', '1 1/2 qt', 66.9.

            """).ToString();
    }

    /// <summary>One calculation: an example first, then its inputs.</summary>
    public static string Of(Calculation calculation)
    {
        var text = new StringBuilder();
        text.Append($"panside reckon {calculation.Name}: {calculation.Help}\n\nExample:\n");
        text.Append($"  panside reckon {calculation.Name} {calculation.Example}\n\nInputs:\n");
        var column = calculation.Inputs.Max(input => Written(input).Length) + 2;
        foreach (var input in calculation.Inputs)
        {
            text.Append("  ").Append(Written(input).PadRight(column)).AppendWrapped(input.What + Standing(calculation, input), column + 2);
            if (input.Words.Count > 0)
            {
                text.Append(' ', column + 4).AppendWrapped(string.Join(", ", input.Words), column + 4);
            }
        }

        foreach (var choice in new[] { calculation.OneOf, calculation.AlsoOneOf }.Where(choice => choice.Count > 0))
        {
            text.Append($"One of {string.Join(", ", choice.Select(name => "--" + name))} is needed.\n");
        }

        return text.Append(
            """

            Also:
              --units us|metric|imperial  shown, and meant where none is written (us)
              --json                      one JSON object, for programs

            """).ToString();
    }

    private static string Written(Input input) =>
        $"{input.Option} {(input.Example.Contains(' ') ? $"'{input.Example}'" : input.Example)}";

    private static string Standing(Calculation calculation, Input input) => input switch
    {
        { Usual: { } usual } => $" ({usual} unless said)",
        { With: { } with } => $" (with --{with})",
        _ when calculation.OneOf.Contains(input.Name) || calculation.AlsoOneOf.Contains(input.Name) => "",
        { IsOptional: true } when calculation.Inputs.Any(other => other.With == input.Name) => "",
        { IsOptional: true } => " (may be left out)",
        _ => " (needed)",
    };
}
