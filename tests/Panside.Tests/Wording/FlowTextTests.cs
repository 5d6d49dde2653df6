using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Wording;

namespace Panside.Tests.Wording;

/// <summary>Every text of every flow that is shipped, read as a tired person reads it. There is no list of exceptions.</summary>
public sealed class FlowTextTests
{
    /// <summary>Fewer sentences make no average.</summary>
    private const int Few = 3;

    private const double Grave = 6;
    private const double Elsewhere = 8;

    public static TheoryData<string> Shipped { get; } =
        new(Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "flows"), "*.yaml").Select(Path.GetFileName)!);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O5_O6_O7_O14_every_step_has_one_action_and_no_more_words_than_its_place_has(string file) =>
        Assert.Empty(FlowWording.Of(file, Read(file), Longest.Of));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O18_alarms_and_emergencies_are_of_grade_6_at_the_most_and_all_else_of_8(string file)
    {
        var flow = Read(file);
        var texts = FlowText.Of(flow, Longest.Of);
        Assert.InRange(ReadingGrade.Of(flow.Opening).Value, 0, Elsewhere);
        foreach (var set in texts.GroupBy(text => IsGrave(text) ? "alarms and emergencies" : text.Phase))
        {
            var grade = ReadingGrade.Of(set.SelectMany(text => text.All));
            Assert.True(grade.Value <= (IsGrave(set.First()) ? Grave : Elsewhere), $"{set.Key}: {grade}");
        }

        foreach (var text in texts)
        {
            var grade = ReadingGrade.Of(text.All);
            Assert.True(grade.Sentences < Few || grade.Value <= (IsGrave(text) ? Grave : Elsewhere), $"{text.Id}: grade {grade.Value:0.0} of {string.Join(' ', text.All)}");
        }
    }

    private static bool IsGrave(FlowText text) => text.IsAlarm || text.Phase == "emergency";

    private static Flow Read(string file) => FlowFile.Read(file, RepositoryFiles.Read("flows", file), Vocabularies.Flow);
}
