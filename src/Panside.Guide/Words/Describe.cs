using Panside.Guide.Lines;

namespace Panside.Guide.Words;

/// <summary>A line in, in words.</summary>
public static class Describe
{
    /// <summary><c>tank 22 gal</c>, <c>boil rolling</c>, <c>wood added, 7 lb</c>.</summary>
    public static string Line(LineIn line) => line switch
    {
        Reading reading => $"{reading.Name.Spoken} {reading.Measure}",
        Observed observed => $"{observed.Name.Code} {observed.Is}",
        Did { Pan: { } pan, Measure: { } measure, Is: { } liquid } => $"poured into the {pan} pan, {measure} of {liquid}",
        Did { Measure: { } measure, Is: { } liquid } did => $"{did.Name.Spoken}, {measure} of {liquid}",
        Did { IsUnmeasured: true, Is: { } liquid } did => $"some {liquid} poured into the {(did.Pan is { } one ? one + " " : "")}pan",
        Did { Measure: { } measure } did => $"{did.Name.Spoken}, {measure}",
        Did did => did.Name.Spoken,
        Added added => $"{added.Measure} of {added.Liquid} added",
        Answer answer => answer.Word,
        Text text => text.Words,
        _ => "time",
    };

    /// <summary>Whether two lines say the same kind of thing, so that one corrects the other.</summary>
    public static bool SameKind(LineIn one, LineIn other) => (one, other) switch
    {
        (Reading a, Reading b) => a.Name == b.Name,
        (Did a, Did b) => a.Name == b.Name,
        (Observed a, Observed b) => a.Name == b.Name,
        (Added, Added) => true,
        (Added, Did b) => b.Name == DeedName.FillPan || b.Name == DeedName.RefillTank,
        _ => false,
    };
}
