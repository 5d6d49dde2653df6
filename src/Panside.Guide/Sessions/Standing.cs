using Panside.Guide.Flows;

namespace Panside.Guide.Sessions;

/// <summary>Where the session stands while a line is decided: what the machine leaves and reaches happens to it.</summary>
/// <param name="walker">Who writes it down.</param>
/// <param name="turn">The line's turn.</param>
/// <param name="isPassingBy">Whether the step is only passed by: then nothing was asked there.</param>
internal sealed class Standing(Walker walker, Turn turn, bool isPassingBy) : IStanding
{
    public string Step => turn.State.Step;

    public string ReturnTo => turn.State.ReturnTo;

    public bool Holds(string fact) => turn.Holds(fact);

    public void Leave(Move move)
    {
        if (!isPassingBy)
        {
            walker.Left(turn, move);
        }
    }

    public void Reach(Move move) => walker.Reached(turn, move, isPassingBy);
}
