namespace Panside.Guide.Hearing.Talk;

/// <summary>A word or a number of a line, before it is known what it measures.</summary>
/// <param name="Text">In small letters.</param>
/// <param name="IsPaused">Whether a comma or more stands before it.</param>
/// <param name="IsNumber">Whether it is written in digits.</param>
internal readonly record struct SpokenWord(string Text, bool IsPaused, bool IsNumber);
