using System.Globalization;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Screen.Painting;

/// <summary>
/// The pan as it lies there, from the feed to the draw-off: how deep, how sweet, what feeds it, and the fire under it; beside it the tank with
/// the mark at which firing stops. Facts in, rows out.
/// </summary>
internal static class PanDrawing
{
    /// <summary>Rows that it takes beside those inside of the pan: names, floor, fire.</summary>
    public const int Around = 3;

    private const int TankInside = 4;
    private const int TankWidth = 19;
    private const int MarkWidth = 15;
    private const int BackInside = 6;

    /// <summary>The pan behind, its walls and the way into the one in front.</summary>
    private const int BackWidth = BackInside + 5;

    /// <summary>The scale goes a little over the flood depth, so that a flooded pan is not drawn as one that runs over.</summary>
    private const double Over = 1.12;

    /// <summary>The whole picture, in as many rows as it has inside and <see cref="Around"/>; none where it would be too narrow to read.</summary>
    /// <param name="sight">What is drawn.</param>
    /// <param name="width">Columns.</param>
    /// <param name="inside">Rows inside of the pan.</param>
    public static IReadOnlyList<string> Whole(PanSight sight, int width, int inside)
    {
        var behind = sight.Back is null ? 0 : BackWidth;
        if (Widths(sight, width - TankWidth - behind) is not { } widths)
        {
            return [];
        }

        var tank = Tank(sight, inside);
        var height = double.Max(sight.Flood * Over, sight.Depth ?? 0);
        var pan = Inside(sight, widths, inside, depth => depth / height);
        if (sight.Back is { } back)
        {
            pan = [.. Behind(back, sight.Deep, inside).Zip(pan, (one, other) => one + other)];
        }

        var floor = (sight.Back is null ? "" : "└" + new string('─', BackInside) + "┘   ") + "└" + string.Join('┴', widths.Select(channel => new string('─', channel))) + "┘" + Out(sight);
        var flames = sight.Fire.Flames == 0 ? "" : new string('▲', sight.Fire.Flames * 2) + " ";
        return
        [
            Row(sight.Tank.Now is { } now ? $"Tank {Amount.Shown(new(now, sight.Tank.Unit))}" : "Tank not read", PanelRow.Of(PanelRow.Useful, Titles(sight)).In(int.Max(width - TankWidth, 0)), width),
            .. Enumerable.Range(0, inside).Select(row => Row(tank[row], pan[row], width)),
            Row("└" + new string('─', TankInside) + "┘", floor, width),
            Row("", " " + flames + PanelRow.Of(PanelRow.Useful, sight.Fire.Ways).In(int.Max(width - TankWidth - 1 - flames.Length, 0)), width),
        ];
    }

    /// <summary>
    /// The pan alone, without names and floor: what has room on the least screen. In so few rows a true height would show nothing over the
    /// least depth: its lower half is full at the least depth, its upper half at the depth that the pan is run at.
    /// </summary>
    /// <param name="sight">What is drawn.</param>
    /// <param name="width">Columns.</param>
    /// <param name="inside">Rows.</param>
    public static IReadOnlyList<string> Small(PanSight sight, int width, int inside) =>
        Widths(sight, width) is { } widths ? [.. Inside(sight, widths, inside, depth => AgainstMarks(sight, depth)).Select(row => Columns.Cut(row, width))] : [];

    private static double AgainstMarks(PanSight sight, double depth) =>
        0.5 * (double.Min(depth / sight.Least, 1) + double.Clamp((depth - sight.Least) / (sight.Run - sight.Least), 0, 1));

    /// <summary>The columns of each channel; null where a figure would not fit.</summary>
    private static IReadOnlyList<int>? Widths(PanSight sight, int width)
    {
        var channels = sight.Sweetness.Count;
        var room = width - MarkWidth - 1 - (channels - 1);
        return room / channels < 3 ? null : [.. Enumerable.Range(0, channels).Select(channel => (room / channels) + (channel < room % channels ? 1 : 0))];
    }

    /// <summary>How syrup comes out, and whether it does now.</summary>
    private static string Out(PanSight sight) => sight.DrawnBy switch
    {
        DrawnBy.Ladle => sight.IsDrawn ? " ▲ ladling" : " ▲ by ladle",
        DrawnBy.Pour => sight.IsDrawn ? " ═► pouring" : " ► poured off",
        _ => sight.IsDrawn ? " ═► drawing" : " ► draw-off",
    };

