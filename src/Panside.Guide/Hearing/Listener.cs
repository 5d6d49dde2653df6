using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Understands what a person types, with the open prompt in mind: a bare number answers what is asked.</summary>
public sealed partial class Listener(Setting setting)
{
    private const int LongestText = 400;

    /// <summary>What is so surely a fact, a deed or a question is no cry. Set by the counts of docs/hearing.md, out of 0.9, 0.97 and 0.99.</summary>
    private const double SurelyNoCry = 0.99;

    /// <summary>The same of foam that rises.</summary>
    private const double SurelyRising = 0.9;

    /// <summary>A question about a danger that is not there.</summary>
    private const string AskOfDanger = "ask:danger";

    private readonly TalkListener _talk = new(setting);
    private readonly CryListener _cries = new(setting);
    private readonly PlainlySaid _plain = new(setting);
    private readonly NumberListener _numbers = new(setting);

    /// <summary>What the text means.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="text">The text.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public Understood Understand(Moment at, string text, Prompt? open)
    {
        var said = Spaces().Replace(text.Trim(), " ").TrimEnd('.', '!', ',');
        if (IsShouted(text.Trim()))
        {
            said = "!";
        }

        if (said.Length is 0 or > LongestText)
        {
            return new MeansNothing(said.Length == 0 ? "Nothing was typed." : "That is too long to be a reading: use 'note' and keep it short.");
        }

        if (said.StartsWith("note ", StringComparison.OrdinalIgnoreCase) || said.Equals("note", StringComparison.OrdinalIgnoreCase))
        {
            return new MeansWord("note", said.Length > 5 ? said[5..] : "");
        }

        if (StrayMarks.Fault(text) is { } stray)
        {
            var cleared = StrayMarks.Without(text);
            return Word(at, cleared, open) as MeansWord ?? (Understood?)_cries.Hear(cleared) ?? new MeansNothing(stray);
        }

        if (setting.Rig.Back is not null && BothPans.IsFrontStill(said))
        {
            return new MeansNothing("And the back pan? Say the stronger boil of the two.");
        }

        if (AskedThenSaid.Behind(said) is { } told && _cries.Hear(told) is { } cried)
        {
            return cried;
        }

        if (Supposition.Behind(said) is { } supposed)
        {
            // What would be a cry if it were so is no reckoning: what if the pan leaks.
            return Supposition.Read(supposed, at.Time, setting.Units) is null && _cries.Hear(supposed.TrimEnd('?', '!', ' ')) is not null
                ? new MeansTalk(new(AskOfDanger, null, 1, supposed))
                : new MeansWord(Supposition.Word, supposed);
        }

        if (Correction.Of(said) is { } corrected && _numbers.Hear(at, corrected, open) is MeansLine && _cries.Hear(text) is null)
        {
            (said, text) = (corrected, corrected);
        }

        (said, text) = (LooseAmounts.Plain(said), LooseAmounts.Plain(text));
        (said, text) = (Ladles.AsDraw(Pails.InVolume(said, setting), setting.Rig), Pails.InVolume(text, setting));

        if (YesBefore().Match(said) is { Success: true } yes && PouredFirst().IsMatch(said[yes.Length..]))
        {
            (said, text) = (said[yes.Length..], said[yes.Length..]);
        }

        // What is understood as it stands is taken so; whatever else is said is weighed, for dangers first.
        var understood = Word(at, said, open)
            ?? AskedAmount.Read(text, open, setting)
            ?? _plain.Understand(at, said, text, open)
            ?? BothPans.Read(said, setting.Rig, part => _numbers.Hear(at, part, null) as MeansLine ?? _talk.Hear(at, part, null).Understood)
            ?? (_talk.Asks(said) ? null : Told(at, said, text, open))
            ?? _talk.Term(text);
        var heard = Sugar(understood is not (null or MeansNothing { IsLow: false, IsNoCry: false, IsPlain: false }) ? understood
            : Weighed(at, text, open, understood is MeansNothing { IsCertain: true }) ?? understood ?? _talk.PerhapsWood(at, text) ?? (Understood?)Chatty(at, said, open) ?? (Understood?)Parts(at, said) ?? Lost(text, said, open));
        return IsYes(heard) && ChattyYes().IsMatch(said) && Holds().IsMatch(said) ? new MeansNothing("Not yet? Say 'later'; or 'yes' once it is so.") : heard;
    }

