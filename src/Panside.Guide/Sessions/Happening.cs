using System.Collections.Immutable;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>One thing that a line in makes happen. The state after a line is the state before it, and then one of these after the other.</summary>
public abstract record Happening;

/// <summary>Time has come to a moment.</summary>
public sealed record TimeCame(Moment To) : Happening;

/// <summary>The operator is about to say something that can be undone.</summary>
public sealed record Remembered(string What) : Happening;

/// <summary>Several things were said in one breath: one undo takes all of them back.</summary>
/// <param name="Before">The state before the first of them.</param>
/// <param name="What">All of them, in words.</param>
public sealed record SaidTogether(SessionState Before, string What) : Happening;

/// <summary>A reading, an observation or a deed is taken as true.</summary>
/// <param name="Line">The line.</param>
/// <param name="Insisted">Whether it was doubted, and the operator stands by it.</param>
public sealed record Took(LineIn Line, bool Insisted = false) : Happening;

/// <summary>The flow has moved to a step.</summary>
/// <param name="Step">The step.</param>
/// <param name="Back">Where side trips lead back to, the innermost on top.</param>
public sealed record Moved(string Step, ImmutableStack<string> Back) : Happening;

/// <summary>A step or a watch is done with.</summary>
public sealed record Completed(string Id, bool Skipped) : Happening;

/// <summary>A step or a watch is put off.</summary>
public sealed record PutAside(string Id, DateTimeOffset Until) : Happening;

/// <summary>A step has set a mark.</summary>
public sealed record Marked(string Mark) : Happening;

/// <summary>A step has taken a mark away.</summary>
public sealed record Unmarked(string Mark) : Happening;

/// <summary>A cry may have meant one of these dangers, the likeliest first.</summary>
public sealed record Suspected(ImmutableList<string> Dangers) : Happening;

/// <summary>Words of fire, pan or boil were not understood; null where they no longer count.</summary>
public sealed record WentUnheard(Text? Text) : Happening;

/// <summary>A clock begins to run.</summary>
public sealed record ClockStarted(RunningClock Clock) : Happening;

/// <summary>A clock has run down.</summary>
public sealed record ClockRanDown(RunningClock Clock) : Happening;

/// <summary>A line is not believed yet; null closes the question.</summary>
public sealed record Doubted(LineIn? Line) : Happening;

/// <summary>How much was poured is told after all: the amount takes the place of the pour of unknown size.</summary>
public sealed record AmountTold : Happening;

/// <summary>The last thing said is taken back.</summary>
public sealed record TookBack : Happening;

/// <summary>An advice's reason has gone.</summary>
public sealed record Settled(string Advice) : Happening;

/// <summary>An advice is given.</summary>
public sealed record Advised(string Advice) : Happening;

/// <summary>Something is said: a line out.</summary>
public sealed record Said(LineOut Line) : Happening;