    /// <summary>What stands over the pan, the longest way first: where there is little room, that its sweetness is reckoned is not told beside it.</summary>
    private static IReadOnlyList<string> Titles(PanSight sight)
    {
        string Shown(double? depth) => depth is { } deep ? Amount.Shown(new(deep, sight.Deep)) : "not read";
        var what = sight.Back is { } back ? $" Back pan {Shown(back.Depth)}, front {Shown(sight.Depth)}"
            : sight.Depth is null ? " Pan, depth not read"
            : $" Pan, {Shown(sight.Depth)} deep";
        var bare = sight.Back is null ? $" Pan, {Shown(sight.Depth)}" : what;
        return sight.IsLastRead && sight.Depth is not null ? [bare + " when last read", bare + ", last read"]
            : sight.IsCovered ? [what + "; covered"] : sight.Sweetness[0] is null ? [what]
            : [what + (sight.Back is null ? "; Brix as reckoned" : "; Brix reckoned"), what];
    }

    private static List<string> Inside(PanSight sight, IReadOnlyList<int> widths, int inside, Func<double, double> height)
    {
        var share = height(sight.Depth ?? 0);

        // The figure stands in the middle of what is there; in a puddle over it.
        var figures = int.Max(Vessel.RowOf(share, inside) - 1, 0) / 2;
        var marks = Marks(sight, height, inside);
        return
        [
            .. Enumerable.Range(0, inside).Reverse().Select(row =>
                "│" + string.Join('│', widths.Zip(sight.Sweetness, (width, brix) => Channel(Vessel.At(row, inside, share, Vessel.Shade(brix)), row == figures ? brix : null, width)))
                + (marks.TryGetValue(row, out var mark) ? "├ " + mark : "│")),
        ];
    }

    /// <summary>The pan behind, with the way into the one in front over its floor; its own least depth is marked in its wall, with its figure.</summary>
    private static IEnumerable<string> Behind(BackSight back, Unit deep, int inside)
    {
        var scale = double.Max(back.Flood * Over, back.Depth ?? 0);
        var least = Vessel.RowOf(back.Least / scale, inside);
        return Enumerable.Range(0, inside).Reverse().Select(row =>
            (row == least ? "├" : "│")
            + Filled(Vessel.At(row, inside, (back.Depth ?? 0) / scale, Vessel.Shade(null)), row == least ? "≥ " + Amount.Shown(new(back.Least, deep)) : "", BackInside)
            + (row == int.Min(1, inside - 1) ? "├──►" : "│   "));
    }

    private static string Channel(char sign, double? figure, int width) => Filled(sign, figure is { } brix ? brix.ToString("0", CultureInfo.InvariantCulture) : "", width);

    /// <summary>A stretch of one sign with words in its middle; without them where they have no room.</summary>
    private static string Filled(char sign, string words, int width)
    {
        words = words.Length > width ? "" : words.Length == 0 ? "" : words.Length + 2 <= width ? $" {words} " : words;
        var left = (width - words.Length) / 2;
        return new string(sign, left) + words + new string(sign, width - left - words.Length);
    }

    /// <summary>The marks by their rows: where two fall into one, the one that matters more stays.</summary>
    private static Dictionary<int, string> Marks(PanSight sight, Func<double, double> height, int inside)
    {
        var marks = new Dictionary<int, string>();
        foreach (var (name, depth) in new[] { ("least", sight.Least), ("run", sight.Run), ("flood", sight.Flood) })
        {
            marks.TryAdd(Vessel.RowOf(height(depth), inside), $"{name} {Amount.Shown(new(depth, sight.Deep))}");
        }

        return marks;
    }

    private static List<string> Tank(PanSight sight, int inside)
    {
        var tank = sight.Tank;
        var (level, stop) = ((tank.Now ?? 0) / tank.Holds, tank.Stop is { } at && at <= tank.Holds ? Vessel.RowOf(at / tank.Holds, inside) : -1);
        var feed = stop == 0 ? 1 : 0;
        return
        [
            .. Enumerable.Range(0, inside).Reverse().Select(row =>
                "│" + new string(Vessel.At(row, inside, level, Vessel.Shade(null)), TankInside)
                + (row == stop ? $"├ stop {Amount.Shown(new(tank.Stop!.Value, tank.Unit))}"
                    : row == feed ? sight.HasFloat ? "├───float───►" : sight.IsByValve ? "├───valve───►" : "│   by hand ►"
                    : row == inside - 1 && tank.IsFullKnown ? $"├ full {Amount.Shown(new(tank.Holds, tank.Unit))}"
                    : "│")),
        ];
    }

    private static string Row(string tank, string pan, int width) => Columns.Cut(Columns.Pad(tank, TankWidth) + pan, width);
}