    /// <summary>What only tells, and is no question: every word of it is known.</summary>
    private Understood? Told(Moment at, string said, string text, Prompt? open) => Emptying.Understand(at, said, setting.Rig, open is not null && setting.Flow.DeedOf(open.Step) == DeedName.EmptyPan)
        ?? Pouring.Understand(at, said, setting.Rig, open?.Pour?.Liquid ?? Liquids.Sap)
        ?? _talk.TankEmpty(at, said)
        ?? (_cries.Hear(text) is null ? _talk.Relit(at, said) ?? (Understood?)NoSap(at, said) ?? _talk.Gone(at, said) : null)
        ?? SapLeft.Read(at, said, setting.Units)
        ?? Stoking.Understand(at, said, setting.Rig)
        ?? (open is not null && setting.Flow.DeedOf(open.Step) == DeedName.AddWood ? null : Stoking.Perhaps(at, said, setting.Rig))
        ?? (DeedWhereAsked.IsDrawn(open, setting) ? _talk.Drawn(at, text) : null)
        ?? Listed(at, said)
        ?? _numbers.Hear(at, said, open);

    /// <summary>Without a hydrometer sugar as high as a syrup's is read by the refractometer, of the draw-off side.</summary>
    private Understood Sugar(Understood understood) => setting.IsThere(ReadingName.HydrometerBrix.Code) || !setting.IsThere(ReadingName.DrawBrix.Code) ? understood : understood switch
    {
        MeansLine(Reading { Name.Code: "hydrometer-brix" } read) => new MeansLine(read with { Name = ReadingName.DrawBrix }),
        MeansUnsure(Reading { Name.Code: "hydrometer-brix" } read) => new MeansUnsure(read with { Name = ReadingName.DrawBrix }),
        MeansSeveral(var facts) => new MeansSeveral([.. facts.Select(Sugar)]),
        _ => understood,
    };

    /// <summary>Readings one after the other, <c>tank 46, back 2, front 1.5</c>: each with its name. Null where one of them is anything else.</summary>
    private MeansSeveral? Listed(Moment at, string said)
    {
        var parts = said.Split(", ");
        var facts = parts.Length < 2 ? [] : parts.Select(part => char.IsLetter(part.TrimStart()[..1].FirstOrDefault()) ? _numbers.Hear(at, part.Trim(), null) : null).ToList();
        return facts.Count > 1 && facts.TrueForAll(fact => fact is MeansLine(Reading)) ? new(facts.OfType<Understood>().ToList()) : null;
    }

    /// <summary>A mark alone, or help in capitals or with a mark behind it: who shouts so wants no list of words.</summary>
    private static bool IsShouted(string text) =>
        text == "!" || (text.StartsWith("help", StringComparison.OrdinalIgnoreCase) && (text.Equals("HELP", StringComparison.Ordinal) || text[4..] is ['!', ..] marks && marks.Trim('!').Length == 0));

    /// <summary>A cry goes before everything that is not wholly and surely something else.</summary>
    private Understood? Weighed(Moment at, string text, Prompt? open, bool isCertain)
    {
        var talk = isCertain ? TalkHeard.Nothing : _talk.Hear(at, text, open);
        return _cries.Hear(text) is { } cry && !(talk.IsWhole && talk.Share >= (SaysFoamRises(talk, cry) ? SurelyRising : SurelyNoCry)) ? cry : talk.Understood;
    }

