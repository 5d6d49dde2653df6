using System.Collections.Frozen;
using System.Globalization;
using Panside.Guide.Yaml;

namespace Panside.Guide.Hearing.Talk;

/// <summary>The words of a language by which talk is cut into facts and numbers: <c>flows/words/talk.yaml</c>.</summary>
internal sealed class TalkWords
{
    private TalkWords(YamlMap map)
    {
        Numbers = Numbered(map, "numbers");
        Parts = Numbered(map, "parts");
        Some = Numbered(map, "some");
        (Hundred, Point, And, One) = (Words(map, "hundred"), Words(map, "point"), Words(map, "and"), Words(map, "one"));
        (Of, Minus, Degrees, Breaks) = (Words(map, "of"), Words(map, "minus"), Words(map, "degrees"), Words(map, "breaks"));
        (NoUnitBefore, Half, Past, To) = (Words(map, "no-unit-before"), Words(map, "half"), Words(map, "past"), Words(map, "to"));
        (Morning, Evening, Clock) = (Words(map, "morning"), Words(map, "evening"), Words(map, "clock"));
        (Thousand, Below, Short, Dropped, Ounces, NoUnits, Counted, Unreal) = (Words(map, "thousand"), Words(map, "below"), Words(map, "short"), Words(map, "dropped"), Words(map, "ounces"), Words(map, "no-units"), Words(map, "counted"), Words(map, "unreal"));
        (Denied, Ago, FireNames) = (Words(map, "denied"), Words(map, "ago"), Words(map, "fire-names"));
        Another = map.Texts("another", required: true);
        (Still, Ended, GoesOn) = (Words(map, "still"), Words(map, "ended"), Words(map, "goes-on"));
        (CoalsNames, BoilNames, NotSweet) = (Words(map, "coals-names"), Words(map, "boil-names"), Words(map, "not-sweet"));
        (NoDraw, OtherValves, Stays, Outward) = (Words(map, "no-draw"), Words(map, "other-valves"), Words(map, "stays"), Words(map, "outward"));
        (WoodNames, WoodPieces, PutIn) = (Words(map, "wood-names"), Words(map, "wood-pieces"), Words(map, "put-in"));
        (Speaking, NoMore) = (Words(map, "speaking"), Words(map, "no-more"));
        TankEmpty = map.Texts("tank-empty", required: true).ToFrozenSet(StringComparer.Ordinal);
        NotHere = Words(map, "not-here");
        NoValve = map.Texts("no-valve", required: true);
        (Goes, NoMoreThen) = (Words(map, "goes"), Words(map, "no-more-then"));
        IntoAnother = map.Texts("into-another", required: true);
        OnAgain = map.Texts("on-again", required: true);
        AsksFirst = map.Texts("asks-first", required: true);
        Reports = map.Texts("reports", required: true);
        (Instead, Pints, When) = (Words(map, "instead"), Words(map, "pints"), Words(map, "when"));
        (Defines, Measures) = (map.Texts("define", required: true), map.Texts("measure", required: true));
        More = $" {map.Text("more", required: true)} ";
        (Per, Rates) = (Words(map, "per"), Words(map, "rates"));
        Supposes = map.Texts("supposes", required: true);
        NamedBy = Lists(map, "named-by");
        Times = Numbered(map, "times");
        Light = map.Texts("light").ToFrozenSet(StringComparer.Ordinal);
        map.Finish();
    }

    /// <summary>Whole numbers to ninety.</summary>
    public FrozenDictionary<string, double> Numbers { get; }

    /// <summary>Parts of one: half, quarter.</summary>
    public FrozenDictionary<string, double> Parts { get; }

    /// <summary>Words that count: a couple, a dozen.</summary>
    public FrozenDictionary<string, double> Some { get; }

    /// <summary>Times of day that have a name, in minutes since midnight.</summary>
    public FrozenDictionary<string, double> Times { get; }

    /// <summary>A hundred.</summary>
    public FrozenSet<string> Hundred { get; }

    /// <summary>A thousand.</summary>
    public FrozenSet<string> Thousand { get; }

    /// <summary>Behind a number: below zero.</summary>
    public FrozenSet<string> Below { get; }

