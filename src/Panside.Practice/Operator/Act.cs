using Panside.Guide.Lines;

namespace Panside.Practice.Operator;

/// <summary>What the operator does next: a while that passes, and then perhaps a line that is said.</summary>
/// <param name="Seconds">The while.</param>
/// <param name="Say">The line, made when the while has passed; null where nothing is said, or the moment for it has gone.</param>
internal sealed record Act(double Seconds, Func<Moment, LineIn?>? Say = null);
