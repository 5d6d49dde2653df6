using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <content>A yes, a no, a later: of the question that was asked last, be it the step's or a doubt.</content>
public sealed partial class Decider
{
    private void HearAnswer(Turn turn, Answer answer)
    {
        if (turn.State.Doubted is Did { Name.Code: "leave" } leaving && IsPast(turn, leaving, answer))
        {
            // Nobody goes by a yes that was meant for something else.
            turn.Happen(new Doubted(null));
            turn.Tell("Leaving lapsed, and nothing is taken. Answer again what is asked now, or say 'leave'.");
            return;
        }

        if (turn.State.Doubted is { } doubted)
        {
            AnswerDoubt(turn, answer, doubted);
            return;
        }

        if (turn.State.Open is not { } open)
        {
            turn.Refuse("Nothing is asked just now.", "answer");
            return;
        }

        if (answer.Word == AnswerWords.Yes && _walker.DeedOf(open.Step) == DeedName.AddWood && IsDefoamerToldSince(turn))
        {
            // Done, said to the defoamer that was called for last, is no wood.
            Consider(turn, new Did(answer.At, DeedName.AddDefoamer, null));
            turn.Tell("Counted: defoamer added. For wood say 'wood'; 'undo' takes it back.");
            return;
        }

        if (_walker.DeedOf(open.Step) is { WantsAmount: false } deed && answer.Word == AnswerWords.Yes)
        {
            Consider(turn, new Did(answer.At, deed, null));
            return;
        }

        if (answer.Word == AnswerWords.Yes && open.Pour is null && _setting.Flow.IsPourToStill(open.Step))
        {
            // Something was poured in, and it hides for a while that the pan boils.
            HearPoured(turn, new Did(answer.At, DeedName.FillPan, null) { Is = Liquids.Sap });
            return;
        }

        if (answer.Word == AnswerWords.Yes && open.Pour is { } portion)
        {
            // Asked to pour so much, who says yes has poured it.
            Consider(turn, new Did(answer.At, DeedName.FillPan, portion.Amount) { Is = portion.Liquid });
            if (turn.State.Last(DeedName.FillPan)?.At == answer.At)
            {
                turn.Tell($"Counted: {Amount.Plain(portion.Amount)} of {portion.Liquid} poured in. 'undo' takes it back.");
            }

            return;
        }

        _walker.Answer(turn, open, answer.Word);
    }

    /// <summary>Whether defoamer was called for, after what is asked, and a moment ago.</summary>
    private bool IsDefoamerToldSince(Turn turn) => turn.Now.State.Last(ObservationName.Foam) is { Value: "rising" } && _setting.Flow.Advices.Any(rule =>
        rule.Action == DeedName.AddDefoamer.Code && turn.State.Advised.TryGetValue(rule.Id, out var told) && told.Time > turn.State.OpenSince.Time
        && turn.State.Now!.Value.Time - told.Time <= JustCalled && !(turn.State.Last(DeedName.AddDefoamer)?.At.Time >= told.Time));

    /// <summary>Whether leaving was asked so long ago, or something else was asked since, that an answer is no longer its.</summary>
    private static bool IsPast(Turn turn, Did leaving, Answer answer) =>
        answer.At.Time - leaving.At.Time > LeavingLasts || turn.State.OpenSince.Time > leaving.At.Time;

    /// <summary>Whether a doubt is too old to be settled: not while it was just said that a yes answers it first.</summary>
    private static bool IsLapsed(Turn turn, Answer answer, LineIn doubted) => answer.At.Time - doubted.At.Time is var age && age > Situation.DoubtLasts
        && (turn.State.OpenSince.Time <= doubted.At.Time || answer.At.Time - turn.State.OpenSince.Time > StillAsked || age > Situation.DoubtLasts + StillAsked);

    /// <summary>So soon after something was called for, done is said of it; no source.</summary>
    private static readonly TimeSpan JustCalled = TimeSpan.FromMinutes(2);

    private static readonly TimeSpan StillAsked = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan LeavingLasts = TimeSpan.FromMinutes(2);

    private void AnswerDoubt(Turn turn, Answer answer, LineIn doubted)
    {
        if (SomePoured.Open(turn.State) is not null)
        {
            turn.Happen(new Doubted(null));
            turn.Tell(SomePoured.Unasked);
            return;
        }

        if (IsLapsed(turn, answer, doubted))
        {
            turn.Happen(new Doubted(null));
            turn.Tell($"Lapsed: {Describe.Line(doubted)}. Say it again if it holds.");
            return;
        }

        if (doubted is Added added && answer.Word == AnswerWords.Yes)
        {
            HearMeant(turn, PanOrTank.ByYes(added, answer.At, _setting.Rig.HasFloat));
            return;
        }

        if (answer.Word == AnswerWords.Later)
        {
            turn.Tell("The question stays open.");
            return;
        }

        turn.Happen(new Doubted(null));
        if (answer.Word == AnswerWords.Yes)
        {
            turn.Tell($"Taken: {Describe.Line(doubted)}.");
            Take(turn, doubted with { At = answer.At }, insisted: true);
        }
        else
        {
            turn.Tell($"Dropped: {Describe.Line(doubted)}.");
        }
    }
}
