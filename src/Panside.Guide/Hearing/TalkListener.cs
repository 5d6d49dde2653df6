using System.Text.RegularExpressions;
using Panside.Guide.Answering;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Makes what the ear heard into lines, with the open prompt in mind.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed partial class TalkListener(Setting setting)
{
    /// <summary>From this share on a fact is taken and told back; under it it is asked. Judged by writers left out: see docs/hearing.md.</summary>
    public const double TakenFrom = 0.6;

    /// <summary>From this share on a word of the talk itself, an answer, a thing that nobody has is taken: what can be taken back at once.</summary>
    private const double BegunFrom = 0.4;

    /// <summary>Under this share nothing is made of it.</summary>
    public const double AskedFrom = 0.3;

    /// <summary>The share of a fact with a question mark behind it.</summary>
    private const double AskedBack = 0.35;

    /// <summary>What is less likely is not named as near: judged by hand.</summary>
    private const double NearFrom = 0.12;

    /// <summary>A smell that is no good one must never be taken for it.</summary>
    private const string Sweet = "observed:smell:sweet";
    private const string BoilStill = "observed:boil:still";

    private const string CoalsSpent = "observed:coals:spent";
    private const double SurelySweet = 0.97;
    public const string WhichSmell = "Which smell: 'sweet', or 'scorched'? In doubt say 'scorched', and pour sap in at the syrup side.";

    /// <summary>What is asked just now is so much likelier to be told.</summary>
    private const double AskedWeighs = 4;

    /// <summary>A plain question about a word of the trade, whatever danger the word may sound like: what is scorch; null where it is none.</summary>
    public Understood? Term(string text) =>
        KnownTalk.Ear(setting.Flow.Language)?.AskedOf(text) is var (kind, of) && KnownAnswers.TermsOf(setting.Flow.Language).Is(of)
            ? new MeansTalk(new(kind, null, 1, of))
            : null;

    /// <summary>What was heard of a line.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="text">The line.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public TalkHeard Hear(Moment at, string text, Prompt? open)
    {
        if (KnownTalk.Ear(setting.Flow.Language) is not { } ear)
        {
            return TalkHeard.Nothing;
        }

        var asked = open is null ? null : setting.Readings.Find(open.Ask);
        if (asked is not null && ear.AloneIn(text) is { } alone && alone.Fits(asked.Kind))
        {
            var isAsked = text.TrimEnd().EndsWith('?');
            return new([Line(at, new("reading:" + asked.Code, alone, isAsked ? AskedBack : 1, text))], IsWhole: !isAsked, isAsked ? AskedBack : 1);
        }

        var meanings = ear.Hear(text, kind => Weight(kind, open));
        if (ear.BeginsAsSupposed(text) && meanings.Any(Tells))
        {
            return new([new MeansNothing($"'{text.Trim()}' supposes, so nothing is taken. To reckon with it say {Supposition.Forms}.")], IsWhole: false, 0);
        }

        var begins = ear.BeginsAsQuestion(text);
        if (begins && meanings is [var first, ..] && IsOfThings(first))
        {
            // Are the coals spent? Who asks has seen nothing, whatever mark stands behind it: when it was last told is.
            return new([new MeansTalk(new("seen:" + first.Kind, null, 1, text.Trim()))], IsWhole: false, 0);
        }

        // Should I add 2 gal? Who asks has told nothing: it is asked back. Behind a question that is answered a reading is one all the same;
        // what was done or seen is not, for it may be what is asked about.
        var isMarked = text.TrimEnd().EndsWith('?');
        var isAsking = begins && !meanings.Any(meaning => meaning.Root == "answer") && (meanings is [var asking, ..] && Tells(asking) || meanings is [.., { Root: not "reading" } told] && Tells(told));
        if (isAsking || (isMarked && meanings is [.., var last] && Tells(last)))
        {
            if (meanings.All(meaning => meaning.Kind != Meaning.Cry) && !isMarked)
            {
                return new([new MeansNothing($"'{text.Trim()}' asks, so nothing is taken; and that question is not answered here.")], IsWhole: false, 0);
            }

            meanings = [.. meanings.Select(meaning => Tells(meaning) ? meaning with { Share = double.Min(meaning.Share, AskedBack) } : meaning)];
        }

        var facts = meanings.Where(meaning => meaning.Kind is not (Meaning.None or Meaning.Cry) && meaning.Share >= LeastOf(meaning) && !(meaning.Root == "answer" && meanings.Count > 1 && ear.SaysNothing(meaning.Words)) && (IsAskedFor(meaning, open) || !ear.IsUnnamed(meaning, text)) && !(meaning.Root == "away" && NotDone().IsMatch(text)) && !(meaning.Kind == CoalsSpent && meanings.Any(other => other.Kind == "did:add-wood"))
            && !(meaning.Kind == "word:back" && BackOf().IsMatch(text)) && !(meaning.Rest.EndsWith("pan-depth", StringComparison.Ordinal) && OnTop().IsMatch(text))).ToList();
        return facts.Count == 0
            ? TalkHeard.Nothing
            : new([.. facts.Select(fact => Line(at, fact))], facts.Count == meanings.Count, facts.Min(fact => fact.Share));
    }

    /// <summary>A volume with its unit, and nothing else, where it is asked to shut a draw: so much was drawn.</summary>
    public Understood? Drawn(Moment at, string text) => KnownTalk.Ear(setting.Flow.Language)?.AloneIn(text) is { Unit: { } unit } alone && unit.Kind() == Dimension.Volume && !text.TrimEnd().EndsWith('?')
        ? Measured(alone.In(unit), measure => new Did(at, DeedName.CloseDraw, measure))
        : null;

    /// <summary>A tank that is empty, said of itself: none is left in it.</summary>
    public Understood? TankEmpty(Moment at, string text) => KnownTalk.Ear(setting.Flow.Language)?.IsTankEmpty(text) == true
        ? new MeansLine(new Reading(at, ReadingName.TankVolume, new(0, ReadingName.TankVolume.UnitIn(setting.Units))))
        : null;

    /// <summary>A burner that was lit or put on again, where a line says so of it; null where it says anything else. No such line tells of an operator who is back.</summary>
    public Understood? Relit(Moment at, string text) =>
        setting.Rig.IsBurner && KnownTalk.Ear(setting.Flow.Language) is { } ear && ear.NamesFire(text) && ear.SaysOnAgain(text) && (setting.Rig.Fuel == Fuel.Electric || !text.Contains("power", StringComparison.OrdinalIgnoreCase))
            ? new MeansLine(new Did(at, DeedName.LitFire, null))
            : null;

    /// <summary>Wood, where a line has its words and nothing surer is known: a charge that was not heard makes all that follows too soon.</summary>
    public Understood? PerhapsWood(Moment at, string text) =>
        !setting.Rig.IsBurner && KnownTalk.Ear(setting.Flow.Language)?.MaySayWood(text) == true ? new MeansUnsure(new Did(at, DeedName.AddWood, null)) : null;

    /// <summary>What a line that was not understood comes nearest to, in words that are: two at the most.</summary>
    public IReadOnlyList<string> Near(string text) => KnownTalk.Ear(setting.Flow.Language) is not { } ear ? [] :
    [
        .. ear.Nearest(text).Where(near => near.Share >= NearFrom).Select(near => Example(near.Kind)).OfType<string>().Take(2),
    ];

    private string? Example(string kind)
    {
        var parts = kind.Split(':');
        return parts[0] switch
        {
            "ask" => KnownAnswers.BookOf(setting.Flow.Language).Asks.GetValueOrDefault(parts[1])?.Said,
            "reading" => setting.Readings.Find(parts[1]) is { Words: [var word, ..] } ? $"{word} …" : null,
            "observed" => $"{parts[1]} {parts[2]}",
            "did" => DeedName.FromCode(parts[1])?.Words[0],
            _ => null,
        };
    }

    /// <summary>Whether what stands behind a number is one word that nobody says in talk: a unit that is not known.</summary>
    public bool IsStrange(string behind) => behind.All(char.IsLetter) && KnownTalk.Ear(setting.Flow.Language) is { } ear && !ear.Knows(behind.ToLowerInvariant())
        && !ear.IsAmount($"1 {behind}");

    /// <summary>Who goes for a while is away, for as long as is said with it; null where a line says anything else.</summary>
    public MeansTalk? Gone(Moment at, string said) => Errand.In(said) is not (true, var back) ? null
        : back.Length > 0 && Hear(at, "be " + back[int.Max(back.IndexOf("back", StringComparison.Ordinal), 0)..], null).Understood is MeansTalk { Meaning.Root: "away" } lasting ? lasting
        : new(new("away", null, 1, said));

    /// <summary>Whether a line asks by how it begins.</summary>
    public bool Asks(string text) => KnownTalk.Ear(setting.Flow.Language)?.BeginsAsQuestion(text) == true;

    /// <summary>Whether a meaning is of something that can be read, done or seen, so that it was told at some time or never.</summary>
    private static bool IsOfThings(Meaning meaning) => meaning.Root is "reading" or "did" or "observed" && meaning.Share >= AskedFrom;

    /// <summary>Whether a meaning tells something that changes what is known, and asks nothing.</summary>
    private static bool Tells(Meaning meaning) =>
        meaning.Root is "reading" or "did" or "observed" or "added" or "hold" or "answer" or "away" or "gone-by" || meaning.Kind == "word:undo";

    /// <summary>What begins something on a guess wants to be surer than what is only asked back or answered.</summary>
    private static double LeastOf(Meaning meaning) => meaning.Root switch
    {
        "away" or "gone-by" => TakenFrom,
        "handover" or "lack" or "hold" or "answer" or "word" => BegunFrom,
        _ => AskedFrom,
    };

    private static bool IsAskedFor(Meaning meaning, Prompt? open) => open is not null && meaning.Rest == open.Ask;

    private static double Weight(string kind, Prompt? open) => open switch
    {
        null => 1,
        { Ask: Prompt.Confirm } => kind.StartsWith("answer:", StringComparison.Ordinal) ? AskedWeighs : 1,
        { Ask: "drawn-volume" } => kind == "did:close-draw" ? AskedWeighs : 1,
        { Ask: var ask } => kind == "reading:" + ask || kind.StartsWith($"observed:{ask}:", StringComparison.Ordinal) ? AskedWeighs : 1,
    };

    /// <summary>
    /// Why a deed cannot be meant by words that name another thing: the tank's valve is no draw-off, and who keeps going does not leave. Null where it
    /// may be meant.
    /// </summary>
    private static string? OfAnotherThing(Meaning meaning, TalkEar ear) => meaning.Kind switch
    {
        "did:open-draw" or "did:close-draw" when meaning.Amount is null && ear.NamesOtherValve(meaning.Words) && !(meaning.Kind == "did:close-draw" && ear.NamesFire(meaning.Words)) =>
            $"'{meaning.Words}': nothing is taken. Of the draw-off say 'draw open', or 'drew' with the volume.",
        "did:open-draw" when meaning.Amount is null && ear.SpeaksOfNoDraw(meaning.Words) =>
            $"'{meaning.Words}': nothing is taken. If the draw-off is open, say 'draw open'.",
        "did:add-wood" when OutOf().IsMatch(meaning.Words) => $"'{meaning.Words}': nothing is taken. If no more wood goes in, say 'shutdown'.",
        "observed:foam:low" when Shut().IsMatch(meaning.Words) => $"'{meaning.Words}': nothing is taken. Say 'drew' with the volume, 'shutdown', or 'foam low'.",
        "did:leave" when ear.NamesOtherValve(meaning.Words) && !OfMe().IsMatch(meaning.Words) => $"'{meaning.Words}': nothing is taken. Say 'leave' when you go.",
        "did:leave" when ear.SaysStays(meaning.Words) && !ear.SaysGoes(meaning.Words) => $"'{meaning.Words}': nothing is taken, you stay.",
        _ => null,
    };

    [GeneratedRegex(@"\bout of (?:\w+ )?(?:wood|logs|splits|sticks|slabs)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OutOf();

    /// <summary>The back of something, or what else came back, is no operator who does.</summary>
    [GeneratedRegex(@"\b(?:in|to|of|into|at|on|for) (?:the )?back\b|\bback (?:pan|one|side|door|channel)\b|\b(?:power|lights?|it|foam|fire|she) (?:just |always |never )?(?:came|comes|sits|goes|is) back\b|\bsits back\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex BackOf();

    /// <summary>How high something else stands: a layer of foam on the pan, the snow.</summary>
    [GeneratedRegex(@"^\W*(?:the |my |a |some )*(?:foam|froth|snow|ice|ash|ashes|scale|niter|sand|mud|steam)\b(?!.*\b(?:pan|depth|level|sap)(?:'s)? (?:is|at|now|reads|stands|[0-9]))", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OnTop();

    /// <summary>Still as in still there, and no word of a boil.</summary>
    [GeneratedRegex(@"\bstill (?!now|again|and|yes|today|tonight)\w", RegexOptions.CultureInvariant)]
    private static partial Regex StillSo();

    /// <summary>Who goes, and not what falls off.</summary>
    [GeneratedRegex(@"\b(?:i|i'm|im|we|we're|me|heading|headed|going|leaving|home|bed)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OfMe();

    [GeneratedRegex(@"\b(?:haven'?t|havent|hasn'?t|not|didn'?t|never)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NotDone();

    [GeneratedRegex(@"\bshut\b", RegexOptions.CultureInvariant)]
    private static partial Regex Shut();

    private Understood Line(Moment at, Meaning meaning)
    {
        var understood = Sure(at, meaning);
        if (meaning.Root is "reading" or "did" or "observed" && KnownTalk.Ear(setting.Flow.Language) is { } ear)
        {
            // Of what is seen a denial tells much: not boiling, not foaming any more. A deed that was not done is none.
            if (meaning.Root == "did" && ear.IsDenied(meaning.Words))
            {
                return new MeansNothing($"Heard as not so: '{meaning.Words}'. Nothing is taken. Say what is.");
            }

            if (BoilAndCoals.Instead(at, meaning.Kind, meaning.Words) is { } instead)
            {
                return new MeansUnsure(instead);
            }

            if (meaning.Kind == "did:spread-coals" && AskedPlainly.IsShovelled(meaning.Words))
            {
                return AskedPlainly.Asked("shovel", meaning.Words);
            }

            if (OfAnotherThing(meaning, ear) is { } other)
            {
                return new MeansNothing(other);
            }

            if (meaning.Kind == BoilStill && (ear.SaysGoesOn(meaning.Words) || (!ear.NamesBoil(meaning.Words) && StillSo().IsMatch(meaning.Words))))
            {
                return new MeansNothing($"'{meaning.Words}': does it boil, or is it still? Say 'rolling', 'simmering' or 'still'.");
            }

            // On these two a fire is left: whoever has not named the thing is asked.
            if (understood is MeansLine(var seen) && ((meaning.Kind == CoalsSpent && !ear.NamesCoals(meaning.Words)) || (meaning.Kind == BoilStill && !ear.NamesBoil(meaning.Words))))
            {
                return new MeansUnsure(seen);
            }

            if (meaning.Kind == Sweet && ear.IsNotSweet(meaning.Words))
            {
                return new MeansNothing(WhichSmell);
            }

            if (meaning.Root is not "did" && ear.IsOfBefore(meaning.Words, setting.Rig.Back is not null))
            {
                return new MeansNothing($"'{meaning.Words}' was before: say what stands there now.");
            }
        }

        var isUnreal = meaning.Root is "reading" or "did" or "observed" && KnownTalk.Ear(setting.Flow.Language) is { } heard
            && (heard.IsUnreal(meaning.Words) || (meaning.Root is not "reading" && meaning.Amount is null && heard.IsHalf(meaning.Words)));
        var isSure = !isUnreal && meaning.Share >= (meaning.Kind == Sweet ? SurelySweet : understood is MeansWord or MeansLine(Answer) ? BegunFrom : TakenFrom);
        return isSure || understood is MeansTalk or MeansNothing or MeansUnsure ? understood
            : understood is MeansPoured ? new MeansNothing(Pouring.HowMuch)
            : meaning.Kind == Sweet ? new MeansNothing(WhichSmell)
            : understood is MeansLine(var line) && line is not (Answer or Did { Name.Code: "leave" }) ? new MeansUnsure(line)
            : new MeansNothing($"Not sure what was meant by '{meaning.Words}'. Say it in other words{(understood is MeansWord(var word, _) ? $", or '{word}'" : "")}.");
    }

    private Understood Sure(Moment at, Meaning meaning)
    {
        var parts = meaning.Kind.Split(':');
        switch (parts[0])
        {
            case "did" or "added" when (meaning.Kind == "added" || parts[1] == DeedName.FillPan.Code) && KnownTalk.Ear(setting.Flow.Language)?.SaysOut(meaning.Words) == true:
                return new MeansNothing($"Nothing is taken as poured in. What is out shows in the depth: say 'depth …'{(setting.Rig.IsBatch ? ", or 'poured out' if all of it is" : "")}.");
            case "did" or "added" when (meaning.Kind == "added" || parts[1] == DeedName.FillPan.Code || parts[1] == DeedName.RefillTank.Code) && NotPoured.Says(meaning.Words):
                return new MeansNothing(NotPoured.PourIt);
            case "reading" when parts[1] == ReadingName.PanDepth.Code && setting.Rig.Back is not null && meaning.Amount is { } deep && PanNames.OfBack(meaning.Words):
                return Measured(deep.In(ReadingName.BackPanDepth.UnitIn(setting.Units)), measure => new Reading(at, ReadingName.BackPanDepth, measure));
            case "reading" when setting.Readings.Find(parts[1]) is { } name && meaning.Amount is { } amount:
                return Measured(amount.In(name.UnitIn(setting.Units)), measure => new Reading(at, name, measure));
            case "observed" when ObservationName.FromCode(parts[1]) is { } seen:
                return new MeansLine(new Observed(at, seen, parts[2]));
            case "did" when DeedName.FromCode(parts[1]) is { } deed:
                return Deed(at, deed, parts.Length > 2 ? parts[2] : null, deed.Pans.Count > 0 ? PanIn(meaning.Words) : null, meaning.Amount);
            case "added" when meaning.Amount is { } amount:
                var place = Added.Places.FirstOrDefault(place => meaning.Words.Split(' ').Contains(place));
                return Measured(amount.In(setting.Units.Preferred(Dimension.Volume)), measure => Placed(new(at, measure, Liquids.Sap), place, PanIn(meaning.Words)));
            case "hold" when KnownTalk.Ear(setting.Flow.Language)?.SaysNoMoreOfElse(meaning.Words) == true:
                return new MeansNothing($"'{meaning.Words}': nothing is taken. If no more wood goes in, say 'shutdown'.");
            case "hold" when !setting.Rig.IsBurner && KnownTalk.Ear(setting.Flow.Language) is { } ear && ear.MaySayWood(meaning.Words) && !ear.SaysNoMore(meaning.Words):
                return new MeansUnsure(new Did(at, DeedName.AddWood, null));
            case "hold" when KnownTalk.Ear(setting.Flow.Language)?.SaysOneMore(meaning.Words) == true:
                return new MeansNothing("Did wood go in, or goes no more in? Say 'wood' or 'shutdown'.");
            case "hold" when setting.Flow.Words.TryGetValue("hold wood", out var word):
                return new MeansWord(word, "");
            case "answer":
                return new MeansLine(new Answer(at, parts[1]));
            case "word" when parts[1] == "undo":
                return new MeansWord("undo", "");
            default:
                return new MeansTalk(meaning);
        }
    }

    /// <summary>The pan that the words name, on a rig that has two; null where they name none, or both.</summary>
    private string? PanIn(string words)
    {
        var named = setting.Rig.Back is null ? [] : Pans.All.Where(pan => words.Contains(pan + " pan", StringComparison.OrdinalIgnoreCase)).ToList();
        return named is [var one] ? one : null;
    }

    private static LineIn Placed(Added added, string? place, string? pan) => place switch
    {
        "pan" => added.IntoPan(added.At) with { Pan = pan },
        "tank" => added.IntoTank(added.At),
        _ => added,
    };

    private Understood Deed(Moment at, DeedName deed, string? liquid, string? pan, SpokenAmount? amount)
    {
        if (amount is null || deed.Kind is not { } kind)
        {
            return deed == DeedName.FillPan ? new MeansPoured(new(at, deed, null) { Is = liquid ?? Liquids.Sap, Pan = pan })
                : deed == DeedName.RefillTank || deed.WantsAmount ? new MeansNothing(Pouring.HowMuch) : new MeansLine(new Did(at, deed, null));
        }

        return Measured(
            amount.In(deed.Reads?.UnitIn(setting.Units) ?? setting.Units.Preferred(kind)),
            measure => liquid is null ? new Did(at, deed, measure) { Pan = pan } : new Did(at, deed, measure) { Is = liquid, Pan = pan });
    }

    private static Understood Measured((double Value, Unit Unit) amount, Func<Measure, LineIn> means) =>
        Measure.Of(amount.Value, amount.Unit) is { } measure ? new MeansLine(means(measure)) : new MeansNothing($"{Measure.Fault(amount.Value, amount.Unit)}.");
}

/// <summary>What the ear for talk made of a line.</summary>
/// <param name="Facts">What it understood, in the order said.</param>
/// <param name="IsWhole">Whether nothing was left over.</param>
/// <param name="Share">How sure the least sure of them is: a share of 1.</param>
internal sealed record TalkHeard(IReadOnlyList<Understood> Facts, bool IsWhole, double Share)
{
    /// <summary>Nothing was understood.</summary>
    public static readonly TalkHeard Nothing = new([], IsWhole: false, 0);

    /// <summary>The facts as one.</summary>
    public Understood? Understood => Facts switch
    {
        [] => null,
        [var one] => one,
        _ => new MeansSeveral(Facts),
    };
}
