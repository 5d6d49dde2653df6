using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>The parts of a state as bytes and back; each is written and read here, side by side.</summary>
internal static class StateParts
{
    public static void Moment(this BinaryWriter to, Moment at)
    {
        to.Write(at.Time.Ticks);
        to.Write((short)at.Time.Offset.TotalMinutes);
        to.Write(at.Written ?? "");
        to.Write(at.Written is null);
    }

    public static Moment Moment(this BinaryReader from)
    {
        var time = new DateTimeOffset(from.ReadInt64(), TimeSpan.FromMinutes(from.ReadInt16()));
        var written = from.ReadString();
        return new(time, from.ReadBoolean() ? null! : written);
    }

    public static void Maybe<T>(this BinaryWriter to, T? value, Action<T> write)
        where T : struct
    {
        to.Write(value.HasValue);
        if (value is { } known)
        {
            write(known);
        }
    }

    public static T? Maybe<T>(this BinaryReader from, Func<T> read)
        where T : struct => from.ReadBoolean() ? read() : null;

    public static void MaybeText<T>(this BinaryWriter to, T? value, Action<T> write)
        where T : class
    {
        to.Write(value is not null);
        if (value is not null)
        {
            write(value);
        }
    }

    public static T? MaybeText<T>(this BinaryReader from, Func<T> read)
        where T : class => from.ReadBoolean() ? read() : null;

    public static void All<T>(this BinaryWriter to, IReadOnlyCollection<T> all, Action<T> write)
    {
        to.Write(all.Count);
        foreach (var one in all)
        {
            write(one);
        }
    }

    public static List<T> All<T>(this BinaryReader from, Func<T> read)
    {
        var all = new List<T>();
        for (var left = from.ReadInt32(); left > 0; left--)
        {
            all.Add(read());
        }

        return all;
    }

    public static void Keyed<TKey, TValue>(this BinaryWriter to, ImmutableDictionary<TKey, TValue> all, Func<TKey, string> code, Action<TValue> write)
        where TKey : notnull =>
        to.All([.. all.OrderBy(pair => code(pair.Key), StringComparer.Ordinal)], pair =>
        {
            to.Write(code(pair.Key));
            write(pair.Value);
        });

    public static ImmutableDictionary<TKey, TValue> Keyed<TKey, TValue>(this BinaryReader from, Func<string, TKey> key, Func<TValue> read)
        where TKey : notnull =>
        from.All(() => KeyValuePair.Create(key(from.ReadString()), read())).ToImmutableDictionary();

    public static void Noted<T>(this BinaryWriter to, Noted<T> noted, Action<T> write)
    {
        to.Moment(noted.At);
        write(noted.Value);
    }

    public static Noted<T> Noted<T>(this BinaryReader from, Func<T> read) => new(from.Moment(), read());

    public static void Measure(this BinaryWriter to, Measure measure)
    {
        to.Write(measure.Value);
        to.Write(measure.Unit.Code());
    }

    public static Measure Measure(this BinaryReader from) => new(from.ReadDouble(), from.Unit());

    public static Unit Unit(this BinaryReader from) => UnitNames.FromCode(from.ReadString()) ?? throw new InvalidDataException("A unit that is none.");

    public static void Forecast(this BinaryWriter to, Forecast forecast)
    {
        to.Write(forecast.Name);
        to.Write(forecast.Unit.Code());
        to.Maybe(forecast.P5, to.Write);
        to.Maybe(forecast.P50, to.Write);
        to.Maybe(forecast.P95, to.Write);
    }

    public static Forecast Forecast(this BinaryReader from) =>
        new(from.ReadString(), from.Unit(), from.Maybe(from.ReadDouble), from.Maybe(from.ReadDouble), from.Maybe(from.ReadDouble));

    public static void Prompt(this BinaryWriter to, Prompt prompt)
    {
        to.Write(prompt.Step);
        to.Write(prompt.Ask);
        to.Maybe(prompt.Unit, unit => to.Write(unit.Code()));
        to.Write(prompt.Text);
        to.MaybeText(prompt.Because, to.Write);
        to.Maybe(prompt.Low, to.Write);
        to.Maybe(prompt.High, to.Write);
        to.Maybe(prompt.Last, to.Write);
        to.Maybe(prompt.LastMinutes, to.Write);
        to.MaybeText(prompt.Choices, choices => to.All(choices, to.Write));
        to.Write(prompt.CanSkip);
        to.Write(prompt.CanWait);
        to.Maybe(prompt.Pour, pour =>
        {
            to.Measure(pour.Amount);
            to.Write(pour.Liquid);
        });
    }

