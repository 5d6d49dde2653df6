using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>What a line in comes to.</summary>
/// <param name="State">What is known after it.</param>
/// <param name="Lines">What is said, in order.</param>
public sealed record Decided(SessionState State, IReadOnlyList<LineOut> Lines);
