using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>Doubts any reading that lies far from what is expected of it, whatever it reads, and names the slip that would explain it.</summary>
internal sealed class Unexpected(Setting setting)
{
    /// <summary>A tank so empty is told as empty, in liters.</summary>
    private const double Empty = 0.4;

    private readonly Expected _expected = new(setting);

    /// <summary>The doubt; null where the line is about what is expected, or warns of danger.</summary>
    public Doubt? Doubt(SessionState state, LineIn line)
    {
        if (FarOff(state, line) is not var (measure, where, expected) || WarnsOfDanger(state, line, expected))
        {
            return null;
        }

        var isHigh = expected.Off(_expected.Said(measure)) > 0;
        return new(
            $"{Amount.Plain(measure)} {where}? About {Shown(line, expected)} is expected.{Slip(measure, expected)}",
            WouldTake(state, line, measure, isHigh));
    }

    /// <summary>How to take back what warns of danger and is far off all the same: it is acted on first. Null for anything else.</summary>
    public string? WayBack(SessionState before, LineIn line) =>
        FarOff(before, line) is var (measure, _, expected) && WarnsOfDanger(before, line, expected)
            ? $"About {Shown(line, expected)} was expected, {Amount.Plain(measure)} is said. If it is mistyped, 'undo' takes it back."
            : null;

    private (Measure Measure, string Where, Expectation Expected)? FarOff(SessionState state, LineIn line) =>
        Said(line) is var (measure, where) && _expected.Of(state, line) is { } expected && expected.IsFar(_expected.Said(measure))
            ? (measure, where, expected)
            : null;

    /// <summary>Whether a reading is so far off that no single member's nearness to it helps.</summary>
    public bool IsFar(SessionState state, Reading reading) =>
        _expected.Of(state, reading) is { } expected && expected.IsFar(_expected.Said(reading.Measure));

    /// <summary>What warns of danger over a fire: a pan lower than it should be, an empty tank, syrup in a pan that has fallen.</summary>
    private bool WarnsOfDanger(SessionState state, LineIn line, Expectation expected) =>
        state.Deeds.ContainsKey(DeedName.LitFire) && line switch
        {
            Reading { Name.Code: "pan-depth" } depth => expected.Off(_expected.Said(depth.Measure)) < 0,
            Reading { Name.Code: "draw-temperature" } draw => new Situation(setting, state).IsPanFallen
                && UnitSystem.Temperature(draw.Measure) >= DrawPoint.Today(setting, state),
            Reading { Name.Code: "tank-volume" } tank => setting.Units.Volume(tank.Measure).Liters <= Empty,
            _ => false,
        };

    private static (Measure Measure, string Where)? Said(LineIn line) => line switch
    {
        Reading { Name.Code: "drawn-volume" } drawn => (drawn.Measure, "in one draw"),
        Reading reading => (reading.Measure, $"for {reading.Name.Spoken}"),
        Did { Measure: { } measure } => (measure, "in one draw"),
        _ => null,
    };

    private string Shown(LineIn line, Expectation expected)
    {
        var kind = line is Reading { Name: var name } && name != ReadingName.DrawnVolume ? name.Kind : (Dimension?)null;
        return Amount.Shown(kind switch
        {
            null => setting.Units.From(Volume.FromLiters(expected.Mean), setting.Units.SmallVolume),
            Dimension.Volume => setting.Units.From(Volume.FromLiters(expected.Mean)),
            Dimension.Length => Tenths(setting.Units.From(Length.FromMeters(expected.Mean))),
            Dimension.Temperature => setting.Units.From(Temperature.FromCelsius(expected.Mean)),
            Dimension.Pressure => setting.Units.Convert(new(expected.Mean, Unit.Kilopascal), setting.Units.Preferred(Dimension.Pressure)),
            _ => new(expected.Mean, Unit.Brix),
        });
    }

    /// <summary>A depth is reckoned to no more digits than a ruler shows in a boiling pan.</summary>
    private static Measure Tenths(Measure depth) => depth with { Value = double.Round(depth.Value, 1) };

    /// <summary>Another unit, or the point in another place, that would fit.</summary>
    private string Slip(Measure measure, Expectation expected)
    {
        bool Fits(Measure other) => double.Abs(expected.Off(_expected.Said(other))) <= 3;
        foreach (var unit in Enum.GetValues<Unit>().Where(unit => unit != measure.Unit && unit.Kind() == measure.Unit.Kind()))
        {
            if (new Measure(measure.Value, unit) is var other && Fits(other))
            {
                return $" {Amount.Plain(other)} would fit: type it with its unit.";
            }
        }

        var moved = new[] { measure with { Value = measure.Value / 10 }, measure with { Value = measure.Value * 10 } };
        return moved.FirstOrDefault(Fits) is { Value: > 0 } fits ? $" Did you mean {Amount.Plain(fits)}?" : "";
    }

    private string WouldTake(SessionState state, LineIn line, Measure measure, bool isHigh) => line switch
    {
        Reading { Name.Code: "tank-volume" } when isHigh => "It would take a refill that was not told.",
        Reading { Name.Code: "tank-volume" } => "It would take a leak, or an open draw-off.",
        Reading { Name.Code: "pan-depth" } => "It would take sap poured in that was not told, or a float stuck open.",
        Reading { Name.Code: "draw-temperature" } when !isHigh => "It would take a pan that does not boil there, or a thermometer out of the liquid.",
        Reading { Name.Code: "draw-temperature" } when UnitSystem.Temperature(measure) > DrawPoint.Today(setting, state) + DrawPoint.FarOver =>
            "It would take sugar past syrup there: if so, say yes and pour sap in at the draw-off now.",
        Reading { Name.Code: "draw-temperature" } when UnitSystem.Temperature(measure) >= DrawPoint.Today(setting, state) =>
            "It would take syrup there: if so, say yes and draw it off now.",
        Reading { Name.Code: "draw-temperature" } => "It would take a much sweeter pan: if so, say yes, and have the pail ready.",
        Reading { Name.Code: "boiling-water-temperature" } => "It would take a thermometer that is off, water not at a full boil, or a quick change of weather.",
        Reading { Name.Code: "sap-brix" } => isHigh ? "It would take concentrate, or a refractometer far off." : "It would take water in the sap.",
        Reading { Name.Code: "pan-brix" or "draw-brix" } => "It would take a sample that was not stirred or not cooled, or a pan left otherwise than was said.",
        Reading { Name.Code: "hydrometer-brix" } => "It would take the sap hydrometer, degrees Baumé read as Brix, or a draw far from the draw point.",
        Reading { Name.Code: "sample-temperature" } => "It would take a sample that stood long, or another thermometer.",
        Reading { Name.Code: "air-temperature" } => "It would take weather that no boil is run in, or a thermometer near the arch.",
        Reading { Name.Code: "barometer" or "station-pressure" } => "It would take a record storm, or another altitude than the rig file says.",
        _ => $"Close to {Amount.Shown(setting.Units.From(CommonPractice.LargeDraw(setting.Rig.PanArea), setting.Units.SmallVolume))} is a large draw: it would take a pan far past its draw point.",
    };
}
