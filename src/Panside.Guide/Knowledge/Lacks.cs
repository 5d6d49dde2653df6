using Panside.Guide.Lines;

namespace Panside.Guide.Knowledge;

/// <summary>What the operator has none of tonight: what is read with it is asked no more.</summary>
internal static class Lacks
{
    private const string Prefix = "lacks-";

    /// <summary>The mark of a thing that nobody has.</summary>
    public static string Mark(string thing) => Prefix + thing;

    /// <summary>Whether a reading wants an instrument that nobody has.</summary>
    /// <param name="state">What is known.</param>
    /// <param name="name">The reading; null where it is none.</param>
    public static bool IsLacking(SessionState state, ReadingName? name) =>
        name is not null && name.Instruments.Any(instrument => state.Marks.Contains(Mark(instrument)));
}
