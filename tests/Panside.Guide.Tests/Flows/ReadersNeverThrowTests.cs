using System.Text;
using CsCheck;
using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Lines;
using Panside.Guide.Plans;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Laws;
using Panside.Tests;

namespace Panside.Guide.Tests.Flows;

/// <summary>R8: whatever stands in a file or is typed, a reader tells what is wrong and nothing else is thrown.</summary>
public class ReadersNeverThrowTests
{
    private static readonly string FlowText = RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "smallest.yaml");
    private static readonly string RigText = RepositoryFiles.Read("flows", "rigs", "two-by-four-forced.yaml");

    private static readonly string PlanText = RepositoryFiles.Read("flows", "plans", "gas-divided.yaml");

    private static readonly string[] Pieces =
    [
        "\n", "  ", ": ", "- ", "[", "]", "{", "}", "*a", "&a ", "!!set ", "? ", "|\n", ">-\n", "'", "\"", "#", "%", "\t", "\0", "\uFEFF", "\uD800",
        "é", "🔥", "1e999 in", "-1 gal", "99999999999999999999", "step: pan", "go: return", "go: over", "null", "~", "---\n", "...\n", "<<: ", "{tank", "word emergency",
    ];

    /// <summary>A text with pieces put in, cut out or doubled.</summary>
    private static Gen<string> Damaged(string text) =>
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 12], Gen.Int[0, Pieces.Length - 1]).Array[1, 6].Select(changes =>
        {
            var damaged = new StringBuilder(text);
            foreach (var (at, cut, piece) in changes)
            {
                var from = int.Min(at, damaged.Length);
                damaged.Remove(from, int.Min(cut, damaged.Length - from)).Insert(from, Pieces[piece]);
            }

            return damaged.ToString();
        });

    [Fact]
    public void R8_a_damaged_flow_is_refused_with_places_or_read()
    {
        var refused = 0;
        Damaged(FlowText).Holds(text => refused += IsRefused(() => FlowFile.Read("f", text, Vocabularies.Flow), text) ? 1 : 0, cases: Thorough.IsAsked ? 1500 : 750);
        Assert.True(refused >= 250);
    }

    [Fact]
    public void R8_a_damaged_rig_is_refused_with_places_or_read()
    {
        var refused = 0;
        Damaged(RigText).Holds(text => refused += IsRefused(() => RigFile.Read("r", text), text) ? 1 : 0, cases: Thorough.IsAsked ? 3000 : 1000);
        Assert.True(refused >= 250);
    }

    [Fact]
    public void R8_a_damaged_plan_is_refused_with_places_or_read()
    {
        var refused = 0;
        Damaged(PlanText).Holds(text => refused += IsRefused(() => PlanFile.Read("p", text, Conversation.Flow), text) ? 1 : 0, cases: Thorough.IsAsked ? 3000 : 1000);
        Assert.True(refused >= 250);
    }

    [Theory]
    [InlineData("a: &a [*a]")]
    [InlineData("? [a]\n: b")]
    [InlineData("- a")]
    [InlineData("a")]
    [InlineData("")]
    [InlineData("\0")]
    [InlineData("a: b\n---\na: b")]
    [InlineData("flow: x\nwords: { null: }")]
    public void R8_a_file_that_is_no_plain_mapping_is_refused(string text)
    {
        Assert.True(IsRefused(() => FlowFile.Read("f", text, Vocabularies.Flow)));
        Assert.True(IsRefused(() => RigFile.Read("r", text)));
    }

    [Fact]
    public void R8_deep_nesting_is_refused_without_a_crash()
    {
        Assert.True(IsRefused(() => RigFile.Read("r", new string('[', 100_000))));
        Assert.True(IsRefused(() => RigFile.Read("r", string.Concat(Enumerable.Range(0, 2000).Select(depth => new string(' ', depth) + "a:\n")))));
    }

    [Fact]
    public void R8_whatever_is_typed_is_understood_as_something()
    {
        var listener = new Listener(new Conversation().Session.Setting);
        var words = new[]
        {
            "tank", "depth", "draw", "drew", "wood", "note", "yes", "boil", "rolling", "1", "1/0", "1/2", "½", "1,000", "1e9", "-", "°F", "gal", "qt", "in", "!",
            ".", "\u2028", "\uD83D", "é", "999999999999", "=", "\"", "of", "/", "%", "brix", "is", "the", "\0", "over", "emergency",
        };
        Prompt?[] prompts =
        [
            null, new("s", "confirm", null, "t"), new("s", "boil", null, "t", Choices: ["rolling"]), new("s", "tank-volume", Measures.Unit.Gallon, "t", Low: 0, High: 1),
        ];
        var meant = new HashSet<Type>();
        Gen.Select(Gen.Int[0, words.Length - 1], Gen.Bool).Array[0, 8].Select(Gen.Int[0, prompts.Length - 1]).Holds(
            (parts, prompt) =>
            {
                var understood = listener.Understand(Now, string.Concat(parts.Select(part => words[part.Item1] + (part.Item2 ? " " : ""))), prompts[prompt]);
                lock (meant)
                {
                    meant.Add(understood.GetType());
                }
            },
            cases: Thorough.IsAsked ? 20_000 : 5_000);
        Assert.Superset(new HashSet<Type> { typeof(MeansLine), typeof(MeansWord), typeof(MeansCry), typeof(MeansNothing) }, meant);
    }

    private static Moment Now { get; } = Moment.Of(new(2031, 3, 8, 17, 0, 0, TimeSpan.Zero));

    private static bool IsRefused(Action read, string? text = null)
    {
        try
        {
            read();
            return false;
        }
        catch (FaultyFileException fault)
        {
            Assert.NotEmpty(fault.Faults);
            Assert.All(fault.Faults, one => Assert.True(one.Line >= 1 && one.Column >= 1, one.ToString()));
            Assert.All(text is null ? [] : fault.Faults, one =>
            {
                var more = one.More(text!).ToList();
                Assert.EndsWith("^", more[^2], StringComparison.Ordinal);
                Assert.Contains($"[{one.Kind.Code}]", more[^1], StringComparison.Ordinal);
            });
            return true;
        }
    }
}
