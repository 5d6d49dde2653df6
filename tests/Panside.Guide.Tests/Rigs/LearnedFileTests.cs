using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Reckoning.Ensemble;

namespace Panside.Guide.Tests.Rigs;

public class LearnedFileTests
{
    private static readonly DateTimeOffset Day = new(2031, 3, 8, 21, 0, 0, TimeSpan.FromHours(-5));

    private static readonly Rig Rig = RigFile.Read("rig", Text);

    private const string Text = "rig: the shed's, 'old' one\nunits: us\npan:\n  length: 48 in\n  width: 24 in\nfire:\n  draft: forced\n";

    [Fact]
    public void What_is_written_is_read_again_as_it_was()
    {
        var written = LearnedFile.Write(Rig, Traits(0.1312, 0.0512), null, Day);
        var read = LearnedFile.Read("file", written.Text);
        Assert.Equal((Rig.Name, RigMark.Of(Rig), 1, "2031-03-08"), (read.Rig, read.Mark, read.Boils, read.Date));
        Assert.Equal(written.Traits.All, read.Traits.All);
        Assert.Equal(0.1312, read.Traits["heat"].Mean, 1e-12);
        Assert.Equal(2, LearnedFile.Write(Rig, Traits(0.1, 0.05), read, Day).Boils);
    }

    [Theory]
    [InlineData(0.131, "boils 14 % faster than its size suggests, give or take 5 %.")]
    [InlineData(-0.2877, "boils 25 % slower than its size suggests, give or take 5 %.")]
    [InlineData(0.004, "boils no faster than its size suggests, give or take 5 %.")]
    public void It_says_in_a_sentence_how_fast_the_rig_boils(double heat, string says) =>
        Assert.EndsWith(says, LearnedFile.Write(Rig, Traits(heat, 0.05), null, Day).Says(null), StringComparison.Ordinal);

    [Fact]
    public void It_says_what_changed()
    {
        var before = LearnedFile.Write(Rig, Traits(0.09, 0.1), null, Day);
        Assert.Contains("(before this boil: 9 % faster)", LearnedFile.Write(Rig, Traits(0.131, 0.05), before, Day).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("draft: forced", "draft: natural")]
    [InlineData("length: 48 in", "length: 60 in")]
    public void Another_pan_or_fire_is_another_rig(string from, string to) =>
        Assert.NotEqual(RigMark.Of(Rig), RigMark.Of(RigFile.Read("rig", Text.Replace(from, to, StringComparison.Ordinal))));

    [Theory]
    [InlineData("rig: the", "# a comment\nrig: the other,")]
    [InlineData("length: 48 in", "length: 4 ft")]
    public void Another_name_comment_or_unit_is_the_same_rig(string from, string to) =>
        Assert.Equal(RigMark.Of(Rig), RigMark.Of(RigFile.Read("rig", Text.Replace(from, to, StringComparison.Ordinal))));

    [Theory]
    [InlineData("mean: 0.1312", "mean: warm", "mean is 'warm', expected a number from -6 to 6")]
    [InlineData("spread: 0.0512", "spread: 0", "spread is '0', expected a number from 0.0001 to 3")]
    [InlineData("  heat:", "  heet:", "the key 'heat' is missing")]
    [InlineData("boils: 1", "boils: none", "boils is 'none'")]
    public void A_fault_is_told_with_its_place(string from, string to, string told)
    {
        var text = LearnedFile.Write(Rig, Traits(0.1312, 0.0512), null, Day).Text.Replace(from, to, StringComparison.Ordinal);
        var fault = Assert.Throws<FaultyFileException>(() => LearnedFile.Read("rig.learned.yaml", text)).Faults;
        Assert.Contains(fault, one => one.ToString().StartsWith("rig.learned.yaml:", StringComparison.Ordinal) && one.ToString().Contains(told, StringComparison.Ordinal));
    }

    private static RigTraits Traits(double heat, double deviation) =>
        new([.. RigTraits.Names.Select(name => new RigTrait(name, name == "heat" ? heat : 0, deviation))]);
}
