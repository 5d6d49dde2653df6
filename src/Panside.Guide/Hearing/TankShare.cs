using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Hears how full the tank is, <c>half full</c>, where it is asked or named: of a tank whose size is known it is asked back as a volume.</summary>
internal static partial class TankShare
{
    /// <summary>What it means; null where it says no share. Low alone is the foam's word, here as elsewhere.</summary>
    public static Understood? Read(Moment at, string said, Prompt? open, Setting setting)
    {
        var plain = Letters.Plain(said);
        var isAsked = open?.Ask == ReadingName.TankVolume.Code;
        if (isAsked && plain != "low" && Low().IsMatch(plain))
        {
            return new MeansNothing("How low? Say what it reads, like 'tank 8'.") { IsNoCry = true };
        }

        if ((!isAsked && !plain.Contains("tank", StringComparison.Ordinal)) || !setting.Rig.TankIsStated || Share().Match(plain) is not { Success: true } match)
        {
            return null;
        }

        var share = match.Groups["share"].Value switch
        {
            "full" => 1,
            "half" or "1/2" => 0.5,
            "quarter" or "1/4" => 0.25,
            "third" or "1/3" => 1 / 3.0,
            "two thirds" or "2/3" => 2 / 3.0,
            _ => 0.75,
        };
        var measure = setting.Units.From(setting.Rig.Tank * share);
        return new MeansUnsure(new Reading(at, ReadingName.TankVolume, new(double.Round(measure.Value, 1), measure.Unit)));
    }

    [GeneratedRegex(@"^(?:(?:it'?s|the|head|tank|tank'?s|is|at|about|around|roughly|maybe|just|now|a|down to|bout) )*(?<share>full|half|quarter|third|three quarters|two thirds)(?: full)?(?: of)?(?: an?| the)?(?: tank)?(?: left| full)?$|^(?:(?:it'?s|the|head|tank|tank'?s|is|at|about|around|a|down to|bout) )*(?<share>1/2|1/4|1/3|3/4|2/3) (?:full|tank|of a tank|a tank|of the tank)(?: left)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Share();

    [GeneratedRegex(@"^(?:(?:it'?s|the|tank|tank'?s|is|getting|pretty|very|a|kinda|really|bit|little) )*(?:low|lowish|not much|little|few gallons|a few gallons|some)$", RegexOptions.CultureInvariant)]
    private static partial Regex Low();
}
