using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>Hears that somebody asks whether an amount is right, <c>is 1.5 inches ok</c>: nothing was read, and what it should be is answered.</summary>
internal static partial class AskedAmount
{
    /// <summary>The question that it is; null where a line asks after no amount.</summary>
    /// <param name="text">The line.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    /// <param name="setting">What the session runs on.</param>
    public static Understood? Read(string text, Prompt? open, Setting setting)
    {
        var said = Letters.Plain(text).Trim();
        var isMarked = said.EndsWith('?');
        if (Asks().Match(said.TrimEnd('?', '.', '!', ' ')) is not { Success: true } match || (!isMarked && !match.Groups["first"].Success)
            || !MeasureText.TryNumber(match.Groups["amount"].Value.Trim(), out var value, out var behind))
        {
            return null;
        }

        var unit = behind.Length > 0 ? UnitNames.FromWord(behind) : null;
        if (behind.Length > 0 && unit is null)
        {
            return null;
        }

        var (depth, thermometer) = (ReadingName.PanDepth.UnitIn(setting.Units), ReadingName.DrawTemperature.UnitIn(setting.Units));
        var kind = unit?.Kind()
            ?? (match.Groups["of"].Value is "depth" or "pan" or "level" || Deep().IsMatch(said) ? Dimension.Length
            : match.Groups["of"].Value is "tank" or "sap" ? Dimension.Volume
            : value > (thermometer == Unit.DegreeFahrenheit ? 203 : 95) && value < (thermometer == Unit.DegreeFahrenheit ? 240 : 116) ? Dimension.Temperature
            : value > 0 && UnitSystem.Length(new(value, depth)) <= setting.Rig.FloodDepth * 2 ? Dimension.Length
            : setting.Readings.Find(open?.Ask ?? "")?.Kind);
        return kind switch
        {
            Dimension.Length => new MeansTalk(new("ask:depth", null, 1, text)),
            Dimension.Temperature => new MeansTalk(new("ask:thermometer", null, 1, text)),
            Dimension.Volume => new MeansTalk(new("ask:reserve", null, 1, text)),
            _ => new MeansNothing($"'{text.Trim()}' asks, so nothing is taken; and that question is not answered here."),
        };
    }

    [GeneratedRegex(
        @"^(?<first>(?:is|are|was|would|will|does|isn't|ain't) )?(?:(?:it|that|this|at|the|a|about|only|having|with|my) )*(?<of>depth|pan|level|tank|sap|thermometer|draw)?(?:(?: is| at| of|'s) )? ?(?<amount>[0-9.][0-9./ ]*[a-z°""'%]*?)(?: (?:in|of) (?:the )?(?:pan|tank|sap))?(?: (?:still|really|deep|high|about|way|be|of sap|of|left|now))* (?:ok|okay|k|kay|enough|fine|good|alright|all right|right|safe|bad|normal|good enough|deep enough|enough sap|(?:too )?(?:deep|low|high|shallow|much|little|hot)|too thin)(?: (?:for (?:now|the pan|this|the shutdown)|to leave|now|still|or not|then|or no))*$",
        RegexOptions.CultureInvariant)]
    private static partial Regex Asks();

    [GeneratedRegex(@"\b(?:deep|shallow)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Deep();
}
