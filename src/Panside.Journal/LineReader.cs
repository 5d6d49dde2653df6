using System.Globalization;
using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Journal;

/// <summary>Reads a line in from JSON. What cannot be read becomes an <see cref="Unreadable"/> that says why; nothing throws.</summary>
public static class LineReader
{
    /// <summary>The most characters of a line.</summary>
    public const int LongestLine = 64 * 1024;

    /// <summary>The keys of a line in, of which each has exactly one.</summary>
    internal static readonly string[] Kinds = ["reading", "observed", "did", "answer", "text", "tick", "resume"];

    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = 4 };

    /// <summary>Reads one line of text.</summary>
    /// <param name="line">The line.</param>
    /// <param name="passesOver">Whether keys that are not known are passed over: a record may be by a newer version.</param>
    /// <param name="readings">What can be read off an instrument; null for what the program comes with.</param>
    public static LineIn Read(string line, bool passesOver = false, KnownReadings? readings = null)
    {
        if (line.Length > LongestLine)
        {
            return new Unreadable(null, $"The line is too long; {LongestLine} characters are the most.", null);
        }

        try
        {
            using var document = JsonDocument.Parse(line, Strict);
            return document.RootElement.ValueKind == JsonValueKind.Object
                ? Read(document.RootElement, passesOver, readings ?? KnownReadings.BuiltIn)
                : new Unreadable(null, "The line is no JSON object. One object a line is expected, like {\"at\":…,\"tick\":true}.", null);
        }
        catch (Exception fault) when (IsNoJson(fault))
        {
            var place = (fault as JsonException)?.BytePositionInLine is { } position ? $" at byte {position + 1}" : "";
            var twice = fault.Message.Contains("uplicate", StringComparison.Ordinal) ? " (a key stands twice)" : "";
            return new Unreadable(null, $"The line is no JSON{place}{twice}. One object a line is expected.", null);
        }
    }

    /// <summary>Whether the JSON reader found a text that is none, or one with half a character escaped in it.</summary>
    public static bool IsNoJson(Exception fault) => fault is JsonException or InvalidOperationException or ArgumentException;

    /// <summary>How a text was understood, as an answer tells it: without a time of its own; null where this version has no word for it.</summary>
    internal static LineIn? Heard(JsonElement root, Moment at)
    {
        var kinds = root.EnumerateObject().Where(property => Kinds.Contains(property.Name)).Select(property => property.Name).ToList();
        return kinds.Count == 1 && new Parts(root, at, KnownReadings.BuiltIn).Line(kinds[0]) is var line and not Unreadable ? line : null;
    }

    private static LineIn Read(JsonElement root, bool passesOver, KnownReadings readings)
    {
        if (!root.TryGetProperty("at", out var atElement))
        {
            return new Unreadable(null, "'at' is missing. Expected the time with its offset, like 2031-03-08T17:05:00-05:00.", "at");
        }

        if (atElement.ValueKind != JsonValueKind.String || Moment.Read(atElement.GetString()!) is not { } at)
        {
            return new Unreadable(
                null, $"'at' is {Shown(atElement)}. Expected RFC 3339 with an offset, like 2031-03-08T17:05:00-05:00.", "at");
        }

        var kinds = root.EnumerateObject().Where(property => Kinds.Contains(property.Name)).Select(property => property.Name).ToList();
        if (kinds.Count != 1)
        {
            return new Unreadable(
                at,
                kinds.Count == 0
                    ? $"Nothing is said. Expected exactly one of {string.Join(", ", Kinds)}."
                    : $"{string.Join(" and ", kinds)} stand together. Expected exactly one of them.",
                kinds.Count == 0 ? UnknownKey(root, []) : kinds[1]);
        }

        var kind = kinds[0];
        string[] allowed = kind switch
        {
            "did" when Liquids(root.GetProperty(kind)).Count > 0 => ["at", kind, "value", "unit", "is", "pan"],
            "reading" or "did" => ["at", kind, "value", "unit"],
            "observed" => ["at", kind, "is"],
            _ => ["at", kind],
        };
        if (!passesOver && UnknownKey(root, allowed) is { } unknown)
        {
            return new Unreadable(at, $"Unknown key '{unknown}' beside '{kind}'. Expected {string.Join(", ", allowed)}.", unknown);
        }

        return new Parts(root, at, readings).Line(kind);
    }

    /// <summary>The liquids that the deed of a code can be done with.</summary>
    private static IReadOnlyList<string> Liquids(JsonElement code) =>
        code.ValueKind == JsonValueKind.String ? DeedName.FromCode(code.GetString()!)?.Liquids ?? [] : [];

    private static string? UnknownKey(JsonElement root, string[] allowed) =>
        root.EnumerateObject().Select(property => property.Name).FirstOrDefault(name => name != "at" && !allowed.Contains(name));

    private static string Shown(JsonElement element)
    {
        var raw = element.GetRawText();
        return raw.Length <= 60 ? raw : raw[..60] + "…";
    }

    /// <summary>The parts of one line whose time is good.</summary>
    private readonly struct Parts(JsonElement root, Moment at, KnownReadings readings)
    {
        private readonly JsonElement _root = root;
        private readonly Moment _at = at;
        private readonly KnownReadings _readings = readings;

        public LineIn Line(string kind) => kind switch
        {
            "reading" => Reading(),
            "observed" => Observed(),
            "did" => Did(),
            "answer" => Code("answer", AnswerWords.All) is { } word
                ? new Answer(_at, word)
                : Wrong("answer", "one of " + string.Join(", ", AnswerWords.All)),
            "text" => _root.GetProperty("text") is { ValueKind: JsonValueKind.String } text
                ? new Text(_at, text.GetString()!)
                : Wrong("text", "a text"),
            "resume" => _root.GetProperty("resume").ValueKind == JsonValueKind.True ? new Resumed(_at) : Wrong("resume", "true"),
            _ => _root.GetProperty("tick").ValueKind == JsonValueKind.True ? new Tick(_at) : Wrong("tick", "true"),
        };

        private LineIn Reading()
        {
            if (Code("reading", [.. _readings.All.Select(one => one.Code)]) is not { } code)
            {
                return Wrong("reading", "one of " + string.Join(", ", _readings.All.Select(one => one.Code)));
            }

            var name = _readings.Find(code)!;
            var (measure, fault) = Measure(name.Kind);
            return measure is { } good ? new Reading(_at, name, good) : fault!;
        }

        private LineIn Observed()
        {
            if (Code("observed", [.. ObservationName.All.Select(one => one.Code)]) is not { } code)
            {
                return Wrong("observed", "one of " + string.Join(", ", ObservationName.All.Select(one => one.Code)));
            }

            var name = ObservationName.FromCode(code)!;
            return Code("is", name.States) is { } state
                ? new Observed(_at, name, state)
                : Wrong("is", "one of " + string.Join(", ", name.States));
        }

        private LineIn Did()
        {
            if (Code("did", [.. DeedName.All.Select(one => one.Code)]) is not { } code)
            {
                return Wrong("did", "one of " + string.Join(", ", DeedName.All.Select(one => one.Code)));
            }

            var name = DeedName.FromCode(code)!;
            var (hasValue, hasUnit) = (_root.TryGetProperty("value", out _), _root.TryGetProperty("unit", out _));
            if (!hasValue && !hasUnit && !name.WantsAmount)
            {
                return new Did(_at, name, null);
            }

            if (name.Kind is not { } kind)
            {
                return new Unreadable(_at, $"'{code}' takes no value and no unit.", hasValue ? "value" : "unit");
            }

            var (measure, fault) = Measure(kind);
            if (measure is not { } good)
            {
                return fault!;
            }

            var did = new Did(_at, name, good);
            if (_root.TryGetProperty("pan", out _))
            {
                if (Code("pan", name.Pans) is not { } pan)
                {
                    return Wrong("pan", "one of " + string.Join(", ", name.Pans));
                }

                did = did with { Pan = pan };
            }

            if (!_root.TryGetProperty("is", out _))
            {
                return did;
            }

            return Code("is", name.Liquids) is { } liquid
                ? did with { Is = liquid }
                : Wrong("is", "one of " + string.Join(", ", name.Liquids));
        }

        private (Measure?, Unreadable?) Measure(Dimension kind)
        {
            if (!_root.TryGetProperty("value", out var value) || value.ValueKind != JsonValueKind.Number
                || !value.TryGetDouble(out var number) || !double.IsFinite(number) || double.Abs(number) > 1e9)
            {
                return (null, Wrong("value", "a number"));
            }

            if (!_root.TryGetProperty("unit", out var unit) || unit.ValueKind != JsonValueKind.String
                || UnitNames.FromCode(unit.GetString()!) is not { } known || known.Kind() != kind)
            {
                return (null, Wrong("unit", "one of " + UnitNames.CodesOf(kind)));
            }

            return Guide.Measures.Measure.Of(number, known) is { } measure
                ? (measure, null)
                : (null, new Unreadable(_at, $"{Guide.Measures.Measure.Fault(number, known)}.", "value"));
        }

        private string? Code(string key, IReadOnlyList<string> codes) =>
            _root.TryGetProperty(key, out var element) && element.ValueKind == JsonValueKind.String
            && codes.Contains(element.GetString()!, StringComparer.Ordinal)
                ? element.GetString()
                : null;

        private Unreadable Wrong(string key, string expected) => new(
            _at,
            _root.TryGetProperty(key, out var element)
                ? string.Create(CultureInfo.InvariantCulture, $"'{key}' is {Shown(element)}. Expected {expected}.")
                : $"'{key}' is missing. Expected {expected}.",
            key);
    }
}
