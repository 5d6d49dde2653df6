using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Guide.Sessions;
using Panside.Guide.Wording;
using Panside.Practice.Simulation;
using Panside.Screen;

namespace Panside.Tests.Wording;

/// <summary>
/// Every text that is compiled into the program's talking parts, whether or not a conversation brings it about: a new one is
/// measured as soon as it is written. A text with figures is there in the parts between them.
/// </summary>
public sealed partial class LiteralTests
{
    private const int LongestSentence = 30;

    private static readonly Type[] Talking = [typeof(Session), typeof(FullScreen), typeof(PracticeRig), typeof(CommandLine)];

    [Fact]
    public void O18_each_is_of_grade_8_at_the_most_and_no_sentence_is_long()
    {
        foreach (var part in Talking)
        {
            var texts = Texts(part).ToList();
            Assert.InRange(ReadingGrade.Of(texts).Value, -5, 8);
            foreach (var text in texts)
            {
                var grade = ReadingGrade.Of(text);
                Assert.True(grade.Words <= LongestSentence * grade.Sentences, text);
                Assert.True(grade.Sentences < 3 || grade.Value <= 8, $"grade {grade.Value:0.0}: {text}");
            }
        }
    }

    [Fact]
    public void The_texts_of_the_program_are_among_them()
    {
        var texts = Talking.SelectMany(Texts).ToList();
        Assert.Contains("There is nothing to take back.", texts);
        Assert.Contains("This boil is over. Press Enter to leave.", texts);
        Assert.Contains("Nothing was skipped.", texts);
        Assert.InRange(texts.Count, 100, 2000);
    }

    /// <summary>The literals of an assembly that are sentences: some words, and a mark that ends one.</summary>
    private static IEnumerable<string> Texts(Type part)
    {
        using var file = new PEReader(File.OpenRead(part.Assembly.Location));
        var reader = file.GetMetadataReader();
        var texts = new List<string>();
        for (var handle = MetadataTokens.UserStringHandle(1); !handle.IsNil && reader.GetHeapOffset(handle) < reader.GetHeapSize(HeapIndex.UserString); handle = reader.GetNextHandle(handle))
        {
            texts.Add(reader.GetUserString(handle));
        }

        // Rows with gaps in them are a picture, and read by the eye.
        return texts.Where(text => ReadingGrade.WordsIn(text) >= 3 && Sentence().IsMatch(text) && !text.Contains("   ", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^[ A-Za-z'][^<>\\^|=]*[.?!]( |$)")]
    private static partial Regex Sentence();
}
