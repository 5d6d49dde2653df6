using Panside.Guide.Hearing.Cries;
using Panside.Guide.Yaml;

namespace Panside.Guide.Tests.Hearing;

public class DangerWordsTests
{
    private static readonly string Good = RepositoryFiles.Read("flows", "words", "dangers.yaml");

    [Fact]
    public void The_dangers_stand_in_their_order_the_gravest_first() => Assert.Equal(
        ["fire", "smoke", "faint", "hurt", "dry", "scorch", "foam", "chimney", "stack", "float", "leak", "away", "unsure"],
        CryCorpus.Words.Hazards);

    [Fact]
    public void Every_danger_can_be_cried_out_in_every_language()
    {
        Assert.Equal(["en", "fr"], CryCorpus.Words.Languages);
        foreach (var language in CryCorpus.Words.Languages)
        {
            Assert.NotNull(new CryEar(CryCorpus.Words, language, []).Hear(language == "fr" ? "au feu, vite, aidez-moi" : "fire, quick, help me"));
        }
    }

    [Theory]
    [InlineData("words: dangers", "words: flowers", "words is 'flowers'", "one of dangers")]
    [InlineData("    stems: english", "    stems: klingon", "stems is 'klingon'", "one of english, french")]
    [InlineData("    stems: french", "    stems: french\n    colour: blue", "unknown key 'colour'", "one of")]
    [InlineData("  not-denial:", "  not-denied:", "the concept 'not-denial' is missing", "'not-denial: …' here")]
    [InlineData("      - boil-over", "      - boil-under", "'boil-under' in 'boil-under", "the name of a concept")]
    [InlineData("<smells> .. <burnt>", "<smells> .. <burnd>", "'<burnd>', which is no concept", "the name of a concept")]
    [InlineData("[above the rim", "[.. above the rim", "begins or ends with a gap", "words of letters")]
    public void A_fault_is_told_with_its_place_and_what_was_expected(string right, string wrong, string told, string expected)
    {
        var at = Good.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right);
        var faults = Assert.Throws<FaultyFileException>(() => DangerWords.Read("w.yaml", Good[..at] + wrong + Good[(at + right.Length)..])).Faults;
        var fault = Assert.Single(faults, fault => fault.Wrong.Contains(told, StringComparison.Ordinal));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
        Assert.True(fault.Line > 0 && fault.Column > 0);
    }

    [Fact]
    public void A_concept_that_is_built_of_itself_is_a_fault()
    {
        var text = Good.Replace("  hot-liquid:\n    en: [", "  hot-liquid:\n    en: [very <hot-liquid>, ", StringComparison.Ordinal);
        var fault = Assert.Single(Assert.Throws<FaultyFileException>(() => DangerWords.Read("w.yaml", text)).Faults);
        Assert.Contains("built of itself", fault.Wrong, StringComparison.Ordinal);
    }
}