    /// <summary>Foam that rises is seen and told often, and has its own advice; only foam that goes over is an emergency.</summary>
    private static bool SaysFoamRises(TalkHeard talk, MeansCry cry) =>
        cry.Dangers is ["foam", ..] && talk.Facts.Any(fact => fact is MeansLine(Observed { Name.Code: "foam", Is: "rising" }));

    /// <summary>That no sap is left, and nothing else, is the tank's reading.</summary>
    private MeansLine? NoSap(Moment at, string said) => NothingLeft.In(said) == NothingLeft.Sap ? new(Empty(at)) : null;

    /// <summary>The tank, or what there is of sap where a rig has none, read as empty.</summary>
    public Reading Empty(Moment at) => new(at, ReadingName.TankVolume, new(0, ReadingName.TankVolume.UnitIn(setting.Units)));

    private Understood? Word(Moment at, string said, Prompt? open)
    {
        if (open is not null && ObservationName.FromCode(open.Ask) is { } asked
            && asked.States.FirstOrDefault(state => state.Equals(said, StringComparison.OrdinalIgnoreCase)) is { } state)
        {
            return new MeansLine(new Observed(at, asked, state));
        }

        if ((SeenWhereAsked.Read(at, said, open) ?? DeedWhereAsked.Read(at, said, open, setting) ?? TankShare.Read(at, said, open, setting)) is { } there)
        {
            return there;
        }

        if (open?.Ask == ReadingName.DrawTemperature.Code && Climbing().IsMatch(said))
        {
            return new MeansNothing("The thermometer? Say what it shows. The foam? Say 'foam rising'.") { IsNoCry = true };
        }

        if (open is not null && setting.Readings.Find(open.Ask) is not null && Same().IsMatch(said))
        {
            return new MeansNothing($"Look again, and say the number. Expected: {AskedFor.Expected(open)}.") { IsNoCry = true };
        }

        // Yes, wood: what is told behind it is what counts.
        if (YesBefore().Match(said) is { Success: true } yes && Word(at, said[yes.Length..], open) is MeansLine { Line: Did or Observed or Answer { Word: AnswerWords.Yes } } told)
        {
            return told;
        }

        var step = open is null ? null : setting.Flow.Steps.GetValueOrDefault(open.Step);
        if (step is not null && step.MeansYes.Contains(said, StringComparer.OrdinalIgnoreCase))
        {
            return new MeansLine(new Answer(at, AnswerWords.Yes));
        }

        if (setting.Rig.Feed != Feed.ByHand && FeedFound.Is(said))
        {
            return step?.MeansYes.Contains(FeedFound.Open) == true ? new MeansLine(new Answer(at, AnswerWords.Yes)) : new MeansTalk(new("feed-found", null, 1, said));
        }

        if (step is not null && (step.MeansNo.Contains(said, StringComparer.OrdinalIgnoreCase) || (NothingLeft.In(said) is { } none && step.MeansNo.Contains(none))))
        {
            return new MeansLine(new Answer(at, AnswerWords.No));
        }

        // Behind the first page of a danger sap is no longer what is asked: who has none is not sent back to that page.
        if ((open?.Ask == ReadingName.TankVolume.Code && NothingLeft.IsNone(said))
            || (step is { Phase.IsEmergency: true, Ask: Prompt.Confirm } && setting.Flow.DangerAt(step.Id) is null && NothingLeft.In(said) == NothingLeft.Sap))
        {
            return new MeansLine(Empty(at));
        }

        // Low, where the depth is asked, is the pan; but the word alone may be the foam's, which was asked a moment ago.
        if (open?.Ask == ReadingName.PanDepth.Code && setting.Flow.Words.TryGetValue("pan " + Adverb().Replace(said, ""), out var low))
        {
            return said.Equals("low", StringComparison.OrdinalIgnoreCase)
                ? new MeansNothing("The pan, or the foam? Pan: pour sap in and say its depth. Foam: 'foam low'.") { IsLow = true }
                : new MeansWord(low, "");
        }

        if (said.Length == 2 && UnitNames.FromWord(said) is { } alone && alone is Unit.Millimeter or Unit.Centimeter && open?.Ask is Prompt.Confirm)
        {
            return new MeansNothing($"'{said}' is a unit alone. Say the number with it, like '1.5 {alone.Code()}'.") { IsCertain = true };
        }

        if (open?.Ask == Prompt.Confirm && NobodyHelps().IsMatch(said))
        {
            return new MeansLine(new Answer(at, AnswerWords.No));
        }

        if (Vocabulary.Answers.TryGetValue(said, out var answer))
        {
            return new MeansLine(new Answer(at, answer));
        }

        if (setting.Flow.Words.TryGetValue(said, out var word) && (setting.IsOfThisRig(word) || setting.Flow.Dangers.Any(danger => danger.Code == word)))
        {
            return new MeansWord(word, "");
        }

        if (setting.Flow.Words.TryGetValue(Subject().Replace(said, ""), out var danger) && setting.Flow.Dangers.Any(known => known.Code == danger))
        {
            return new MeansWord(danger, "");
        }

        if (ObservationName.Said.TryGetValue(said, out var seen))
        {
            return new MeansLine(new Observed(at, seen.Name, seen.State));
        }

        if (Vocabulary.Own.TryGetValue(said, out var own))
        {
            return new MeansWord(own, "");
        }

        return !DeedName.Said.TryGetValue(said, out var deed) ? null
            : deed == DeedName.RefillTank ? new MeansNothing("How much? Say 'refill 10 gal'; or read the tank: 'tank 22'.")
            : deed == DeedName.FillPan ? new MeansPoured(new(at, deed, null))
            : new MeansLine(new Did(at, deed, null));
    }

