using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Lines that can hardly mean anything else by what they name, whatever the weights say; what is no cry by itself gives way to one.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed class PlainlySaid(Setting setting)
{
    private readonly CryListener _cries = new(setting);
    private readonly TalkListener _talk = new(setting);

    /// <summary>What it means; null where it is none of these lines.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="text">The line.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public Understood? Understand(Moment at, string said, string text, Prompt? open)
    {
        var isBurnerAsked = open is not null && setting.Flow.DeedOf(open.Step) == DeedName.ShutOff;
        return HalfSaid.BeforeCries(said)
            ?? (text.Contains('!', StringComparison.Ordinal) ? null : BoilAndCoals.GoesWell(at, said))
            ?? CoalsOut.Understand(said, setting)
            ?? Emptying.OffTheFire(said, setting.Rig)
            ?? Doors.Understand(said, setting.Rig)
            ?? BlowerWords.Understand(said, setting)
            ?? BurnerWords.Leaks(said, setting)
            ?? BurnerWords.Fails(said, setting.Rig, IsEmergency(open) ? null : setting.Flow.Words.GetValueOrDefault(setting.Rig.Fuel == Fuel.Electric ? "power is out" : "burner went out"))
            ?? BurnerWords.Fuel(said, setting.Rig)
            ?? BurnerWords.TurnsDown(said, setting.Rig)
            ?? FillsItself.Understand(said, setting, open)
            ?? Valves.Understand(said, setting)
            ?? BurnerWords.DoesNotShut(said, setting.Rig, isBurnerAsked)
            ?? HalfSaid.Falls(said, open, setting.Flow.Words.GetValueOrDefault("dry pan"))
            ?? (NoCry(at, said, isBurnerAsked) is { } plain && _cries.Hear(text) is null ? plain : null);
    }

    /// <summary>Whether a page of an emergency is open: what went out is the fire there.</summary>
    private bool IsEmergency(Prompt? open) => open is not null && setting.Flow.Steps.TryGetValue(open.Step, out var step) && step.Phase.IsEmergency;

    private Understood? NoCry(Moment at, string said, bool isBurnerAsked) => AskedPlainly.Understand(said, setting.Rig)
        ?? BurnerWords.Understand(at, said, setting.Rig, isBurnerAsked)
        ?? HalfSaid.Understand(said)
        ?? ComingAndGoing.Understand(said)
        ?? BoilAndCoals.Boils(at, said)
        ?? (NotPoured.IsToCome(said) && !_talk.Asks(said) ? new MeansNothing(NotPoured.PourIt) { IsPlain = true } : null);
}
