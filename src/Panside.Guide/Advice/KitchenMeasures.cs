using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>What brings the evening's syrup, or one draw of it, to its target, in the measures that stand in a kitchen, for each quart or liter of it.</summary>
internal static class KitchenMeasures
{
    /// <summary>Nearer than this, in Brix, a hydrometer cannot tell a batch from its target: half of the finest mark that most have. Common practice, no source.</summary>
    public const double Near = 0.3;

    private const double TablespoonsInCup = 16;

    /// <summary>Sap in spring where nobody read it, in Brix: common practice.</summary>
    private const double UsualSap = 2;

    /// <summary>What to stir in or boil off, as an instruction; null where the batch is on target, or not known.</summary>
    public static string? Remedy(Situation now) => SyrupBatch.Of(now.State) is { } batch ? Remedy(now, batch) : null;

    /// <summary>The same of the draw that was just tested, by its glass alone: a thin batch does not make a heavy draw thinner. Null where it is on target, or not known.</summary>
    public static string? RemedyOfDraw(Situation now) => SyrupSample.TrueSugar(now.State) is { Brix: > 0 and < 85 } sugar
        ? Remedy(now, Portion.OfVolume(Volume.FromLiters(1), sugar, SyrupBatch.InThePail))
        : null;

    /// <summary>The batch in a sentence for the end: how much, how far off, what to do, and to test again; null where none is known.</summary>
    public static string? Told(Situation now)
    {
        if (SyrupBatch.Of(now.State) is not { } batch)
        {
            return null;
        }

        var off = batch.SugarContent.Brix - now.Setting.Rig.Target.Brix;
        var liters = batch.Volume.Liters;
        var volume = Amount.Shown(now.Setting.Units.From(batch.Volume, liters < 3.5 ? now.Setting.Units.SmallVolume : null));
        return Remedy(now) is { } remedy
            ? $"The draws together, {volume}, come to {Amount.Shown(new(double.Abs(off), Unit.Brix))} {(off < 0 ? "under" : "over")} target: {remedy}, then test again."
            : $"The draws together, {volume}, are on target.";
    }

    private static string? Remedy(Situation now, Portion syrup)
    {
        var off = syrup.SugarContent.Brix - now.Setting.Rig.Target.Brix;
        return off > Near ? $"stir in {AQuart(now, Sap(now, syrup) / syrup.Volume.Liters)} of hot sap"
            : off < -Near ? $"boil off {AQuart(now, Water(now, syrup) / syrup.Volume.Liters)} of water"
            : null;
    }

    private static double Sap(Situation now, Portion batch)
    {
        var sap = now.State.Last(ReadingName.SapBrix) is { } read ? double.Clamp(UnitSystem.Sugar(read.Value).Brix, 0, 20) : UsualSap;
        return Blend.ThinnerToAdd(batch, now.Setting.Rig.Target, SugarContent.FromBrix(sap), batch.Temperature).Volume.Liters;
    }

    private static double Water(Situation now, Portion batch) => Finishing.WaterToBoilOff(batch, now.Setting.Rig.Target).Kilograms;

    /// <summary>A share of the volume: tablespoons or eighths of a cup a quart, or milliliters a liter.</summary>
    private static string AQuart(Situation now, double share)
    {
        if (now.Setting.Units == UnitSystem.Metric)
        {
            return $"{(double.Max(double.Round(share * 200), 1) * 5).ToString("0", CultureInfo.InvariantCulture)} ml a liter";
        }

        var cups = share * 4;
        if (cups < 0.25)
        {
            var spoons = double.Max(double.Round(cups * TablespoonsInCup * 2) / 2, 0.5);
            return $"{Halves(spoons)} {(spoons > 1 ? "tablespoons" : "tablespoon")} a quart";
        }

        var eighths = (int)double.Round(cups * 8);
        string[] parts = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];
        var whole = (eighths / 8) is > 0 and var full ? full.ToString(CultureInfo.InvariantCulture) : "";
        return $"{$"{whole} {parts[eighths % 8]}".Trim()} {(eighths > 8 ? "cups" : "cup")} a quart";
    }

    private static string Halves(double spoons) =>
        double.IsInteger(spoons) ? spoons.ToString("0", CultureInfo.InvariantCulture) : spoons < 1 ? "1/2" : $"{double.Floor(spoons).ToString("0", CultureInfo.InvariantCulture)} 1/2";
}
