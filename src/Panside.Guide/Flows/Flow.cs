using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text;
using Panside.Guide.Hearing.Cries;
using Panside.Guide.Lines;

namespace Panside.Guide.Flows;

/// <summary>A procedure as its file describes it, checked. Everything that the operator is walked through stands here.</summary>
public sealed record Flow
{
    /// <summary>The step that stands for the end of every flow.</summary>
    public const string End = "over";

    /// <summary>The target that leads back to where a side trip began.</summary>
    public const string Return = "return";

    /// <summary>The target that ends the session as left: never safe, and only out of an emergency.</summary>
    public const string LeftAlone = "left-alone";

    /// <summary>The condition without which no step may lead to the end.</summary>
    public const string Gate = "clear-to-leave";

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The version of it that its file tells.</summary>
    public int Version { get; init; } = 1;

    /// <summary>SHA-256 of the text, the first 16 hexadecimal digits.</summary>
    public required string Hash { get; init; }

    /// <summary>The phases in order.</summary>
    public required IReadOnlyList<Phase> Phases { get; init; }

    /// <summary>The first step.</summary>
    public required string Start { get; init; }

    /// <summary>What can go wrong, the gravest first: the one order of dangers.</summary>
    public required IReadOnlyList<Danger> Dangers { get; init; }

    /// <summary>What leads away from any step, after the dangers.</summary>
    public required IReadOnlyList<Passage> Anywhere { get; init; }

    /// <summary>Questions that come back at an interval while a step rests.</summary>
    public required IReadOnlyList<Watch> Watches { get; init; }

    /// <summary>When to say what is to be done.</summary>
    public required IReadOnlyList<AdviceRule> Advices { get; init; }

    /// <summary>What counts most, in order of precedence: the first that holds and is known is the one large figure of a screen.</summary>
    public required IReadOnlyList<CountRule> Counts { get; init; }

    /// <summary>Words that may be typed, in the file's order: what is wanted first of all stands first.</summary>
    public required IReadOnlyList<string> OwnWords { get; init; }

    /// <summary>Each way to say one of them, with the word that it stands for.</summary>
    public required FrozenDictionary<string, string> Words { get; init; }

    /// <summary>The code of the language that it is spoken in: <c>en</c>.</summary>
    public required string Language { get; init; }

    /// <summary>Hears what is cried out, in the flow's language, with the cries that it adds.</summary>
    public required Lazy<CryEar> Ear { get; init; }

    /// <summary>What can be read off an instrument.</summary>
    public required KnownReadings Readings { get; init; }

    /// <summary>What is said once, at the beginning.</summary>
    public required string Opening { get; init; }

    /// <summary>What is to be done where it does not clear by waiting: the first whose facts hold.</summary>
    public IReadOnlyList<ClearingRule> Clearing { get; init; } = [];

    /// <summary>The times of the procedure.</summary>
    public FlowValues Values { get; init; } = FlowValues.Usual;

    /// <summary>The steps by id.</summary>
    public required FrozenDictionary<string, Step> Steps { get; init; }

    /// <summary>The phase of a step.</summary>
    public Phase PhaseOf(string step) => Steps[step].Phase;

    /// <summary>What tells the text of one flow from another's: the first 16 digits of its SHA-256, in hexadecimal.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];

    /// <summary>The deed that a step or a watch waits for; null where it waits for none.</summary>
    public DeedName? DeedOf(string id) => Steps.TryGetValue(id, out var step) ? step.Deed : Watches.FirstOrDefault(watch => watch.Id == id)?.Deed;

    /// <summary>Whether a watch asks to pour in what takes a dying boil off the boil.</summary>
    public bool IsPourToStill(string id) => Watches.Any(watch => watch.Id == id && watch.Advise == "cool-pan" && watch.Deed == DeedName.FillPan);

    /// <summary>The ways into the emergencies from anywhere. They come before any way of a step outside of them.</summary>
    public IEnumerable<Passage> DangerWays => Dangers.SelectMany(danger => danger.Ways);

    /// <summary>The ways from a step without those of dangers, in the order in which they are tried: its own, its phase's, those from anywhere.</summary>
    public IEnumerable<Passage> OrdinaryWays(Step step) => step.Passages.Concat(step.Phase.On).Concat(Anywhere);

    /// <summary>The danger that a step is the first step of; null where it is none's.</summary>
    public Danger? DangerAt(string step) => Dangers.FirstOrDefault(danger => danger.Go == step);

    /// <summary>How grave the danger is that a step is the first step of: 0 for the gravest; one more than all for any other step.</summary>
    public int RankOf(string step)
    {
        for (var rank = 0; rank < Dangers.Count; rank++)
        {
            if (Dangers[rank].Go == step)
            {
                return rank;
            }
        }

        return Dangers.Count;
    }
}

