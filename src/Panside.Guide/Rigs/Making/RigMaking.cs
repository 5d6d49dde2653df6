using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Asking;
using Panside.Guide.Measures;

namespace Panside.Guide.Rigs.Making;

/// <summary>How the making of a rig file came to its end.</summary>
public enum RigMade
{
    /// <summary>It is to be written.</summary>
    Written,

    /// <summary>It is left for later; what was typed is to be kept.</summary>
    Stopped,

    /// <summary>There is an emergency at a pan: the emergency list is to be shown, and nothing else matters.</summary>
    Emergency,
}

/// <summary>
/// The conversation that makes a rig file. It is a pure function of what was typed; where the file lies, and writing it, are the
/// matter of whoever began it.
/// </summary>
/// <param name="path">Where the file will be, for a person.</param>
/// <param name="there">The name of the rig whose file is there already; null where none is.</param>
/// <param name="meaning">What a rig comes to, in sentences: told before it is written.</param>
public sealed partial class RigMaking(string path, string? there, Func<Rig, IReadOnlyList<string>> meaning) : IAsking
{
    private const string Usual = "usual";

    /// <summary>Letters of an answer in the left one of two columns.</summary>
    private const int ColumnWidth = 18;

    /// <summary>Who does not know takes what such rigs have.</summary>
    /// <summary>The most that are asked of one rig: of two pans over a wood fire.</summary>
    private static readonly int Most = RigAnswers.None.With("float", new("float", "")).With("behind", new("1 by 1", "")).Questions.Count;

    private static readonly string[] UsualWords = [Usual, "skip", "i don't know", "don't know", "i do not know", "dunno", "not sure", "no idea"];

    private static readonly IReadOnlyList<PageKey> Keys =
    [
        new("F9", "emergency", "EMERGENCY", "the emergency list, from anywhere"),
        new("F1", "help", "Help", "this page; ? does the same on an empty line"),
        new("F3", "why", "Why", "the reason for what is asked"),
        new("F8", "back", "Back", "to the question before"),
        new("F4", "rest", "Rest as usual", "takes the usual for all that is left"),
        new("F7", "stop", "Stop", "keeps the answers for another time"),
    ];

    private readonly List<string> _heard = [];
    private RigAnswers _answers = RigAnswers.None;
    private IReadOnlyList<string>? _meaning;
    private int _at;
    private int _kept;
    private bool _asksToReplace;
    private bool _hasPictures = true;

    /// <summary>What was typed, to be heard again another time.</summary>
    public IReadOnlyList<string> Heard => _heard;

    /// <summary>How it ended; null where it goes on.</summary>
    public RigMade? End { get; private set; }

    /// <summary>The file's text, once all is answered.</summary>
    public string Text => RigText.Of(_answers, _answers.Rig);

    /// <summary>How many questions are answered.</summary>
    public int Answered => _answers.All.Count;

    /// <inheritdoc/>
    public bool IsOver => End is not null;

    /// <inheritdoc/>
    public string? BeforeLeaving => Answered == 0 ? null : "Leave? Nothing is written then; 'stop' keeps the answers.";

