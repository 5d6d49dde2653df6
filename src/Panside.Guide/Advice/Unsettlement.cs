using Panside.Guide.Lines;

namespace Panside.Guide.Advice;

/// <summary>What a look at the boil must come after by a while before a still pan tells anything.</summary>
/// <param name="At">When it was done; null where it never was.</param>
/// <param name="What">What it was, as it stands after "after".</param>
/// <param name="Wait">How long after it.</param>
internal sealed record Unsettlement(Moment? At, string What, TimeSpan Wait);
