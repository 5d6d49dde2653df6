using System.Collections.Immutable;
using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Snapshots;

/// <summary>
/// A state as bytes and back, to the last bit, with what a debrief keeps beside it. Only a cache may hold them: they mean nothing
/// to another version of the program. The same state gives the same bytes.
/// </summary>
public static class StateBytes
{
    /// <summary>Writes a state.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="state">The state, with those that an undo goes back to.</param>
    /// <param name="course">What the debrief keeps.</param>
    public static void Write(Stream stream, SessionState state, Course course)
    {
        using var to = new BinaryWriter(stream, System.Text.Encoding.UTF8, leaveOpen: true);
        SessionState[] states = [.. state.Past, state];
        var ensembles = states.Select(one => one.Rigs).Distinct(ReferenceEqualityComparer.Instance).Cast<RigEnsemble>().ToList();
        EnsembleBytes.Write(to, ensembles);
        to.Write(states.Length);
        foreach (var one in states)
        {
            to.Write(ensembles.FindIndex(ensemble => ReferenceEquals(ensemble, one.Rigs)));
            Write(to, one);
        }

        course.Write(to);
    }

    /// <summary>Reads what <see cref="Write(Stream, SessionState, Course)"/> has written.</summary>
    /// <param name="stream">Where from.</param>
    /// <param name="setting">What the session runs on: the same as then.</param>
    /// <exception cref="InvalidDataException">It is something else.</exception>
    /// <exception cref="EndOfStreamException">It ends too early.</exception>
    public static (SessionState State, Course Course) Read(Stream stream, Setting setting)
    {
        using var from = new BinaryReader(stream, System.Text.Encoding.UTF8, leaveOpen: true);
        var ensembles = EnsembleBytes.Read(from, setting.Cold);
        var states = new List<SessionState>();
        for (var left = from.ReadInt32(); left > 0; left--)
        {
            states.Add(Read(from, ensembles[from.ReadInt32()], setting.Readings));
        }

        return (states[^1] with { Past = [.. states.SkipLast(1)] }, Course.Read(from, setting));
    }

    private static void Write(BinaryWriter to, SessionState state)
    {
        to.Maybe(state.Now, to.Moment);
        to.Maybe(state.Started, to.Moment);
        to.Write(state.Sequence);
        to.Write(state.Step);
        to.Moment(state.StepSince);
        to.All([.. state.Back.Reverse()], to.Write);
        to.MaybeText(state.Open, to.Prompt);
        to.Moment(state.OpenSince);
        to.MaybeText(state.Doubted, to.Line);
        to.MaybeText(state.Unheard, text =>
        {
            to.Moment(text.At);
            to.Write(text.Words);
        });
        to.Keyed(state.PutOff, key => key, value => to.Moment(new(value, "")));
        to.All(state.Skipped, to.Write);
        to.All(state.Done, to.Write);
        to.Keyed(state.Watched, key => key, to.Moment);
        to.Keyed(state.Asked, key => key, to.Write);
        to.All(state.Suspected, to.Write);
        to.All(state.Clocks, to.Clock);
        to.All(state.Charges, to.Moment);
        to.All(state.Draws, to.Moment);
        to.All(state.Pours, to.Pour);
        to.All(state.Syrup, to.Syrup);
        to.Maybe(state.ToldToPour, to.Moment);
        to.Maybe(state.CoalsDeepAt, to.Moment);
        to.Maybe(state.ChilledAt, to.Moment);
        to.Maybe(state.StillSince, to.Moment);
        to.Maybe(state.SimmersSince, to.Moment);
        to.Maybe(state.RelitAt, to.Moment);
        to.MaybeText(state.DepthChangedBy, deed => to.Write(deed.Code));
        to.All([.. state.Marks.Order(StringComparer.Ordinal)], to.Write);
        to.Keyed(state.Readings, key => key.Code, all => to.All(all, one => to.Noted(one, to.Measure)));
        to.Keyed(state.Observations, key => key.Code, one => to.Noted(one, to.Write));
        to.Keyed(state.Deeds, key => key.Code, one => to.Noted(one, value => to.Maybe(value, to.Measure)));
        to.All([.. state.SaidNow.OrderBy(line => line.ToString(), StringComparer.Ordinal)], to.Line);
        to.Keyed(state.Advised, key => key, to.Moment);
        to.All([.. state.Cautioned.Order(StringComparer.Ordinal)], to.Write);
        to.Keyed(state.Forecasts, key => key, to.Forecast);
        to.MaybeText(state.DrawOff, anchor =>
        {
            to.Write(anchor.Sugar.Brix);
            to.Write(anchor.EvaporatedLiters);
            to.Write(anchor.Before.Brix);
            to.Write(anchor.IsReadTwice);
            to.Moment(anchor.At);
        });
        to.Write(state.ThisDraw.Liters);
        to.Write(state.ThisDraw.IsShut);
        to.Write(state.Totals.WoodKilograms);
        to.Write(state.Totals.DrawnLiters);
        to.Write(state.Totals.RefilledLiters);
        to.Maybe(state.Totals.TankAtFirst, to.Write);
        to.Write(state.Totals.MeasuredLiterBrix);
        to.Write(state.Totals.MeasuredLiters);
        to.Write(state.LastSaid);
        to.Write(state.IsOver);
        to.Write(state.IsSafe);
    }