/// <summary>Something that can go wrong, and the first step of what is done about it.</summary>
/// <param name="Code">Its name, which is also the word that one types for it.</param>
/// <param name="Go">The first step of its emergency.</param>
/// <param name="Cries">Sentences that are heard as it, beside those that the program knows.</param>
/// <param name="Ways">What leads there from anywhere: the word, what is read or seen, and what holds.</param>
/// <param name="While">The fact that brings it back while it holds; null where none does.</param>
/// <param name="Given">Facts that must hold as well for it to come back.</param>
/// <param name="Again">How long after it was gone through it comes back.</param>
/// <param name="IsListed">Whether its word stands in the list of emergencies.</param>
/// <param name="IsList">Whether it is the list itself: something is wrong, and nobody has said what.</param>
public sealed record Danger(
    string Code,
    string Go,
    IReadOnlyList<string> Cries,
    IReadOnlyList<Passage> Ways,
    string? While,
    IReadOnlyList<string> Given,
    TimeSpan Again,
    bool IsListed,
    bool IsList)
{
    /// <summary>What a rig must have for its word to stand in that list.</summary>
    public IReadOnlyList<string> ListedWhere { get; init; } = [];

    /// <summary>The trigger by which it comes back.</summary>
    public string Back => "danger " + Code;

    /// <summary>Line and column in the file.</summary>
    public (int Line, int Column) Place { get; init; } = (1, 1);
}

/// <summary>A part of the procedure.</summary>
/// <param name="Code">As in the stream: <c>start-up</c>.</param>
/// <param name="Kind">Which of <see cref="Kinds"/> it is; null for one that is like none of them.</param>
/// <param name="IsSideTrip">Whether its steps lead back to where it was entered from.</param>
/// <param name="On">What leads away from any of its steps.</param>
public sealed record Phase(string Code, string? Kind, bool IsSideTrip, IReadOnlyList<Passage> On)
{
    /// <summary>The code of the phase that dangers lead to.</summary>
    public const string EmergencyCode = "emergency";

    /// <summary>What a phase can be to the program, whatever a flow calls it.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["start-up", "steady-boil", "draw-off", "shutdown", "after", EmergencyCode];

    /// <summary>Whether something has gone wrong while it lasts.</summary>
    public bool IsEmergency => Code == EmergencyCode;

    /// <summary>Whether the draw-off is seen to.</summary>
    public bool IsDraw => Kind == "draw-off";

    /// <summary>Whether no more wood goes in.</summary>
    public bool IsEnding => Kind is "shutdown" or "after";
}

/// <summary>One place in the procedure: something is asked, or time passes while watches ask.</summary>
public sealed record Step
{
    /// <summary>A stable id; journals name it.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called where there is room for two or three words; null where its id says it.</summary>
    public string? Name { get; init; }

    /// <summary>Its phase.</summary>
    public required Phase Phase { get; init; }

    /// <summary>A reading's or an observation's code, or <c>confirm</c>; null where the step rests.</summary>
    public required string? Ask { get; init; }

    /// <summary>The instruction.</summary>
    public required string Text { get; init; }

    /// <summary>The reason.</summary>
    public required string? Because { get; init; }

    /// <summary>Hazards, said before it.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Whether only a beginner is asked.</summary>
    public required bool BeginnerOnly { get; init; }

    /// <summary>The facts that must hold for it to be asked; else it is passed by as if it had been done.</summary>
    public required IReadOnlyList<string> Given { get; init; }

    /// <summary>What is said instead on some rigs.</summary>
    public IReadOnlyList<Reworded> Instead { get; init; } = [];

    /// <summary>Other ways to say yes, while it is asked: <c>it's out</c>.</summary>
    public IReadOnlyList<string> MeansYes { get; init; } = [];

    /// <summary>Other ways to say no, while it is asked: <c>nothing to pour</c>.</summary>
    public IReadOnlyList<string> MeansNo { get; init; } = [];

    /// <summary>Whether it cannot be skipped.</summary>
    public required bool IsCritical { get; init; }

    /// <summary>Whether <c>skip</c> goes on from it.</summary>
    public bool CanSkip => !IsCritical;

    /// <summary>Whether <c>later</c> asks again.</summary>
    public bool CanWait => Urgency != "danger";

    /// <summary>The action advised with it; null where none is.</summary>
    public required string? Advise { get; init; }

    /// <summary>The urgency of that advice.</summary>
    public required string Urgency { get; init; }

    /// <summary>Whether that advice only makes ready for its action.</summary>
    public required bool Prepare { get; init; }