    /// <summary>What is plain between the commas of a line that is not understood as a whole: wood in, pan 1 3/8, kids are screaming. Null where nothing is.</summary>
    private MeansSeveral? Parts(Moment at, string said)
    {
        var parts = said.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var facts = parts.Length < 2 || said.Contains('?', StringComparison.Ordinal) ? []
            : parts.Where(part => char.IsLetter(part[0])).Select(part => Word(at, part, null) ?? _numbers.Hear(at, part, null)).Where(part => part is MeansLine(Reading or Observed or Did)).OfType<Understood>().ToList();
        return facts.Count > 0 ? new(facts) : null;
    }

    /// <summary>A yes or a no with talk behind it that means nothing here: yup, boiled Thursday. Where it takes the word back, or puts it off, it is none.</summary>
    private static MeansLine? Chatty(Moment at, string said, Prompt? open) => open?.Ask != Prompt.Confirm || said.Contains('?', StringComparison.Ordinal) || said.Count(letter => letter == ' ') > LongestChat ? null
        : ChattyYes().IsMatch(said) && !Holds().IsMatch(said) ? new(new Answer(at, AnswerWords.Yes))
        : ChattyNo().IsMatch(said) && !Holds().IsMatch(said) ? new(new Answer(at, AnswerWords.No))
        : null;

    /// <summary>Whether it was taken for a yes, and for nothing besides that counts.</summary>
    private static bool IsYes(Understood heard) => heard is MeansLine(Answer { Word: AnswerWords.Yes })
        || (heard is MeansSeveral([MeansLine(Answer { Word: AnswerWords.Yes }), ..] facts) && facts.All(fact => fact is MeansLine(Answer) or MeansNothing));

    /// <summary>In gaps between words: longer talk is of something else.</summary>
    private const int LongestChat = 7;