    public static Prompt Prompt(this BinaryReader from) => new(
        from.ReadString(), from.ReadString(), from.Maybe(from.Unit), from.ReadString(), from.MaybeText(from.ReadString),
        from.Maybe(from.ReadDouble), from.Maybe(from.ReadDouble), from.Maybe(from.ReadDouble), from.Maybe(from.ReadInt32),
        from.MaybeText<IReadOnlyList<string>>(() => from.All(from.ReadString)), from.ReadBoolean(), from.ReadBoolean())
    { Pour = from.Maybe(() => new AskedPour(from.Measure(), from.ReadString())) };

    public static void Clock(this BinaryWriter to, RunningClock clock)
    {
        to.Write(clock.Text);
        to.Moment(new(clock.Until, ""));
        to.Write(clock.Over);
    }

    public static RunningClock Clock(this BinaryReader from) => new(from.ReadString(), from.Moment().Time, from.ReadString());

    public static void Pour(this BinaryWriter to, Pour pour)
    {
        to.Moment(pour.At);
        to.Measure(pour.Measure);
        to.Write(pour.Liquid);
        to.Write(pour.Volume.Liters);
        to.Write(pour.IsOutOfTank);
        to.MaybeText(pour.Pan, to.Write);
    }

    public static Pour Pour(this BinaryReader from) =>
        new(from.Moment(), from.Measure(), from.ReadString(), Volume.FromLiters(from.ReadDouble())) { IsOutOfTank = from.ReadBoolean(), Pan = from.MaybeText(from.ReadString) };

    public static void Syrup(this BinaryWriter to, DrawnSyrup draw)
    {
        to.Moment(draw.Opened);
        to.Maybe(draw.DelaySeconds, to.Write);
        to.Maybe(draw.OpenedBrix, to.Write);
        to.Maybe(draw.RisesKelvin, to.Write);
        to.Maybe(draw.ShutBrix, to.Write);
        to.Maybe(draw.Shut, to.Moment);
        to.Write(draw.Liters);
        to.Maybe(draw.Brix, to.Write);
        to.Write((byte)draw.By);
    }

    public static DrawnSyrup Syrup(this BinaryReader from) => new(from.Moment())
    {
        DelaySeconds = from.Maybe(from.ReadDouble),
        OpenedBrix = from.Maybe(from.ReadDouble),
        RisesKelvin = from.Maybe(from.ReadDouble),
        ShutBrix = from.Maybe(from.ReadDouble),
        Shut = from.Maybe(from.Moment),
        Liters = from.ReadDouble(),
        Brix = from.Maybe(from.ReadDouble),
        By = (DensityBy)from.ReadByte(),
    };

    public static void Line(this BinaryWriter to, LineIn line)
    {
        to.Moment(line.At);
        switch (line)
        {
            case Reading reading:
                to.Write('r');
                to.Write(reading.Name.Code);
                to.Measure(reading.Measure);
                break;
            case Observed observed:
                to.Write('o');
                to.Write(observed.Name.Code);
                to.Write(observed.Is);
                break;
            case Did did:
                to.Write('d');
                to.Write(did.Name.Code);
                to.Maybe(did.Measure, to.Measure);
                to.MaybeText(did.Is, to.Write);
                to.MaybeText(did.Pan, to.Write);
                break;
            case Added added:
                to.Write('a');
                to.Measure(added.Measure);
                to.Write(added.Liquid);
                break;
            default:
                throw new InvalidDataException($"A {line.GetType().Name} is never doubted or taken.");
        }
    }

    public static LineIn Line(this BinaryReader from, KnownReadings readings)
    {
        var at = from.Moment();
        return from.ReadChar() switch
        {
            'r' => new Reading(at, readings.Find(from.ReadString())!, from.Measure()),
            'o' => new Observed(at, ObservationName.FromCode(from.ReadString())!, from.ReadString()),
            'd' => new Did(at, DeedName.FromCode(from.ReadString())!, from.Maybe(from.Measure)) { Is = from.MaybeText(from.ReadString), Pan = from.MaybeText(from.ReadString) },
            'a' => new Added(at, from.Measure(), from.ReadString()),
            _ => throw new InvalidDataException("A line of no kind."),
        };
    }
}