    /// <inheritdoc/>
    public IReadOnlyList<string> Opening =>
    [
        _kept > 0
            ? $"- Going on where it was stopped: {_kept} {(_kept == 1 ? "answer is" : "answers are")} kept. 'anew' forgets them."
            : $"- Up to {Most} questions, two minutes. Take a tape measure; Enter where unsure.",
        "- Nothing is written before you have seen it whole. 'back' goes back, 'stop' keeps the answers.",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Help { get; } =
    [
        "an amount with its unit: 48 in, 4 ft, 4 ft 2 in, 23 1/2, 120 cm, 35 gal, 130 L",
        "usual, or Enter alone: what such rigs have; rest: the usual for all that is left",
        "back; a question's name, like 'length' or 'length 50 in': changes an answer",
        $"names: {string.Join(", ", RigQuestions.All.Select(question => question.Name))}",
        "why; no pictures, pictures; anew: forgets all answers; stop: keeps them; emergency",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } =
    [
        .. Keys.Select(key => key.Word), Usual, "pictures", "no pictures", "anew", .. RigQuestions.All.Select(question => question.Name),
    ];

    /// <inheritdoc/>
    public Page Page => Asked is { } question
        ? new($"RIG FILE   question {_at + 1} of {_answers.Questions.Count}", Picture(question.Picture), question.Ask, Hint(question), Keys)
        : new("RIG FILE   all answered", Whole(), _asksToReplace ? ReplaceAsk : "Is this your rig? Then it is written.", _asksToReplace ? ReplaceHint : WholeHint, Keys);

    private RigQuestion? Asked => _at < _answers.Questions.Count ? _answers.Questions[_at] : null;

    private string ReplaceAsk => $"A rig file is there already: '{there}'. Is this one to take its place?";

    private string ReplaceHint => $"  [yes: the old one is kept beside it; no: back to the answers] {path}";

    private string WholeHint => $"  [yes writes {path}; else what is wrong, like 'length' or 'length 50']";

    /// <inheritdoc/>
    public IReadOnlyList<string> Hear(string words)
    {
        var said = Spaces().Replace(string.Concat(words.Where(letter => !char.IsControl(letter))).Trim(), " ").TrimEnd('.', '!', ',');
        if (words.Trim() == "!")
        {
            said = "emergency";
        }

        if (End is not null)
        {
            return [];
        }

        var answer = Own(said.ToLowerInvariant());
        if (answer is null)
        {
            _heard.Add(said);
            answer = Meant(said);
        }

        return answer;
    }

    /// <summary>Hears again what was typed another time.</summary>
    public void HearAgain(IEnumerable<string> heard)
    {
        foreach (var words in heard)
        {
            Hear(words);
        }

        _kept = Answered;
    }

    /// <summary>Words that answer no question and are not kept; null where it is none of them.</summary>
    private IReadOnlyList<string>? Own(string said)
    {
        switch (said)
        {
            case "why" or "why?":
                return [Asked is { } asked ? $"- {asked.Why}" : "- All forecasts begin with this; a wrong size is a wrong forecast."];
            case "help" or "?" or "h" or "words":
                return [.. Help.Select(line => $"- {line}")];
            case "pictures" or "no pictures":
                _hasPictures = said == "pictures";
                return [];
            case "stop" or "exit" or "quit" or "bye" or "leave":
                End = RigMade.Stopped;
                return [];
            case "emergency":
                End = RigMade.Emergency;
                return [];
            default:
                return null;
        }
    }

    private IReadOnlyList<string> Meant(string said)
    {
        switch (said.ToLowerInvariant())
        {
            case "back" or "undo" or "b":
                return Back();
            case "anew":
                (_answers, _at, _asksToReplace) = (RigAnswers.None, 0, false);
                _heard.Clear();
                return ["- All answers are forgotten."];
            case "rest":
                return Rest();
        }

        if (_asksToReplace)
        {
            return Replace(said);
        }

        return Named(said) ?? (Asked is { } question ? Take(question, said) : OfWhole(said));
    }

    private IReadOnlyList<string> Back()
    {
        if (_asksToReplace || _at == 0)
        {
            _asksToReplace = false;
            return _at == 0 ? ["x This is the first question."] : [];
        }

        _at--;
        return [];
    }

    private IReadOnlyList<string> Rest()
    {
        if (_answers.Questions.FirstOrDefault(question => question.Usual is null && _answers[question.Name] is null) is { } open)
        {
            return [$"x Nobody but you can know '{open.Name}'. Answer up to '{LastWithoutUsual}' first; then 'rest' takes the usual."];
        }

        foreach (var question in _answers.Questions.Where(question => _answers[question.Name] is null))
        {
            _answers = _answers.With(question.Name, AsUsual(question));
        }

        return Advance();
    }

    private string LastWithoutUsual => _answers.Questions.Last(question => question.Usual is null).Name;

    private RigAnswer AsUsual(RigQuestion question) => new(null, question.Usual!(_answers));

    /// <summary>An answer in words; the usual follows the other answers.</summary>
    private string Told(RigQuestion question) =>
        _answers[question.Name] is { Value: not null } answer ? answer.Told : question.Usual!(_answers);

    /// <summary>The same in a column of two: of several depths the first.</summary>
    private string Short(RigQuestion question) => Told(question) is var told && told.Length > ColumnWidth && told.IndexOf(", ", StringComparison.Ordinal) is > 0 and var comma
        && question.Name != "name" ? told[..comma] + ", ..." : told;

    /// <summary>A question's name, alone or with an answer; null where it is none. A rig may bear any name, so there it is taken as it is.</summary>
    private IReadOnlyList<string>? Named(string said)
    {
        var place = Asked?.Name == "name" ? -1
            : _answers.Questions.ToList().FindIndex(question => (said + " ").StartsWith(question.Name + " ", StringComparison.OrdinalIgnoreCase));
        if (place < 0 || (_answers[_answers.Questions[place].Name] is null && place != _at))
        {
            return null;
        }

        var question = _answers.Questions[place];
        if (said.Length > question.Name.Length)
        {
            return Take(question, said[(question.Name.Length + 1)..]);
        }

        // "float" at the question about the float is an answer.
        if (place == _at)
        {
            return null;
        }

        _at = place;
        return [];
    }

    private IReadOnlyList<string> Take(RigQuestion question, string said)
    {
        if (said.Length == 0 || UsualWords.Contains(said, StringComparer.OrdinalIgnoreCase))
        {
            return TakeUsual(question, keeps: said.Length == 0);
        }

        // A word for a number counts where nothing else is meant by it.
        var reply = question.Read(said, _answers);
        if ((reply.Answer ?? question.Read(NumberWords.InDigits(said), _answers).Answer) is not { } answer)
        {
            return [$"x {reply.Fault}"];
        }

        var with = _answers.With(question.Name, answer);
        if (with.Contradiction() is { } contradiction)
        {
            return [$"x {contradiction}."];
        }

        _answers = with;
        return [$"  Heard: {answer.Told}.", .. Advance()];
    }

    /// <param name="question">The question.</param>
    /// <param name="keeps">Whether an answer that was given before stays: Enter alone changes nothing.</param>
    private IReadOnlyList<string> TakeUsual(RigQuestion question, bool keeps)
    {
        if (keeps && _answers[question.Name] is not null)
        {
            return [$"  Kept: {Told(question)}.", .. Advance()];
        }

        if (question.Usual is null)
        {
            return [$"x Nobody but you can know this. Expected: {question.Expected(_answers)}."];
        }

        var answer = AsUsual(question);
        _answers = _answers.With(question.Name, answer);
        return [$"  As usual: {question.Name} {answer.Told}.", .. Advance()];
    }

    /// <summary>To the next question that is still open.</summary>
    private IReadOnlyList<string> Advance()
    {
        _meaning = null;
        var next = _answers.Questions.ToList().FindIndex(question => _answers[question.Name] is null);
        _at = next < 0 ? _answers.Questions.Count : next;
        return [];
    }

    private IReadOnlyList<string> OfWhole(string said)
    {
        if (Hearing.Terms.Vocabulary.Answers.GetValueOrDefault(said) != "yes")
        {
            return [$"x Say yes, or what is wrong: {string.Join(", ", _answers.Questions.Select(question => question.Name))}."];
        }

        _asksToReplace = there is not null;
        End = _asksToReplace ? null : RigMade.Written;
        return [];
    }

    private IReadOnlyList<string> Replace(string said)
    {
        switch (Hearing.Terms.Vocabulary.Answers.GetValueOrDefault(said))
        {
            case "yes":
                End = RigMade.Written;
                return [];
            case "no":
                _asksToReplace = false;
                return ["- The old file stays. 'stop' keeps these answers."];
            default:
                return ["x Expected: yes or no."];
        }
    }

    private string Hint(RigQuestion question)
    {
        var enter = _answers[question.Name] is not null ? $"; Enter keeps {Told(question)}"
            : question.Usual is { } usual ? $"; Enter, as usual: {usual(_answers)}" : "";
        return $"  [{question.Expected(_answers)}{enter}]";
    }

    private string[] Picture(string picture) => _hasPictures ? picture.ReplaceLineEndings("\n").Split('\n') : [];

    /// <summary>All answers in two columns, and what they come to.</summary>
    private IReadOnlyList<string> Whole()
    {
        var rows = _answers.Questions.Select(question => string.Create(
            CultureInfo.InvariantCulture, $"{(_answers[question.Name]!.Value is null ? "*" : " ")} {question.Name,-9}{Short(question)}")).ToList();
        var half = (rows.Count + 1) / 2;
        _meaning ??= meaning(_answers.Rig);
        return
        [
            .. Enumerable.Range(0, half).Select(row => $"{rows[row],-30}{(row + half < rows.Count ? rows[row + half] : "")}".TrimEnd()),
            "* as usual, not measured",
            .. _meaning.Select(line => $"- {line}"),
        ];
    }

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
