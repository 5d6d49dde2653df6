using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Sentences;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>The short words for a deed, where just that is asked: <c>it's in</c> is the wood there, <c>2 quarts</c> what was drawn, <c>won't open</c> the draw-off.</summary>
internal static partial class DeedWhereAsked
{
    /// <summary>What it means; null where no deed is asked, or it is none of these words. Over a burner what is off may be the burner.</summary>
    public static Understood? Read(Moment at, string said, Prompt? open, Setting setting)
    {
        if (open is null)
        {
            return null;
        }

        var plain = Letters.Plain(said);
        var deed = setting.Flow.DeedOf(open.Step);
        if (open.Pour is not null && PouredAsAsked().IsMatch(plain))
        {
            return new MeansLine(new Answer(at, AnswerWords.Yes));
        }

        if (deed == DeedName.LitFire && Burns().IsMatch(plain))
        {
            return new MeansLine(new Did(at, DeedName.LitFire, null));
        }

        return deed == DeedName.AddWood && (In().IsMatch(plain) || Pieces().IsMatch(plain)) ? new MeansLine(new Did(at, DeedName.AddWood, null))
            : deed == DeedName.CloseDraw && !setting.Rig.IsBurner && Off().IsMatch(plain) ? new MeansLine(new Did(at, DeedName.CloseDraw, null))
            : deed == DeedName.OpenDraw && Stuck().IsMatch(plain) && setting.Flow.Dangers.Any(known => known.Code == "stuck") ? new MeansCry(["stuck"], IsSure: true)
            : null;
    }

    /// <summary>Whether the volume that is told is what was drawn.</summary>
    public static bool IsDrawn(Prompt? open, Setting setting) => open is not null && setting.Flow.DeedOf(open.Step) == DeedName.CloseDraw;

    [GeneratedRegex("^(?:(?:it'?s|its|all|just|i|we|ok|yes|that'?s) )*(?:in|in now|went in|poured|poured it|poured it in|dumped it in|in it goes|is in)$", RegexOptions.CultureInvariant)]
    private static partial Regex PouredAsAsked();

    [GeneratedRegex("^(?:(?:it'?s|its|the (?:heat|burner|plate|fire) is|heat'?s|burner'?s|all|yes|ok) )*(?:on|on now|lit|burning|going|turned on|switched on|turned it on|switched it on)$", RegexOptions.CultureInvariant)]
    private static partial Regex Burns();

    [GeneratedRegex("^(?:(?:it'?s|its|they'?re|all|just|i|we) )*(?:in|put (?:it|them|one|some|a few|a couple) in|in now|in there)$", RegexOptions.CultureInvariant)]
    private static partial Regex In();

    [GeneratedRegex("^(?:(?:a|about|just|put in|threw in) )*(?:[0-9]+|a|one|two|three|four|couple|few) (?:sticks?|splits?|logs?|pieces?|slabs?|chunks?|armfuls?)(?: in)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();

    [GeneratedRegex("^(?:(?:it'?s|its|she'?s|i|we|just|all|now) )*(?:off|stopped|stopped it|turned off|turned it off|shut (?:it|her|'?er) (?:down|off|up)|closed (?:it|her|'?er)(?: up| off)?)(?: now)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Off();

    [GeneratedRegex("^(?:(?:it|the valve|i|she|that|thing) )*(?:won'?t (?:open|budge|move|turn)|can'?t|cannot|can'?t (?:open|get)(?: it| the valve)?(?: open)?|couldn'?t|nothing comes(?: out)?)$", RegexOptions.CultureInvariant)]
    private static partial Regex Stuck();
}
