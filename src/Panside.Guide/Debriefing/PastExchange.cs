using Panside.Guide.Lines;

namespace Panside.Guide.Debriefing;

/// <summary>One line of a past boil with its answers.</summary>
/// <param name="LineNumber">The number of its first line in the record, from 1.</param>
/// <param name="At">When.</param>
/// <param name="Line">The line; null where it had no good time, and only its refusal was kept.</param>
/// <param name="Said">What the operator said, in words; null where only time passed.</param>
/// <param name="Answers">The answers.</param>
/// <param name="DiffersAt">The number of the first line of the record that holds another answer than these; null where none does.</param>
public sealed record PastExchange(
    int LineNumber, Moment At, LineIn? Line, string? Said, IReadOnlyList<LineOut> Answers, int? DiffersAt);
