using Panside.Guide.Lines;

namespace Panside.Practice.Operator;

/// <summary>A simulated person at the simulated rig.</summary>
public interface IPracticeOperator
{
    /// <summary>Whether no more wood goes in.</summary>
    bool IsHeld { get; }

    /// <summary>How often wood was asked for after that; it was not given.</summary>
    int WoodAskedAfterHold { get; }

    /// <summary>The second at which the operator does something next; null while there is nothing to do.</summary>
    long? NextSecond { get; }

    /// <summary>Something that is told without being asked; null where nothing is.</summary>
    LineIn? Notices(Moment at);

    /// <summary>The operator's moment has come: what is done now is done, and perhaps a line is said.</summary>
    LineIn? Go(long second, Moment at);

    /// <summary>Wood that goes in without a word.</summary>
    void FireByHabit();

    /// <summary>Hears what the assistant says.</summary>
    void Hear(IReadOnlyList<LineOut> lines, long second);
}
