using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>
/// What a rig could have but this one, now, hardly does is questioned. What warns of danger (a low pan, an empty tank, foam,
/// a scorched smell) is never doubted: S4.
/// </summary>
public sealed class Believable(Setting setting)
{
    /// <summary>Two gauge readings, each a gallon off, in liters.</summary>
    private const double Slack = 7.6;

    private readonly Unexpected _unexpected = new(setting.Units);

    /// <summary>The doubt; null where the line is believed.</summary>
    public Doubt? Doubt(SessionState state, LineIn line)
    {
        var boil = Found(state, line);
        return Read(line) is { } reading ? reading.Name.Doubted(boil, reading) ?? _unexpected.Doubt(boil, reading)
            : line is Did { Measure: { } measure } did ? did.Name.Doubted(boil, measure)
            : null;
    }

    /// <summary>By how many deviations a line's amount lies above what is expected of it; null where nothing is.</summary>
    public double? Off(SessionState state, LineIn line) =>
        Read(line) is { } reading ? _unexpected.Off(new Situation(setting, state), reading) : null;

    /// <summary>How to take back a line that warned of danger and is far from what was expected; null where it is not.</summary>
    public string? WayBack(SessionState before, LineIn line) =>
        Read(line) is { } reading ? _unexpected.WayBack(Found(before, line), reading) : null;

    /// <summary>
    /// Whether a reading agrees with one that was doubted before it, where both warn: the tank lower than reckoned, the newer no higher by
    /// much; the draw-off at the draw point or over it. Sap that thickens fast reads higher each time: to doubt each anew would lose the pan.
    /// </summary>
    public bool Confirms(SessionState state, LineIn? doubted, LineIn line) =>
        doubted is Reading first && line is Reading second && second.Name == first.Name && second.At.Time > first.At.Time
        && (ConfirmsTank(state, first, second) || ConfirmsDrawOff(state, first, second));

    private bool ConfirmsTank(SessionState state, Reading first, Reading second) =>
        first.Name == ReadingName.TankVolume && state.Rig.Tank is { } tank
        && setting.Units.Volume(second.Measure) < tank && setting.Units.Volume(first.Measure) < tank
        && double.Abs((setting.Units.Volume(second.Measure) - setting.Units.Volume(first.Measure)).Liters) <= Slack;

    private bool ConfirmsDrawOff(SessionState state, Reading first, Reading second) =>
        first.Name == ReadingName.DrawTemperature && DrawPoint.Today(setting, state) is var point
        && (second.At.Time - first.At.Time) is { TotalSeconds: >= 20 } apart && apart <= Situation.DoubtLasts
        && UnitSystem.Temperature(first.Measure) is var before && UnitSystem.Temperature(second.Measure) is var now
        && before >= point && now >= point && now >= before - TemperatureRise.FromCelsius(Thinner);

    /// <summary>Two looks at one thermometer differ by so much at the most, in K, where the sap has not thinned: no source.</summary>
    private const double Thinner = 0.6;

    /// <summary>The reading that a line tells of, also by what was done; null where it tells of none.</summary>
    private static Reading? Read(LineIn line) => line switch
    {
        Reading reading => reading,
        Did { Measure: { } measure, Name.Reads: { } name } did => new(did.At, name, measure),
        _ => null,
    };

    private Situation Found(SessionState state, LineIn line) => new(setting, Dipping.Of(state, line, setting.Units));
}