    /// <summary>So much less than what follows: a quarter under two.</summary>
    public FrozenSet<string> Short { get; }

    /// <summary>Between two amounts: the first one counts, and not what follows, as in <c>216.2 not 216.8</c>.</summary>
    public FrozenSet<string> Instead { get; }

    /// <summary>Swearing and humming, which may stand in the middle of a number.</summary>
    public FrozenSet<string> Dropped { get; }

    /// <summary>Ounces, behind pounds.</summary>
    public FrozenSet<string> Ounces { get; }

    /// <summary>What a plus before a number says, with spaces around it.</summary>
    public string More { get; }

    /// <summary>Half a quart.</summary>
    public FrozenSet<string> Pints { get; }

    /// <summary>Before a time of day.</summary>
    public FrozenSet<string> When { get; }

    /// <summary>What is counted and not measured: splits, channels.</summary>
    public FrozenSet<string> Counted { get; }

    /// <summary>Between an amount and what it is of each: per.</summary>
    public FrozenSet<string> Per { get; }

    /// <summary>Behind an amount and an article: so much in such a time, or of each such thing.</summary>
    public FrozenSet<string> Rates { get; }

    /// <summary>The beginnings of what is not so: supposing.</summary>
    public IReadOnlyList<string> Supposes { get; }

    /// <summary>By reading, beginnings of words one of which names it.</summary>
    public FrozenDictionary<string, IReadOnlyList<string>> NamedBy { get; }

    /// <summary>Says that what is named is not so.</summary>
    public FrozenSet<string> Denied { get; }

    /// <summary>Names of the coals and what they lie in: without one nobody has told of them.</summary>
    public FrozenSet<string> CoalsNames { get; }

    /// <summary>The same of the boil.</summary>
    public FrozenSet<string> BoilNames { get; }

    /// <summary>Words of a smell that is not sweet alone.</summary>
    public FrozenSet<string> NotSweet { get; }

    /// <summary>What speaks of something else than an opened draw-off: wood, foam, steam.</summary>
    public FrozenSet<string> NoDraw { get; }

    /// <summary>Sentences by which a tank is empty.</summary>
    public FrozenSet<string> TankEmpty { get; }

    /// <summary>Says of somebody that he goes: home, leaving.</summary>
    public FrozenSet<string> Goes { get; }

    /// <summary>What follows "no more" where it is the end of firing: no more after this.</summary>
    public FrozenSet<string> NoMoreThen { get; }

    /// <summary>Places that liquid goes into and that are no pan: into the pot.</summary>
    public IReadOnlyList<string> IntoAnother { get; }

    /// <summary>Says of a deed that it is another time's or another's.</summary>
    public FrozenSet<string> NotHere { get; }

    /// <summary>Words of other things that sound like a valve: shut up.</summary>
    public IReadOnlyList<string> NoValve { get; }

    /// <summary>What else is opened and shut: another valve, the draft, a door.</summary>
    public FrozenSet<string> OtherValves { get; }

    /// <summary>Says of somebody that no one goes: stay, keep going.</summary>
    public FrozenSet<string> Stays { get; }

    /// <summary>Where liquid goes that leaves the pan.</summary>
    public FrozenSet<string> Outward { get; }

    /// <summary>Names of wood and of firing: of what goes in no more.</summary>
    public FrozenSet<string> WoodNames { get; }

    /// <summary>What one puts into a fire.</summary>
    public FrozenSet<string> WoodPieces { get; }

    /// <summary>How it gets there, done.</summary>
    public FrozenSet<string> PutIn { get; }

    /// <summary>Says of a deed that it is done no more: no, last, stop.</summary>
    public FrozenSet<string> NoMore { get; }

    /// <summary>What a voice does: asking, talking.</summary>
    public FrozenSet<string> Speaking { get; }

    /// <summary>Says of what heats a pan that it is on again.</summary>
    public IReadOnlyList<string> OnAgain { get; }

    /// <summary>The beginnings of a question that has no mark behind it.</summary>
    public IReadOnlyList<string> AsksFirst { get; }

    /// <summary>Beginnings that sound like a question and tell.</summary>
    public IReadOnlyList<string> Reports { get; }

