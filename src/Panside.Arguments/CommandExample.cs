namespace Panside.Arguments;

/// <summary>A line that can be typed.</summary>
/// <param name="Line">The line.</param>
/// <param name="Does">What it does.</param>
public sealed record CommandExample(string Line, string Does);