    /// <summary>The forecast that the advice stands on; null where none.</summary>
    public required string? Forecast { get; init; }

    /// <summary>The marks that a yes sets.</summary>
    public required IReadOnlyList<string> Marks { get; init; }

    /// <summary>The marks that a yes takes away.</summary>
    public required IReadOnlyList<string> Unmarks { get; init; }

    /// <summary>The deed that a yes tells of; null where it tells of none.</summary>
    public required DeedName? Deed { get; init; }

    /// <summary>What is said when the answer is no and nothing leads away.</summary>
    public required string? IfNo { get; init; }

    /// <summary>How long after the step is reached it is asked; also how long <c>later</c> puts it off.</summary>
    public required TimeSpan After { get; init; }

    /// <summary>The clock that a yes starts; null where none.</summary>
    public required StepClock? Clock { get; init; }

    /// <summary>The watches that ask while it rests.</summary>
    public required IReadOnlyList<string> Watches { get; init; }

    /// <summary>What leads away from it, in order of precedence.</summary>
    public required IReadOnlyList<Passage> Passages { get; init; }

    /// <summary>Line and column in the file.</summary>
    public required (int Line, int Column) Place { get; init; }
}

/// <summary>A clock that runs down before the operator's eyes.</summary>
/// <param name="Text">What goes on meanwhile, in two or three words.</param>
/// <param name="Lasts">How long.</param>
/// <param name="Over">What is said when it has run down.</param>
public sealed record StepClock(string Text, TimeSpan Lasts, string Over);

/// <summary>One way from a step to another.</summary>
/// <param name="When">The trigger: <c>answer yes</c>, <c>did lit-fire</c>, <c>fact draw-due</c> …</param>
/// <param name="Given">Facts that must hold as well; <c>not x</c> for one that must not.</param>
/// <param name="Go">The step it leads to, <see cref="Flow.Return"/> or <see cref="Flow.End"/>.</param>
/// <param name="Place">Line and column in the file.</param>
public sealed record Passage(string When, IReadOnlyList<string> Given, string Go, (int Line, int Column) Place);

/// <summary>A question that comes back.</summary>
/// <param name="Id">A stable id, as a step's.</param>
/// <param name="Ask">A reading's or an observation's code, or <c>confirm</c>.</param>
/// <param name="Every">The interval; null for the rig's own between charges.</param>
/// <param name="EveryPractised">The interval for a practised hand; null where it is the same.</param>
/// <param name="DoneBy">Triggers that answer it unasked.</param>
/// <param name="Given">Facts that must hold for it to be asked.</param>
/// <param name="Text">The instruction.</param>
/// <param name="Because">The reason.</param>
/// <param name="Cautions">Hazards, said before it.</param>
/// <param name="Advise">The action advised with it; null where none is.</param>
public sealed record Watch(
    string Id,
    string Ask,
    TimeSpan? Every,
    TimeSpan? EveryPractised,
    IReadOnlyList<string> DoneBy,
    IReadOnlyList<string> Given,
    string Text,
    string? Because,
    IReadOnlyList<string> Cautions,
    string? Advise)
{
    /// <summary>The deed that a yes tells of; null where it tells of none.</summary>
    public DeedName? Deed => FlowFile.DeedOf(DoneBy);

    /// <summary>What is said instead on some rigs.</summary>
    public IReadOnlyList<Reworded> Instead { get; init; } = [];

    /// <summary>Line and column in the file.</summary>
    public (int Line, int Column) Place { get; init; } = (1, 1);
}

/// <summary>When to say what is to be done.</summary>
/// <param name="Id">A stable id.</param>
/// <param name="Action">One of the actions.</param>
/// <param name="Urgency">One of the urgencies.</param>
/// <param name="When">Facts that must all hold.</param>
/// <param name="Phases">The phases that it belongs to; empty for all.</param>
/// <param name="Text">The action, verb first.</param>
/// <param name="Because">The reason.</param>
/// <param name="Forecast">The forecast it stands on; null where none.</param>
/// <param name="Again">How long until it is said again while it still holds; null for once.</param>
public sealed record AdviceRule(
    string Id,
    string Action,
    string Urgency,
    IReadOnlyList<string> When,
    IReadOnlyList<string> Phases,
    string Text,
    string Because,
    string? Forecast,
    TimeSpan? Again)
{
    /// <summary>Whether it only makes ready for its action.</summary>
    public bool Prepare { get; init; }

    /// <summary>What is said instead on some rigs.</summary>
    public IReadOnlyList<Reworded> Instead { get; init; } = [];

    /// <summary>Line and column in the file.</summary>
    public (int Line, int Column) Place { get; init; } = (1, 1);
}