    /// <summary>Names of what heats a pan without wood.</summary>
    public FrozenSet<string> FireNames { get; }

    /// <summary>Behind a time: so long before now.</summary>
    public FrozenSet<string> Ago { get; }

    /// <summary>A word for a pan that does not boil, which beside another says that something goes on: still boiling.</summary>
    public FrozenSet<string> Still { get; }

    /// <summary>One thing more: another, one more.</summary>
    public IReadOnlyList<string> Another { get; }

    /// <summary>Says of what goes on that it does no more: stopped, no.</summary>
    public FrozenSet<string> Ended { get; }

    /// <summary>What may go on: boiling, burning.</summary>
    public FrozenSet<string> GoesOn { get; }

    /// <summary>Denies, supposes or puts off what is said beside it.</summary>
    public FrozenSet<string> Unreal { get; }

    /// <summary>Ordinary words that look like a unit with a slip.</summary>
    public FrozenSet<string> NoUnits { get; }

    /// <summary>What is said before a term that is to be explained.</summary>
    public IReadOnlyList<string> Defines { get; }

    /// <summary>What is said before a thing that is to be measured.</summary>
    public IReadOnlyList<string> Measures { get; }

    /// <summary>The decimal point.</summary>
    public FrozenSet<string> Point { get; }

    /// <summary>Joins a whole and a part.</summary>
    public FrozenSet<string> And { get; }

    /// <summary>Articles that count as one before a unit.</summary>
    public FrozenSet<string> One { get; }

    /// <summary>Stands between a part and its unit.</summary>
    public FrozenSet<string> Of { get; }

    /// <summary>Below zero.</summary>
    public FrozenSet<string> Minus { get; }

    /// <summary>Degrees of a kind that is not said, or said behind.</summary>
    public FrozenSet<string> Degrees { get; }

    /// <summary>Begins another fact.</summary>
    public FrozenSet<string> Breaks { get; }

    /// <summary>Before these <c>in</c> is no inch.</summary>
    public FrozenSet<string> NoUnitBefore { get; }

    /// <summary>A half, before <see cref="Past"/>.</summary>
    public FrozenSet<string> Half { get; }

    /// <summary>Past an hour.</summary>
    public FrozenSet<string> Past { get; }

    /// <summary>Before an hour.</summary>
    public FrozenSet<string> To { get; }

    /// <summary>Before noon.</summary>
    public FrozenSet<string> Morning { get; }

    /// <summary>After noon.</summary>
    public FrozenSet<string> Evening { get; }

    /// <summary>Says that a number is a time of day.</summary>
    public FrozenSet<string> Clock { get; }

    /// <summary>Words that say nothing.</summary>
    public FrozenSet<string> Light { get; }

    /// <summary>The words of each language of a file.</summary>
    /// <param name="file">Its name, for faults.</param>
    /// <param name="text">Its text.</param>
    /// <exception cref="FaultyFileException">Something in it is wrong; the exception tells every fault with its place.</exception>
    public static FrozenDictionary<string, TalkWords> Read(string file, string text) => WordsByLanguage.Read(file, text, "talk", language => new TalkWords(language));

    private static FrozenSet<string> Words(YamlMap map, string key) => map.Texts(key, required: true).ToFrozenSet(StringComparer.Ordinal);

    private static FrozenDictionary<string, IReadOnlyList<string>> Lists(YamlMap map, string key) =>
        map.Map(key, required: true) is not { } rows ? FrozenDictionary<string, IReadOnlyList<string>>.Empty
        : rows.Keys.ToList().ToFrozenDictionary(row => row, row => rows.Texts(row, required: true), StringComparer.Ordinal);

    private static FrozenDictionary<string, double> Numbered(YamlMap map, string key)
    {
        var numbers = new Dictionary<string, double>(StringComparer.Ordinal);
        if (map.Map(key, required: true) is { } rows)
        {
            foreach (var word in rows.Keys.ToList())
            {
                if (rows.Text(word) is { } written && double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                {
                    numbers[word] = number;
                }
                else
                {
                    rows.Add(word, "is no number", "a number, as in 'twenty: 20'");
                }
            }
        }

        return numbers.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
