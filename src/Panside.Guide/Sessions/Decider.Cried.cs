using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <content>A cry opens a page, and is taken back where it was none.</content>
public sealed partial class Decider
{
    /// <summary>A cry opens the emergency of its danger; where that is not sure, the list, with the likely ones first.</summary>
    private void Cry(Turn turn, Moment at, IReadOnlyList<string> dangers, bool isSure)
    {
        var meant = _setting.Flow.Dangers.Where(danger => danger.IsList || dangers.Contains(danger.Code)).ToList();
        if (!isSure && turn.State.Open is not null && IsOnThePageOfOneAsGrave(turn, dangers))
        {
            // What is not sure takes nobody off the page of what was named, unless it may be graver.
            turn.Happen(new Suspected([.. meant.Where(danger => !danger.IsList).Select(danger => danger.Code)]));
            Conversation.Heard(turn, at, "say that again");
            _announcer.Repeat(turn);
            turn.Tell(turn.Fill("Something else as well? Say its word: {dangers}."));
            return;
        }

        var word = isSure && meant.FirstOrDefault(danger => danger.Code == dangers[0]) is { } sure ? sure.Code : meant.First(danger => danger.IsList).Code;
        turn.Say((_, number) => new HeardLine(at, number, new Text(at, word)));
        turn.Happen(new Remembered(word));
        turn.Happen(new Suspected([.. dangers.Where(code => meant.Any(danger => danger.Code == code))]));
        _walker.Fire(turn, "word " + word);
    }

    /// <summary>Whether the first page of a danger is open that is as grave as what is likeliest meant.</summary>
    private bool IsOnThePageOfOneAsGrave(Turn turn, IReadOnlyList<string> dangers) => _setting.Flow.DangerAt(turn.State.Step) is { IsList: false }
        && !(dangers is [var likeliest, ..] && _setting.Flow.Dangers.FirstOrDefault(danger => danger.Code == likeliest) is { } meant && _setting.Flow.RankOf(meant.Go) < _setting.Flow.RankOf(turn.State.Step));

    /// <summary>A cry that was none is taken back where nothing was told after it; else its page is gone through, which ends with a look.</summary>
    private void TakeCryBack(Turn turn, Text text)
    {
        if (IsCryLast(turn))
        {
            Conversation.Heard(turn, text.At, "undo");
            _replies.Reply(turn, "undo", "");
            return;
        }

        turn.Refuse("Good. Answer what stands asked, and this ends: a look at the pan costs a minute.", "text");
    }

    /// <summary>Whether nothing was told since the cry.</summary>
    private bool IsCryLast(Turn turn) => turn.State.Past.Count > 0 && _setting.Flow.Dangers.Any(danger => danger.Code == turn.State.LastSaid);
}
