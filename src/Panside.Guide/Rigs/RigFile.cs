using Panside.Guide.Measures;
using Panside.Guide.Yaml;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>Reads a rig file. Defaults are stated in docs/rigs.md; those that depend on the size stand in <see cref="RigDefaults"/>.</summary>
public static class RigFile
{
    /// <summary>Reads the text of a rig file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static Rig Read(string file, string text)
    {
        var root = YamlMap.Read(file, text, "the rig");
        var name = root.Text("rig", required: true);
        var unitsCode = root.Word("units", [.. UnitSystem.All.Select(units => units.Code)], required: true);
        var units = UnitSystem.All.FirstOrDefault(one => one.Code == unitsCode) ?? UnitSystem.Us;

        var pan = root.Map("pan", required: true);
        var length = Size(pan, "length", 6, 240, "48 in", required: true) ?? Length.FromInches(48);
        var width = Size(pan, "width", 6, 120, "24 in", required: true) ?? Length.FromInches(24);
        var channels = pan?.Whole("channels", 1, 12);
        var depth = pan?.Map("depth");
        var fire = root.Map("fire", required: true);
        var draft = fire?.Word("draft", ["forced", "natural"], required: true) == "natural" ? Draft.Natural : Draft.Forced;
        var wood = fire?.Map("wood");
        var feed = root.Map("feed");
        var syrup = root.Map("syrup");
        var area = Area.FromSquareMeters(length.Meters * width.Meters);
        var tank = Within(feed, "tank", Dimension.Volume, "35 gal", measure => units.Volume(measure).UsGallons, 1, 2000, "gal");

        var rig = new Rig
        {
            Name = name ?? "",
            Units = units,
            Altitude = Size(root, "altitude", -3000, 120_000, "900 ft") ?? RigDefaults.Altitude,
            PanLength = length,
            PanWidth = width,
            Channels = channels ?? RigDefaults.Channels(length),
            RunDepth = Size(depth, "run", 0.25, 24, "1 1/2 in") ?? RigDefaults.RunDepth,
            LeastDepth = Size(depth, "least", 0.1, 24, "3/4 in") ?? RigDefaults.LeastDepth,
            FloodDepth = Size(depth, "flood", 0.25, 24, "2 1/2 in") ?? RigDefaults.FloodDepth,
            WallDepth = Size(depth, "wall", 1, 36, "8 in") ?? RigDefaults.WallDepth,
            Draft = draft,
            Firebrick = Within(fire, "firebrick", Dimension.Mass, "120 lb", m => UnitSystem.Mass(m).Pounds, 0, 5000, "lb") is { } brick
                ? Mass.FromPounds(brick)
                : RigDefaults.Firebrick(area),
            WoodSpecies = wood?.Text("species") ?? RigDefaults.WoodSpecies,
            WoodMoisture = (Within(wood, "moisture", Dimension.Share, "20 %", m => m.Value, 0, 150, "%") ?? RigDefaults.WoodMoisturePercent) / 100,
            Charge = Within(fire, "charge", Dimension.Mass, "7 lb", m => UnitSystem.Mass(m).Pounds, 0.2, 200, "lb") is { } charge
                ? Mass.FromPounds(charge)
                : RigDefaults.Charge(area, draft),
            Interval = TimeSpan.FromMinutes(
                Within(fire, "interval", Dimension.Time, "8 min", m => m.Value * (m.Unit == Unit.Hour ? 60 : 1), 1, 60, "min")
                ?? RigDefaults.Interval(draft).TotalMinutes),
            Tank = tank is { } gallons ? Volume.FromUsGallons(gallons) : RigDefaults.Tank(area),
            TankIsStated = tank is not null,
            HasFloat = feed?.Flag("float") ?? true,
            Target = SugarContent.FromBrix(
                Within(syrup, "target", Dimension.Sugar, "66.9 Brix", m => m.Value, 60, 70, "Brix") ?? RigDefaults.TargetBrix),
            Text = text,
        };

        Ordered(depth, rig);
        foreach (var map in new[] { root, pan, depth, fire, wood, feed, syrup })
        {
            map?.Finish();
        }

        root.Demand();
        return rig;
    }

    private static void Ordered(YamlMap? depth, Rig rig)
    {
        if (depth is not null
            && !(rig.LeastDepth < rig.RunDepth && rig.RunDepth <= rig.FloodDepth && rig.FloodDepth < rig.WallDepth))
        {
            depth.Add(
                "least",
                $"the depths are least {rig.Units.From(rig.LeastDepth)}, run {rig.Units.From(rig.RunDepth)}, "
                + $"flood {rig.Units.From(rig.FloodDepth)}, wall {rig.Units.From(rig.WallDepth)}",
                "each deeper than the one before");
        }
    }

    private static Length? Size(YamlMap? map, string key, double lowInches, double highInches, string example, bool required = false) =>
        Within(map, key, Dimension.Length, example, m => UnitSystem.Length(m).Inches, lowInches, highInches, "in", required) is { } inches
            ? Length.FromInches(inches)
            : null;

    private static double? Within(
        YamlMap? map, string key, Dimension dimension, string example, Func<Measure, double> to, double low, double high, string unit,
        bool required = false)
    {
        if (map?.Measure(key, dimension, example, required) is not { } measure)
        {
            return null;
        }

        var value = double.Abs(measure.Value) < 1e9 ? to(measure) : double.PositiveInfinity;
        if (value >= low && value <= high)
        {
            return value;
        }

        map.Add(key, $"{key} is {measure}", $"{low:0.##} to {high:0.##} {unit}, like {example}");
        return null;
    }
}
