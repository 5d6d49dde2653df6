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
    /// <param name="passesOver">Whether keys that are not known are passed over: a record may hold the rig of a newer version.</param>
    /// <param name="shape">Takes down the form of the file; null where nobody wants to know it.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static Rig Read(string file, string text, bool passesOver = false, Shape? shape = null)
    {
        var root = YamlMap.Read(file, text, "the rig", shape);
        var name = root.Text("rig", required: true);
        var unitsCode = root.Word("units", [.. UnitSystem.All.Select(units => units.Code)], required: true);
        var units = UnitSystem.All.FirstOrDefault(one => one.Code == unitsCode) ?? UnitSystem.Us;

        var (front, back) = PansFile.Read(root, units, passesOver);
        var fire = root.Map("fire", required: true);
        var fuel = FuelOf(fire);
        var draft = fire?.Word("draft", ["forced", "natural"], required: fuel == Fuel.Wood) is "natural" or null ? Draft.Natural : Draft.Forced;
        var wood = fire?.Map("wood");
        var feed = root.Map("feed");
        var syrup = root.Map("syrup");
        var pan = Area.FromSquareMeters(front.Length.Meters * front.Width.Meters);
        var area = back is null ? pan : pan + back.Area;
        var (tank, pail) = (Within(feed, "tank", RigLimit.Tank, units), Within(feed, "pail", RigLimit.Pail, units));

        var rig = new Rig
        {
            Name = name ?? "",
            Units = units,
            Altitude = Size(root, "altitude", RigLimit.Altitude) ?? RigDefaults.Altitude,
            Back = back,
            PanLength = front.Length,
            PanWidth = front.Width,
            Channels = front.Channels ?? RigDefaults.Channels(front.Length),
            RunDepth = front.Run,
            LeastDepth = front.Least,
            FloodDepth = front.Flood,
            WallDepth = front.Wall,
            Draft = draft,
            Firebrick = Within(fire, "firebrick", RigLimit.Firebrick, units) is { } brick
                ? Mass.FromPounds(brick)
                : fuel == Fuel.Wood ? RigDefaults.Firebrick(area) : RigDefaults.BurnerLining(area),
            Fuel = fuel,
            Boils = Within(fire, "boils", RigLimit.Boils, units) is { } boils ? VolumeRate.FromUsGallonsPerHour(boils) : RigDefaults.Boils(area),
            DrawnBy = root.Map("draw") is { } draw ? DrawnByOf(draw, passesOver) : DrawnBy.Valve,
            Instruments = InstrumentsOf(root),
            HasLid = root.Flag("lid") ?? true,
            HasFinishingPot = root.Flag("finishing pot") ?? false,
            WoodSpecies = wood?.Text("species") ?? RigDefaults.WoodSpecies,
            WoodMoisture = (Within(wood, "moisture", RigLimit.WoodMoisture, units) ?? RigDefaults.WoodMoisturePercent) / 100,
            Charge = Within(fire, "charge", RigLimit.Charge, units) is { } charge
                ? Mass.FromPounds(charge)
                : RigDefaults.Charge(area, draft),
            Interval = TimeSpan.FromMinutes(Within(fire, "interval", RigLimit.Interval, units)
                ?? (fuel == Fuel.Wood ? RigDefaults.Interval(draft) : RigDefaults.BurnerInterval).TotalMinutes),
            Tank = tank is { } gallons ? Volume.FromUsGallons(gallons) : RigDefaults.Tank(area),
            TankIsStated = tank is not null,
            Feed = FeedOf(feed),
            Pail = pail is { } pailful ? Volume.FromUsGallons(pailful) : RigDefaults.Pail(area),
            PailIsStated = pail is not null,
            Target = SugarContent.FromBrix(Within(syrup, "target", RigLimit.Target, units) ?? RigDefaults.TargetBrix),
            Text = text,
        };

        if (back is not null && rig.Feed != Feed.ByFloat)
        {
            feed!.Add("by", $"the pan behind is fed by {(rig.Feed == Feed.ByHand ? "hand" : "valve")}", "'by: float': of two pans each has a float", FaultKind.Together);
        }

        foreach (var map in passesOver ? [] : new[] { root, fire, wood, feed, syrup })
        {
            map?.Finish();
        }

        root.Demand();
        return rig;
    }

    /// <summary>What heats the pan. What is of wood alone has no place beside a burner, nor the other way round.</summary>
    private static Fuel FuelOf(YamlMap? fire)
    {
        var kind = fire?.Word("kind", ["wood", "gas", "oil", "electric"]);
        var fuel = kind switch { "gas" => Fuel.Gas, "oil" => Fuel.Oil, "electric" => Fuel.Electric, _ => Fuel.Wood };
        foreach (var key in (fuel == Fuel.Wood ? new[] { "boils" } : ["draft", "wood", "charge", "interval"]).Where(key => fire?.Has(key) == true))
        {
            fire!.Add(
                key,
                fuel == Fuel.Wood ? $"'{key}' is of a burner, and wood heats this pan" : $"'{key}' is of a wood fire, and this pan is heated by {kind}",
                fuel == Fuel.Wood ? "'kind: gas', 'oil' or 'electric' beside it, or no 'boils'" : $"no '{key}', or 'kind: wood'",
                FaultKind.Together);
        }

        return fuel;
    }

    private static DrawnBy DrawnByOf(YamlMap draw, bool passesOver)
    {
        var by = draw.Word("by", ["valve", "pour", "ladle"], required: true);
        if (!passesOver)
        {
            draw.Finish();
        }

        return by switch { "pour" => DrawnBy.Pour, "ladle" => DrawnBy.Ladle, _ => DrawnBy.Valve };
    }

    private static IReadOnlyList<string> InstrumentsOf(YamlMap root)
    {
        if (!root.Has("instruments"))
        {
            return RigDefaults.Instruments;
        }

        foreach (var (text, place) in root.PlacedTexts("instruments"))
        {
            if (!Rig.KnownInstruments.Contains(text) && text != "none")
            {
                root.AddAt(place, $"'{text}' is no instrument", "one of " + string.Join(", ", Rig.KnownInstruments) + ", or none");
            }
        }

        return [.. root.Texts("instruments").Where(Rig.KnownInstruments.Contains)];
    }

    /// <summary>How sap comes in: <c>by</c> says it; older files say <c>float</c>, and both together must agree.</summary>
    private static Feed FeedOf(YamlMap? feed)
    {
        var by = feed?.Word("by", ["float", "hand", "valve"]);
        var isFloat = feed?.Flag("float");
        if (by is not null && isFloat is { } told && told != (by == "float"))
        {
            feed!.Add("float", $"float is {(told ? "true" : "false")}, and the pan is fed by {by}", "'by' alone", FaultKind.Together);
        }

        if (feed?.Has("pail") == true && (by ?? (isFloat == false ? "hand" : "float")) != "hand")
        {
            feed.Add("pail", "a pail stands there, and no hand feeds the pan", "'by: hand' beside it, or no 'pail'", FaultKind.Together);
        }

        return by switch
        {
            "hand" => Feed.ByHand,
            "valve" => Feed.ByValve,
            null when isFloat == false => Feed.ByHand,
            _ => Feed.ByFloat,
        };
    }

    internal static Length? Size(YamlMap? map, string key, RigLimit limit, bool required = false) =>
        Within(map, key, limit, UnitSystem.Us, required) is { } inches ? Length.FromInches(inches) : null;

    /// <summary>An amount in its limit's unit; null where it is left open, or is none.</summary>
    private static double? Within(YamlMap? map, string key, RigLimit limit, UnitSystem units, bool required = false)
    {
        if (map?.Measure(key, limit.Dimension, limit.Example, required) is not { } measure)
        {
            return null;
        }

        var value = limit.ValueOf(measure, units);
        if (limit.Allows(value))
        {
            return value;
        }

        map.Add(key, $"{key} is {measure}", limit.ToString(), FaultKind.Range);
        return null;
    }
}
