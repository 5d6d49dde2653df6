using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Tests.Flows;

/// <summary>A slip that makes a file no YAML is told at its own place, with a hint of its own.</summary>
public class YamlSlipTests
{
    [Theory]
    [InlineData("rig: x\nunits: us\npan:\n\tlength: 4 ft\n  width: 2 ft\n", 4, 1, "a tab stands in the indent", "Indent with spaces")]
    [InlineData("rig: x\nunits: us\npan:\n  length: 4 ft\n  \twidth: 2 ft\n", 5, 3, "a tab stands in the indent", "Indent with spaces")]
    [InlineData("rig: x\n\tunits: us\n", 2, 1, "a tab stands in the indent", "Indent with spaces")]
    [InlineData("\trig: x\nunits: us\n", 1, 1, "a tab stands in the indent", "Indent with spaces")]
    [InlineData("rig: x\nunits us\npan: { length: 4 ft }\n", 2, 1, "'units us' has no colon", "A colon and a space")]
    [InlineData("rig: x\npan:\n  length 4 ft\n  width: 2 ft\nfire: {}\n", 3, 3, "'length 4 ft' has no colon", "A colon and a space")]
    [InlineData("rig: x\npan:\n  length: 4 ft\n  width 2 ft # wide\nfire: {}\n", 4, 3, "'width 2 ft' has no colon", "A colon and a space")]
    [InlineData("rig: x\npan\n  length: 4 ft\n  width: 2 ft\n", 2, 1, "'pan' has no colon", "A colon and a space")]
    [InlineData("rig: x\npan:\n  length:4 ft\n  width: 2 ft\nfire: {}\n", 3, 3, "'length:4 ft' has no space behind its colon", "A colon and a space")]
    [InlineData("rig: x\nunits: us\nunits: metric\n", 3, 1, "the key 'units' stands twice", "Leave one of the two out")]
    [InlineData("rig: x\npan:\n  length: 4 ft\n  length: 5 ft\n", 4, 3, "the key 'length' stands twice", "Leave one of the two out")]
    [InlineData("rig: &r x\nunits: us\n", 1, 6, "'&r' makes this part stand elsewhere too", "Write out the part")]
    [InlineData("rig: x\nunits: us\n\0\0\0", 3, 1, "a NUL stands in the file", "Something but an editor wrote it")]
    [InlineData("rig: x\nunits: u\0s\n", 2, 9, "a NUL stands in the file", "Something but an editor wrote it")]
    [InlineData("rig: 'x\nunits: us\n", 1, 6, "While scanning a quoted scalar", "Look for a bracket, a quote")]
    public void It_is_told_where_it_stands_with_what_helps(string text, int line, int column, string wrong, string hint)
    {
        var fault = Assert.Single(Assert.Throws<FaultyFileException>(() => RigFile.Read("r", text)).Faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.StartsWith(wrong, fault.Wrong, StringComparison.Ordinal);
        Assert.StartsWith(hint, fault.Hint, StringComparison.Ordinal);
        Assert.Equal(FaultKind.Yaml, fault.Kind);
    }

    [Fact]
    public void Depths_that_do_not_rise_are_told_with_the_order_they_must_have()
    {
        var fault = Assert.Single(Assert.Throws<FaultyFileException>(() => RigFile.Read(
            "r", "rig: r\nunits: us\npan: { length: 4 ft, width: 2 ft, depth: { run: 1 in, least: 2 in } }\nfire: { draft: natural }\n")).Faults);
        Assert.StartsWith("least < run <= flood < wall", fault.Hint, StringComparison.Ordinal);
    }
}
