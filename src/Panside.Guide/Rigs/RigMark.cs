using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Panside.Guide.Rigs;

/// <summary>A short mark of what a rig's file says of heat and pan: another mark is another rig. Names, units and comments do not count.</summary>
public static class RigMark
{
    /// <summary>The mark: 16 hexadecimal digits.</summary>
    public static string Of(Rig rig)
    {
        double[] numbers =
        [
            rig.PanLength.Meters, rig.PanWidth.Meters, rig.Channels, rig.RunDepth.Meters, rig.LeastDepth.Meters, rig.FloodDepth.Meters,
            (int)rig.Draft, rig.Firebrick.Kilograms, rig.WoodMoisture, rig.Charge.Kilograms, rig.Interval.TotalMinutes, rig.Feed switch { Feed.ByFloat => 1, Feed.ByHand => 0, _ => 2 },
        ];
        var text = string.Join(';', numbers.Select(number => number.ToString("G9", CultureInfo.InvariantCulture)).Append(rig.WoodSpecies))
            + (rig.IsBurner ? string.Create(CultureInfo.InvariantCulture, $";{rig.Fuel};{rig.Boils.LitersPerHour:G9}") : "")
            + (rig.Back is { } back
                ? string.Create(CultureInfo.InvariantCulture, $";{back.Area.SquareMeters:G9};{back.Channels};{back.RunDepth.Meters:G9};{back.LeastDepth.Meters:G9};{back.FloodDepth.Meters:G9};{back.HeatedTimes:G9};{back.InFlues.Liters:G9}")
                : "");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
    }
}
