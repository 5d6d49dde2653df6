using Panside.Guide.Hearing.Cries;
using Panside.Tests.Reckon;

namespace Panside.Tests.Workshop;

/// <summary>What the workshop tells of the ear, and how it fits one.</summary>
public sealed class EarCommandTests : IDisposable
{
    private readonly Scratch _scratch = new();

    public EarCommandTests() => File.WriteAllText(_scratch["said.tsv"], string.Join('\n',
    [
        "kind\thazard\thabit\tsentence",
        .. Enumerable.Repeat("cry\tfire\tplain\tthe roof is on fire", 20),
        .. Enumerable.Repeat("cry\tleak\tplain\tthe pan is leaking", 20),
        .. Enumerable.Repeat("everyday\tnone\tchat\tgood evening to you", 20),
    ]) + "\n");

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Cries_and_everyday_talk_are_counted_by_habit()
    {
        var run = Captured.Workshop("ear", _scratch["said.tsv"]);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        var rows = run.Out.Split('\n').Select(row => row.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        Assert.Equal(["habit", "cries", "opened", "right", "everyday", "falsely"], rows[0]);
        Assert.Equal(["chat", "0", "0.0%", "0.0%", "20", "0"], rows[1]);
        Assert.Equal(["plain", "40", "100.0%", "100.0%", "0", "0"], rows[2]);
        Assert.Equal(["all", "40", "100.0%", "100.0%", "20", "0"], rows[3]);
    }

    [Fact]
    public void What_was_not_heard_as_it_was_meant_is_named()
    {
        File.WriteAllText(_scratch["wrong.tsv"], "cry\tleak\tplain\tgood evening to you\neveryday\tnone\tplain\tthe roof is on fire\n");
        var told = Captured.Workshop("ear", _scratch["wrong.tsv"], "--misheard").Out;
        Assert.Contains("leak heard as nothing: good evening to you\n", told, StringComparison.Ordinal);
        Assert.Contains("everyday heard as fire", told, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ear_that_is_fitted_hears_what_it_was_fitted_to()
    {
        Assert.Equal(ExitStatus.Done, Captured.Workshop("ear", _scratch["said.tsv"], "--fit", _scratch["made.weights"]).Status);
        var ear = new CryEar(KnownCries.Words, "en", [], new FittedWeights(File.ReadAllText(_scratch["made.weights"])));
        Assert.Equal(("fire", true), (ear.Hear("the roof is on fire")!.Hazards[0], ear.Hear("the roof is on fire")!.IsSure));
        Assert.Equal("leak", ear.Hear("the pan is leaking")!.Hazards[0]);
        Assert.Null(ear.Hear("good evening to you"));
        Assert.StartsWith("# Weights of traits, in hundredths, fitted to 60 sentences", File.ReadAllText(_scratch["made.weights"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--language xx: expected one of en, fr.", "said.tsv", "--language", "xx")]
    [InlineData("there is no such file", "none.tsv")]
    public void What_cannot_be_used_is_told_in_words(string words, string file, params string[] more)
    {
        var run = Captured.Workshop(["ear", _scratch[file], .. more]);
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains(words, run.Errors, StringComparison.Ordinal);
    }
}
