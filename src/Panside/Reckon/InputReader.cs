using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>Reads an input as a person writes it; what is not believed comes back as a sentence.</summary>
internal static class InputReader
{
    /// <summary>The value, or what is wrong with it.</summary>
    public static (Value? Value, string? Fault) Read(Input input, string text, UnitSystem units)
    {
        if (input.Words.Count > 0)
        {
            return Word(input, text);
        }

        if (input.Dimension is not { } dimension)
        {
            return Baume(input, text);
        }

        var (written, fault) = dimension == Dimension.Volume && Container(text) is { } container
            ? (container, null)
            : MeasureText.Said(text, dimension, input.UnitIn(units));
        if (written is not { } read)
        {
            return (null, $"{input.Option}: {fault}; write it like '{input.Example}' ({UnitNames.SpokenOf(dimension)}).");
        }

        return Slips.Of(input, read, units) is { } slip ? (null, slip)
            : Measure.Of(read.Value, read.Unit) is { } measure ? (new() { Measure = measure }, null)
            : (null, $"{input.Option}: {Measure.Fault(read.Value, read.Unit)}.");
    }

    /// <summary>The usual value, in the units that are shown, and as round as it is shown.</summary>
    public static Value Usual(Input input, UnitSystem units)
    {
        var (value, fault) = Read(input, input.Usual!, units);
        var usual = value ?? throw new InvalidOperationException(fault);
        if (usual.Measure is not { } measure)
        {
            return usual with { IsUsual = true };
        }

        var shown = units.Convert(measure, input.UnitIn(units) ?? measure.Unit);
        var digits = shown.Unit.Kind() == Dimension.Temperature ? 1 : 3;
        return usual with { Measure = shown.With(Math.Round(shown.Value, digits)), IsUsual = true };
    }

    private static (Value?, string?) Word(Input input, string text)
    {
        var word = input.Understand is { } understand
            ? understand(text)
            : input.Words.FirstOrDefault(known => Squeezed(known).Equals(Squeezed(text), StringComparison.OrdinalIgnoreCase));
        return word is null
            ? (null, $"{input.Option}: '{text}' is not known; choose from {string.Join(", ", input.Words)}.")
            : (new() { Word = word }, null);
    }

    private static (Value?, string?) Baume(Input input, string text) =>
        MeasureText.TryNumber(text, out var number, out var unit)
            && unit.ToLowerInvariant() is "" or "be" or "baume" or "°be" or "baumé"
        ? (new() { Baume = number }, null)
        : (null, $"{input.Option}: '{text}' is no number of degrees Baume; write it like '{input.Example}'.");

    /// <remarks>Containers are named in pints and ounces; a rig's volumes never are.</remarks>
    private static Written? Container(string text) =>
        !MeasureText.TryNumber(text, out var number, out var unit) ? null : unit.ToLowerInvariant() switch
        {
            "pt" or "pts" or "pint" or "pints" => new(number / 2, Unit.Quart),
            _ => null,
        };

    private static string Squeezed(string text) =>
        text.Replace(" ", "", StringComparison.Ordinal).Replace("°", "", StringComparison.Ordinal);
}