    private static SessionState Read(BinaryReader from, RigEnsemble rigs, KnownReadings readings) => new()
    {
        Rigs = rigs,
        Now = from.Maybe(from.Moment),
        Started = from.Maybe(from.Moment),
        Sequence = from.ReadInt32(),
        Step = from.ReadString(),
        StepSince = from.Moment(),
        Back = from.All(from.ReadString).Aggregate(ImmutableStack<string>.Empty, (stack, step) => stack.Push(step)),
        Open = from.MaybeText(from.Prompt),
        OpenSince = from.Moment(),
        Doubted = from.MaybeText(() => from.Line(readings)),
        Unheard = from.MaybeText(() => new Text(from.Moment(), from.ReadString())),
        PutOff = from.Keyed(key => key, () => from.Moment().Time),
        Skipped = [.. from.All(from.ReadString)],
        Done = [.. from.All(from.ReadString)],
        Watched = from.Keyed(key => key, from.Moment),
        Asked = from.Keyed(key => key, from.ReadInt32),
        Suspected = [.. from.All(from.ReadString)],
        Clocks = [.. from.All(from.Clock)],
        Charges = [.. from.All(from.Moment)],
        Draws = [.. from.All(from.Moment)],
        Pours = [.. from.All(from.Pour)],
        Syrup = [.. from.All(from.Syrup)],
        ToldToPour = from.Maybe(from.Moment),
        CoalsDeepAt = from.Maybe(from.Moment),
        ChilledAt = from.Maybe(from.Moment),
        StillSince = from.Maybe(from.Moment),
        SimmersSince = from.Maybe(from.Moment),
        RelitAt = from.Maybe(from.Moment),
        DepthChangedBy = from.MaybeText(() => Deed(from.ReadString())),
        Marks = [.. from.All(from.ReadString)],
        Readings = from.Keyed(code => readings.Find(code) ?? throw new InvalidDataException(code), () => ImmutableList.CreateRange(from.All(() => from.Noted(from.Measure)))),
        Observations = from.Keyed(Observation, () => from.Noted(from.ReadString)),
        Deeds = from.Keyed(Deed, () => from.Noted(() => from.Maybe(from.Measure))),
        SaidNow = [.. from.All(() => from.Line(readings))],
        Advised = from.Keyed(key => key, from.Moment),
        Cautioned = [.. from.All(from.ReadString)],
        Forecasts = from.Keyed(key => key, from.Forecast),
        DrawOff = from.MaybeText(() => new DrawOffAnchor(SugarContent.FromBrix(from.ReadDouble()), from.ReadDouble(), SugarContent.FromBrix(from.ReadDouble()), from.ReadBoolean(), from.Moment())),
        ThisDraw = new(from.ReadDouble(), from.ReadBoolean()),
        Totals = new()
        {
            WoodKilograms = from.ReadDouble(),
            DrawnLiters = from.ReadDouble(),
            RefilledLiters = from.ReadDouble(),
            TankAtFirst = from.Maybe(from.ReadDouble),
            MeasuredLiterBrix = from.ReadDouble(),
            MeasuredLiters = from.ReadDouble(),
        },
        LastSaid = from.ReadString(),
        IsOver = from.ReadBoolean(),
        IsSafe = from.ReadBoolean(),
    };

    private static ObservationName Observation(string code) => ObservationName.FromCode(code) ?? throw new InvalidDataException(code);

    private static DeedName Deed(string code) => DeedName.FromCode(code) ?? throw new InvalidDataException(code);
}
