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
    private readonly BareNumber _bare = new(setting);

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
            return Word(at, cleared, open) as MeansWord ?? (Understood?)Cry(cleared) ?? new MeansNothing(stray);
        }

        if (Supposition.Behind(said) is { } supposed)
        {
            // What would be a cry if it were so is no reckoning: what if the pan leaks.
            return Supposition.Read(supposed, at.Time, setting.Units) is null && Cry(supposed.TrimEnd('?', '!', ' ')) is not null
                ? new MeansTalk(new(AskOfDanger, null, 1, supposed))
                : new MeansWord(Supposition.Word, supposed);
        }

        if (Correction.Of(said) is { } corrected && Amount(at, corrected, open) is MeansLine && Cry(text) is null)
        {
            (said, text) = (corrected, corrected);
        }

        (said, text) = (Ladles.AsDraw(Pails.InVolume(said, setting), setting.Rig), Pails.InVolume(text, setting));

        // What is understood as it stands is taken so; whatever else is said is weighed, for dangers first.
        var understood = Word(at, said, open)
            ?? AskedAmount.Read(text, open, setting)
            ?? Plain(at, said, text, open)
            ?? (_talk.Asks(said) ? null : Told(at, said, text, open))
            ?? _talk.Term(text);
        return Sugar(understood is not (null or MeansNothing { IsLow: false, IsNoCry: false, IsPlain: false }) ? understood
            : Weighed(at, text, open, understood is MeansNothing { IsCertain: true }) ?? understood ?? _talk.PerhapsWood(at, text) ?? Lost(text, said, open));
    }

    /// <summary>What only tells, and is no question: every word of it is known.</summary>
    private Understood? Told(Moment at, string said, string text, Prompt? open) => Emptying.Understand(at, said, setting.Rig)
        ?? Pouring.Understand(at, said, setting.Rig, open?.Pour?.Liquid ?? Liquids.Sap)
        ?? _talk.TankEmpty(at, said)
        ?? (Cry(text) is null ? _talk.Relit(at, said) ?? (Understood?)NoSap(at, said) ?? Gone(at, said) : null)
        ?? (DeedWhereAsked.IsDrawn(open, setting) ? _talk.Drawn(at, text) : null)
        ?? Listed(at, said)
        ?? Amount(at, said, open);

    /// <summary>Lines that can hardly mean anything else by what they name, whatever the weights say; what is no cry by itself gives way to one.</summary>
    private Understood? Plain(Moment at, string said, string text, Prompt? open)
    {
        var isBurnerAsked = open is not null && setting.Flow.DeedOf(open.Step) == DeedName.ShutOff;
        return HalfSaid.BeforeCries(said)
            ?? BurnerWords.DoesNotShut(said, setting.Rig, isBurnerAsked)
            ?? HalfSaid.Falls(said, open, setting.Flow.Words.GetValueOrDefault("dry pan"))
            ?? ((AskedPlainly.Understand(said, setting.Rig)
                ?? BurnerWords.Understand(at, said, setting.Rig, isBurnerAsked, setting.Flow.Words.GetValueOrDefault("burner went out"))
                ?? HalfSaid.Understand(said)
                ?? BoilAndCoals.Boils(at, said)
                ?? (NotPoured.IsToCome(said) && !_talk.Asks(said) ? new MeansNothing(NotPoured.PourIt) { IsPlain = true } : null)) is { } plain && Cry(text) is null ? plain : null);
    }

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
        var facts = parts.Length < 2 ? [] : parts.Select(part => char.IsLetter(part.TrimStart()[..1].FirstOrDefault()) ? Amount(at, part.Trim(), null) : null).ToList();
        return facts.Count > 1 && facts.TrueForAll(fact => fact is MeansLine(Reading)) ? new(facts.OfType<Understood>().ToList()) : null;
    }

    /// <summary>A mark alone, or help in capitals or with a mark behind it: who shouts so wants no list of words.</summary>
    private static bool IsShouted(string text) =>
        text == "!" || (text.StartsWith("help", StringComparison.OrdinalIgnoreCase) && (text.Equals("HELP", StringComparison.Ordinal) || text[4..] is ['!', ..] marks && marks.Trim('!').Length == 0));

    /// <summary>A cry goes before everything that is not wholly and surely something else.</summary>
    private Understood? Weighed(Moment at, string text, Prompt? open, bool isCertain)
    {
        var talk = isCertain ? TalkHeard.Nothing : _talk.Hear(at, text, open);
        return Cry(text) is { } cry && !(talk.IsWhole && talk.Share >= (SaysFoamRises(talk, cry) ? SurelyRising : SurelyNoCry)) ? cry : talk.Understood;
    }

    /// <summary>Foam that rises is seen and told often, and has its own advice; only foam that goes over is an emergency.</summary>
    private static bool SaysFoamRises(TalkHeard talk, MeansCry cry) =>
        cry.Dangers is ["foam", ..] && talk.Facts.Any(fact => fact is MeansLine(Observed { Name.Code: "foam", Is: "rising" }));

    /// <summary>Who goes for a while is away, for as long as is said with it.</summary>
    private MeansTalk? Gone(Moment at, string said) => Errand.In(said) is (true, var back)
        ? (back.Length > 0 && _talk.Hear(at, "be " + back[int.Max(back.IndexOf("back", StringComparison.Ordinal), 0)..], null).Understood is MeansTalk { Meaning.Root: "away" } lasting ? lasting : new MeansTalk(new("away", null, 1, said)))
        : null;

    /// <summary>That no sap is left, and nothing else, is the tank's reading.</summary>
    private MeansLine? NoSap(Moment at, string said) => NothingLeft.In(said) == NothingLeft.Sap ? new(Empty(at)) : null;

    /// <summary>The tank, or what there is of sap where a rig has none, read as empty.</summary>
    public Reading Empty(Moment at) => new(at, ReadingName.TankVolume, new(0, ReadingName.TankVolume.UnitIn(setting.Units)));

    private MeansCry? Cry(string text) => setting.Flow.Ear.Value.Hear(text) is { } cry && !(IsFaint(cry.Hazards) && NeedleStands().IsMatch(text))
        ? new(IsFaint(cry.Hazards) && LevelStands().IsMatch(text) ? [.. cry.Hazards.Select(OfLevel)]
            : NamesBackPan(text) ? [.. cry.Hazards.Select(OfBackPan)]
            : DrawOff().IsMatch(text) ? [.. cry.Hazards.Select(OfDrawOff)]
            : NothingLeft.IsSapIn(text) ? [.. cry.Hazards.Select(OfEmptyTank).Distinct()]
            : cry.Hazards, cry.IsSure)
        : null;

    /// <summary>No float hangs where there is no sap.</summary>
    private static string OfEmptyTank(string danger) => danger == "float" ? "dry" : danger;

    private static bool IsFaint(IReadOnlyList<string> hazards) => hazards is ["faint", ..];

    /// <summary>A tank that does not move is no person: its float or its gauge stands.</summary>
    private string OfLevel(string danger) => danger == "faint" && setting.Flow.Dangers.Any(known => known.Code == "float") ? "float" : danger;

    /// <summary>A float does not hang at the draw-off: what is stuck there is the valve.</summary>
    private string OfDrawOff(string danger) => danger == "float" && setting.Flow.Dangers.Any(known => known.Code == "stuck") ? "stuck" : danger;

    /// <summary>A cry that names the pan behind is of that pan.</summary>
    private string OfBackPan(string danger) => danger == "dry" && setting.Flow.Dangers.Any(known => known.Code == "bare") ? "bare" : danger;

    private bool NamesBackPan(string text) => setting.Rig.Back is not null && BackPan().IsMatch(text);

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
            return new MeansNothing($"Look again, and say the number. Expected: {Expected(open)}.") { IsNoCry = true };
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

    private Understood? Amount(Moment at, string said, Prompt? open)
    {
        if (MeasureText.TryNumber(said, out var bare, out var behind))
        {
            return Bare(at, said, bare, behind, open);
        }

        if (NameThenNumber().Match(said) is not { Success: true } match
            || !MeasureText.TryNumber(match.Groups["amount"].Value, out var value, out var unitWord))
        {
            return null;
        }

        var name = Filler().Replace(match.Groups["name"].Value.Trim(), "").Trim();
        var unit = unitWord.Length == 0 ? null : UnitNames.FromWord(unitWord);
        if (unitWord.Length > 0 && unit is null)
        {
            return setting.Readings.Words.ContainsKey(name) || DeedName.Said.ContainsKey(name)
                ? new MeansNothing($"'{unitWord}' is no unit that is known here. Expected: {UnitNames.SpokenOf(Kind(name))}.") { IsCertain = _talk.IsStrange(unitWord) }
                : null;
        }

        if (setting.Rig.Back is not null && PanNames.IsFront(name))
        {
            name = "depth";
        }

        if (setting.Rig.Back is not null && PanNames.OfBack(name)
            && (unit is null || unit.Value.Kind() == Dimension.Length))
        {
            // Of two pans "back 2" is short for the depth of that one; "back 15" can be minutes, and is never guessed at.
            if (unit is null && open?.Ask != ReadingName.BackPanDepth.Code && UnitSystem.Length(new(value, ReadingName.BackPanDepth.UnitIn(setting.Units))) > setting.Rig.Back.FloodDepth)
            {
                return new MeansNothing($"'{said}' can be a depth or minutes. Of the pan say 'back pan {value:0.##} {ReadingName.BackPanDepth.UnitIn(setting.Units).Code()}'.");
            }

            name = "back pan";
        }

        if (setting.Readings.Words.TryGetValue(name, out var reading))
        {
            // Two percent sap: people say percent, and mean Brix.
            unit = unit == Unit.Percent && reading.Kind == Dimension.Sugar ? Unit.Brix : unit;
            return Held(value, unit ?? Assumed(reading, open), measure => measure.Unit.Kind() == reading.Kind
                ? new MeansLine(new Reading(at, reading, measure))
                : OtherKind(at, reading, measure, said));
        }

        if (DeedName.Said.TryGetValue(name, out var deed) && deed.Kind is { } kind)
        {
            var assumed = deed.Reads?.UnitIn(setting.Units) ?? setting.Units.Preferred(kind);
            return Held(value, unit ?? assumed, measure => measure.Unit.Kind() == kind
                ? new MeansLine(new Did(at, deed, measure))
                : new MeansNothing($"'{said}': {deed.Spoken} wants {UnitNames.SpokenOf(kind)}."));
        }

        return null;
    }

    /// <summary>What an amount means, where its quantity can hold it; else why not.</summary>
    private static Understood Held(double value, Unit unit, Func<Measure, Understood> means) =>
        Measure.Of(value, unit) is { } measure ? means(measure) : new MeansNothing($"{Measure.Fault(value, unit)}.");

    /// <summary><c>pan 12 Brix</c> and <c>draw 2 qt</c>: the unit says which of two things is meant.</summary>
    private static Understood OtherKind(Moment at, ReadingName name, Measure measure, string said) => (name.Code, measure.Unit.Kind()) switch
    {
        ("pan-depth", Dimension.Sugar) => new MeansLine(new Reading(at, ReadingName.PanBrix, measure)),
        ("draw-temperature", Dimension.Sugar) => new MeansLine(new Reading(at, ReadingName.DrawBrix, measure)),
        ("draw-temperature", Dimension.Volume) => new MeansLine(new Did(at, DeedName.CloseDraw, measure)),
        _ => new MeansNothing($"'{said}': {name.Spoken} is read in {UnitNames.SpokenOf(name.Kind)}, not in {measure.Unit.Shown()}."),
    };

    private Understood Bare(Moment at, string said, double value, string behind, Prompt? open)
    {
        var asked = open is null ? null : setting.Readings.Find(open.Ask);
        var unit = behind.Length == 0 ? null : UnitNames.FromWord(behind);
        if (behind.Length > 0 && unit is null)
        {
            // "7 lb wood", "22 gal tank": the name behind the amount.
            return AmountThenName().Match(said) is { Success: true } match
                && Amount(at, $"{match.Groups["name"].Value} {match.Groups["amount"].Value}", open) is { } turned
                ? turned
                : new MeansNothing($"'{behind}' is no unit that is known here. Expected: {Expected(open)}.") { IsCertain = _talk.IsStrange(behind) };
        }

        if (unit is null && _bare.Of(value, open) is { } meant)
        {
            return Held(value, meant.UnitIn(setting.Units), measure => new MeansLine(new Reading(at, meant, measure)));
        }

        if (asked is not null && (unit is null || unit.Value.Kind() == asked.Kind))
        {
            return Held(value, unit ?? Assumed(asked, open), measure => new MeansLine(new Reading(at, asked, measure)));
        }

        return unit is null
            ? new MeansNothing($"'{said}' of what? Say it with its name, like 'tank 22', 'depth 1 1/2' or 'draw 217.4'.")
            : Held(value, unit.Value, measure => ByUnit(at, said, measure, open));
    }

    private Understood ByUnit(Moment at, string said, Measure measure, Prompt? open)
    {
        var name = measure.Unit.Kind() switch
        {
            Dimension.Temperature => ReadingName.DrawTemperature,
            Dimension.Length => ReadingName.PanDepth,
            Dimension.Sugar => measure.Value >= 40 ? ReadingName.HydrometerBrix : ReadingName.SapBrix,
            _ => null,
        };
        // Of one pan nothing is measured with a ruler but its depth, whatever is asked.
        if (name is not null && (open is null || setting.Readings.Find(open.Ask) is null || (name == ReadingName.PanDepth && setting.Rig.Back is null)))
        {
            // A ruler stands in a tank as well.
            return open?.Ask == ReadingName.TankVolume.Code ? new MeansUnsure(new Reading(at, name, measure)) : new MeansLine(new Reading(at, name, measure));
        }

        if (open is not null && setting.Readings.Find(open.Ask) is { } asked)
        {
            return new MeansNothing(
                $"'{said}' is understood as {measure}; {asked.Spoken} is asked. Expected: {Expected(open)}. Anything else wants its name before it, like 'tank 12 gal'.");
        }

        return measure.Unit.Kind() switch
        {
            Dimension.Mass => new MeansLine(new Did(at, DeedName.AddWood, measure)),
            Dimension.Volume => new MeansNothing($"'{said}' of what? Say 'tank {measure}', 'drew {measure}', 'poured {measure}' or 'refill {measure}'."),
            _ => new MeansNothing($"'{said}' is understood as {measure}. Expected: {Expected(open)}."),
        };
    }

    private MeansNothing Lost(string text, string said, Prompt? open)
    {
        var near = _talk.Near(text);
        return new($"'{said}' is not understood. {(near.Count > 0 ? $"Perhaps {string.Join(" or ", near.Select(one => $"'{one}'"))}? " : "")}Expected: {Expected(open)}. 'help' lists the words.");
    }

    private static string Expected(Prompt? open)
    {
        if (open is null)
        {
            return "a reading like 'tank 22', something done like 'wood', or something seen like 'boil rolling'";
        }

        if (open.Choices is { } choices)
        {
            return string.Join(", ", choices);
        }

        return open.Ask == Prompt.Confirm || open.Unit is not { } unit
            ? "yes, no, skip or later"
            : $"a number in {UnitNames.SpokenOf(unit.Kind())}, skip or later";
    }

    private Unit Assumed(ReadingName name, Prompt? open) =>
        open is { Unit: { } unit } && open.Ask == name.Code ? unit : name.UnitIn(setting.Units);

    private Dimension Kind(string name) =>
        setting.Readings.Words.GetValueOrDefault(name)?.Kind ?? DeedName.Said.GetValueOrDefault(name)?.Kind ?? Dimension.Volume;

    /// <summary>I'm out of sap, we are all out of sap: the words of a danger with who says it before them.</summary>
    [GeneratedRegex(@"\b(back|rear|flue) ?pan\b|\bpan (behind|in the back)\b|\b(back|rear) (is|runs|goes|bare|dry|low)\b", RegexOptions.IgnoreCase)]
    private static partial Regex BackPan();

    /// <summary>A level that stands still; whoever else is named beside it is not this.</summary>
    [GeneratedRegex(@"^(?:the |my |head |sap |and |but |now |hey )*(?:tank|tank level|tank gauge|gauge|level|float|sight glass|sap)(?:'s)? .*\b(?:mov|budg|chang|drop|fall|going)\w*(?: (?:down|at all|any ?more|now|either))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LevelStands();

    /// <summary>The same of an instrument.</summary>
    [GeneratedRegex(@"^(?:the |my |and |but |now |hey )*(?:thermometer|needle|dial|temp|temperature|hydrometer|clock|screen)(?:'s)? .*\b(?:mov|budg|chang|going)\w*(?: (?:up|down|at all|any ?more|now|either))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NeedleStands();

    /// <summary>The draw-off and its valve, where neither float nor feed is spoken of.</summary>
    [GeneratedRegex(@"^(?!.*\b(?:float|feed)\b).*(?:\bdraw[ -]?off\b|\b(?:draw|syrup) (?:valve|tap)\b|\bspigot\b|\bfaucet\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DrawOff();

    /// <summary>What stands before a word without changing it: pretty low.</summary>
    [GeneratedRegex(@"^(?:(?:it'?s|it is|pretty|very|really|real|so|too|quite|kinda|getting|rather|awful|awfully) )+", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Adverb();

    [GeneratedRegex(@"^(?:i'?m|i am|we'?re|we are|it'?s|it is|the|all|now|and) (?:all )?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Subject();

    /// <summary>What answers how much a pour was that nobody measured: a volume with its unit, alone or in a sentence; null where the words say something else.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="text">The words.</param>
    /// <param name="pour">The pour.</param>
    public Did? Measured(Moment at, string text, Did pour)
    {
        var said = Pails.InVolume(Spaces().Replace(text.Trim(), " ").TrimEnd('.', '!', ','), setting);
        if (!said.Any(char.IsLetter) || NotPoured.Says(said) || Pouring.Understand(at, said, setting.Rig) is MeansNothing or MeansPoured)
        {
            return null;
        }

        return (Pouring.Understand(at, said, setting.Rig) ?? Pouring.Understand(at, "poured " + said, setting.Rig)) is MeansLine(Did { Name.Code: "fill-pan", Measure: not null } did)
            ? did with { Is = NamesLiquid().IsMatch(said) ? did.Is : pour.Is, Pan = did.Pan ?? pour.Pan }
            : null;
    }

    [GeneratedRegex(@"\b(sap|water)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NamesLiquid();

    [GeneratedRegex(@"^(?:yes|yep|yeah|yup|ya|ok|okay)(?:,| and|,? the|,? it'?s)? (?=\w)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex YesBefore();

    [GeneratedRegex(@"^(?:(?:it'?s|about|still|all|the) )*(?:same|unchanged|same as (?:before|last time|last))$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Same();

    [GeneratedRegex(@"^(?:(?:it'?s|still|slowly|just) )*(?:climbing|going up|coming up|creeping up|up|higher|almost there)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Climbing();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^(?<name>[a-zA-Z][a-zA-Z \-]*?)\s*[=:+]?\s*(?<amount>[-−]?[0-9.,¼½¾⅛⅜⅝⅞⅓⅔].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex NameThenNumber();

    [GeneratedRegex(@"^(?<amount>[0-9.,¼½¾⅛⅜⅝⅞⅓⅔ /\-]+\s*[a-zA-Z°""'/%]+)\s+(?:of |in the |in )?(?<name>[a-zA-Z][a-zA-Z ]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex AmountThenName();

    [GeneratedRegex(@"\b(is|at|was|now|reads|shows|has)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Filler();
}
