using System.Globalization;
using Panside.Guide.Measures;
using Panside.Guide.Yaml;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>Reads what stands over the fire: one pan under <c>pan</c>, or under <c>pans</c> one or two, in the order of the sap.</summary>
internal static class PansFile
{
    /// <summary>A pan as its file has it.</summary>
    internal readonly record struct Pan(Length Length, Length Width, int? Channels, Length Run, Length Least, Length Flood, Length Wall);

    /// <summary>The pan where the draw-off is, and the one behind it; null where there is one.</summary>
    /// <param name="root">The rig file.</param>
    /// <param name="units">Its units.</param>
    /// <param name="passesOver">Whether keys that are not known are passed over.</param>
    public static (Pan Front, PanBehind? Back) Read(YamlMap root, UnitSystem units, bool passesOver)
    {
        if (!root.Has("pans"))
        {
            root.Maps("pans"); // Asked for only so that the key counts as known and stands in the schema.
            return (One(root.Map("pan", required: true), units, passesOver), null);
        }

        if (root.Has("pan"))
        {
            root.Maps("pans"); // As above.
            root.Add("pans", "'pan' and 'pans' both say what stands over the fire", "one of them", FaultKind.Together);
            return (One(root.Map("pan"), units, passesOver), null);
        }

        var faults = root.Faults.Count;
        var pans = root.Maps("pans");
        if (pans.Count is < 1 or > 2 && root.Faults.Count == faults)
        {
            root.Add("pans", $"pans has {pans.Count.ToString(CultureInfo.InvariantCulture)} entries", "one pan, or two in the order of the sap: the one behind, then the one with the draw-off", FaultKind.Form);
        }

        var last = pans.Count > 0 ? pans[^1] : null;
        if (last?.Has("flues") == true)
        {
            last.Map("flues"); // As above.
            last.Add("flues", "flues are in the pan with the draw-off, and are reckoned only in one that feeds another", "no 'flues', or a second pan after it", FaultKind.Together);
        }

        return (One(last, units, passesOver), pans.Count == 2 ? Behind(pans[0], units, passesOver) : null);
    }

    private static PanBehind Behind(YamlMap map, UnitSystem units, bool passesOver)
    {
        var flues = map.Map("flues");
        var pan = One(map, units, passesOver);
        var (times, inFlues) = flues is null ? (1, default) : Flues(flues, pan, passesOver);
        return new()
        {
            Length = pan.Length,
            Width = pan.Width,
            Channels = pan.Channels ?? 1,
            RunDepth = pan.Run,
            LeastDepth = pan.Least,
            FloodDepth = pan.Flood,
            WallDepth = pan.Wall,
            HasFlues = flues is not null,
            HeatedTimes = times,
            InFlues = inFlues,
        };
    }

    /// <summary>By their depth and number, or by how many times the plan area the fire sees.</summary>
    private static (double HeatedTimes, Volume InFlues) Flues(YamlMap flues, Pan pan, bool passesOver)
    {
        const string Factor = "area factor";
        var isByFactor = flues.Has(Factor);
        if (isByFactor && (flues.Has("depth") || flues.Has("number")))
        {
            flues.Add(Factor, $"'{Factor}' stands beside the flues' depth or number", "depth and number, or the factor alone", FaultKind.Together);
        }

        var factor = flues.Number(Factor, RigLimit.HeatedTimes.Low, RigLimit.HeatedTimes.High, "3.5");
        var depth = RigFile.Size(flues, "depth", RigLimit.FlueDepth, required: !isByFactor);
        var number = flues.Whole("number", RigLimit.Flues.Low, RigLimit.Flues.High, required: !isByFactor);
        if (!passesOver)
        {
            flues.Finish();
        }

        return depth is { } deep && number is { } many ? PanBehind.Flues(deep, many, pan.Length, pan.Width) : (factor ?? 1, default);
    }

    private static Pan One(YamlMap? map, UnitSystem units, bool passesOver)
    {
        var length = RigFile.Size(map, "length", RigLimit.PanLength, required: true) ?? Length.FromInches(48);
        var width = RigFile.Size(map, "width", RigLimit.PanWidth, required: true) ?? Length.FromInches(24);
        var channels = map?.Whole("channels", RigLimit.Channels.Low, RigLimit.Channels.High);
        var depth = map?.Map("depth");
        var pan = new Pan(
            length,
            width,
            channels,
            RigFile.Size(depth, "run", RigLimit.RunDepth) ?? RigDefaults.RunDepth,
            RigFile.Size(depth, "least", RigLimit.LeastDepth) ?? RigDefaults.LeastDepth,
            RigFile.Size(depth, "flood", RigLimit.FloodDepth) ?? RigDefaults.FloodDepth,
            RigFile.Size(depth, "wall", RigLimit.WallDepth) ?? RigDefaults.WallDepth);
        Ordered(depth, pan, units);
        if (!passesOver)
        {
            map?.Finish();
            depth?.Finish();
        }

        return pan;
    }

    private static void Ordered(YamlMap? depth, Pan pan, UnitSystem units)
    {
        if (depth is not null && !(pan.Least < pan.Run && pan.Run <= pan.Flood && pan.Flood < pan.Wall))
        {
            depth.Add(
                "least",
                $"the depths are least {units.From(pan.Least)}, run {units.From(pan.Run)}, flood {units.From(pan.Flood)}, wall {units.From(pan.Wall)}",
                "each deeper than the one before",
                FaultKind.Together,
                help: "least < run <= flood < wall; one that is not written counts as usual: write that one too.");
        }
    }
}