    [GeneratedRegex(@"^(?:yes|yep|yeah|yup|ya|aye)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ChattyYes();

    [GeneratedRegex(@"^(?:no|nope|nah)\b[, ]+(?!worries|problem|idea|kidding|way|wonder|clue|matter|doubt|need|more|longer|sign|sap|wood|fire|foam|smell|smoke|change)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ChattyNo();

    [GeneratedRegex(@"\b(?:but|except|if|until|till|unless|yet|almost|nearly|soon|not|n't|\w+n't|never|when|after|before|in a|wait|hold|maybe|think|guess|no|yes|will|gonna|going to)\b(?<!^.{0,4})", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Holds();

    private MeansNothing Lost(string text, string said, Prompt? open)
    {
        var near = _talk.Near(text);
        return new($"'{said}' is not understood. {(near.Count > 0 ? $"Perhaps {string.Join(" or ", near.Select(one => $"'{one}'"))}? " : "")}Expected: {AskedFor.Expected(open)}. 'help' lists the words.");
    }

    /// <summary>What stands before a word without changing it: pretty low.</summary>
    [GeneratedRegex(@"^(?:(?:it'?s|it is|pretty|very|really|real|so|too|quite|kinda|getting|rather|awful|awfully) )+", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Adverb();

    /// <summary>I'm out of sap, we are all out of sap: the words of a danger with who says it before them.</summary>
    [GeneratedRegex(@"^(?:i'?m|i am|we'?re|we are|it'?s|it is|the|all|now|and) (?:all )?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Subject();

    /// <summary>What answers how much a pour was that nobody measured: a volume with its unit, alone or in a sentence; null where the words say something else.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="text">The words.</param>
    /// <param name="pour">The pour.</param>
    public Did? Measured(Moment at, string text, Did pour)
    {
        var said = Pails.InVolume(Spaces().Replace(text.Trim(), " ").TrimEnd('.', '!', ','), setting);
        if (!OfVolume().IsMatch(said) || NotPoured.Says(said) || Pouring.Understand(at, said, setting.Rig) is MeansNothing or MeansPoured)
        {
            return null;
        }

        return (Pouring.Understand(at, said, setting.Rig) ?? Pouring.Understand(at, "poured " + said, setting.Rig)) is MeansLine(Did { Name.Code: "fill-pan", Measure: not null } did)
            ? did with { Is = NamesLiquid().IsMatch(said) ? did.Is : pour.Is, Pan = did.Pan ?? pour.Pan }
            : null;
    }

    /// <summary>A volume with its unit: a number alone, or of the pan, is its depth.</summary>
    [GeneratedRegex(@"(?:\b|[0-9])(?:gal|gals|gallons?|qts?|quarts?|pts?|pints?|cups?|l|ls|lit(?:er|re)s?|ml|milliliters?|pails?|buckets?)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OfVolume();

    [GeneratedRegex(@"\b(sap|water)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NamesLiquid();

    [GeneratedRegex(@"^(?:yes|yep|yeah|yup|ya|ok|okay)(?:,| and|,? the|,? it'?s)? (?=\w)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex YesBefore();

    [GeneratedRegex(@"^(?:(?:it'?s|about|still|all|the) )*(?:same|unchanged|same as (?:before|last time|last))$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Same();

    [GeneratedRegex(@"^(?:(?:it'?s|still|slowly|just) )*(?:climbing|going up|coming up|creeping up|up|higher|almost there)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Climbing();

    /// <summary>Who is alone has not done what wants two.</summary>
    [GeneratedRegex(@"^(?:(?:there'?s|there is|no|but|sorry) )*(?:nobody|no ?one)(?:'?s)? (?:(?:is|else|here|around|home) )*(?:here|around|home|to help)(?: (?:to help|to help me|to help me lift(?: it)?|to help with it|to lift it|with me|me|me lift(?: it)?))?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NobodyHelps();

    /// <summary>Yes, poured 2 gal: what is told behind the yes is what counts.</summary>
    [GeneratedRegex(@"^(?:i |we |just )*(?:poured|dumped|added|tipped) ", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex PouredFirst();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
