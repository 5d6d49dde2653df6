using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Tests.Records;

/// <summary>
/// A simple assistant in the place of the real one: as strict with times, refusals and twins, and what it says hangs on all that it
/// heard, so that a record which is heard otherwise is found at once.
/// </summary>
internal sealed class ScriptedSession(Setting setting) : Session(setting)
{
    private readonly Evolver _evolver = new(setting);

    protected override Decided Decide(LineIn line)
    {
        var (state, lines) = (State, new List<LineOut>());
        void Happen(Happening happening) => state = _evolver.Evolve(state, happening);
        void Say(Func<Moment?, int, LineOut> said)
        {
            lines.Add(said(state.Now, state.Sequence + 1));
            Happen(new Said(lines[^1]));
        }

        if (line is Unreadable { Stated: null } unreadable)
        {
            Say((at, seq) => new RefusedLine(at, seq, unreadable.Why, unreadable.Field));
            return new(state, lines);
        }

        if (line.At.Time < State.Now?.Time)
        {
            Say((at, seq) => new RefusedLine(at, seq, $"{line.At.Written} is before {State.Now?.Written}", "at"));
            return new(state, lines);
        }

        var isFirst = State.Now is null;
        var isTwin = line is Did or Reading or Observed && State.Now?.Time == line.At.Time && State.SaidNow.Contains(line);
        var minutes = isFirst ? 0 : (int)(line.At.Time - State.Started!.Value.Time).TotalMinutes;
        Happen(new TimeCame(line.At));
        if (isFirst)
        {
            Say((at, seq) => new SessionLine(at, seq, Setting.Header));
        }

        switch (line)
        {
            case Unreadable known:
                Say((at, seq) => new RefusedLine(at, seq, known.Why, known.Field));
                break;
            case Text { Words: "lit" } when State.SaidNow.Contains(new Did(line.At, DeedName.LitFire, null)):
            case var _ when isTwin:
                Say((at, seq) => new RefusedLine(at, seq, "said already", null));
                break;
            case Text { Words: "lit" }:
                Happen(new Took(new Did(line.At, DeedName.LitFire, null)));
                Say((at, seq) => new HeardLine(at, seq, new Did(line.At, DeedName.LitFire, null)));
                break;
            case Reading or Did or Observed:
                Happen(new Took(line));
                break;
        }

        if (line is not Unreadable)
        {
            Say((at, seq) => new ToldLine(at, seq, $"{minutes} min, {seq}, {State.Totals.WoodKilograms:0.##} kg, {line}"));
        }

        if (line is not Unreadable && minutes % 3 == 0)
        {
            Say((at, seq) => new ForecastLine(at, seq, new("minutes-to-still", Guide.Measures.Unit.Minute, minutes, minutes + (seq / 3.0), null)));
        }

        return new(state, lines);
    }
}
