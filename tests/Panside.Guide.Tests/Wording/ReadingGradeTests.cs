using Panside.Guide.Wording;

namespace Panside.Guide.Tests.Wording;

/// <summary>The grade against examples as they are published with the formula [S38].</summary>
public sealed class ReadingGradeTests
{
    [Fact]
    public void Thirteen_words_of_24_syllables_in_one_sentence_are_of_grade_11_3() =>
        Assert.Equal(11.3, new ReadingGrade(13, 1, 24).Value, 0.05);

    [Fact]
    public void The_easiest_sentence_is_below_every_school()
    {
        var grade = ReadingGrade.Of("The cat sat on the mat.");
        Assert.Equal((6, 1, 6), (grade.Words, grade.Sentences, grade.Syllables));
        Assert.Equal(-1.45, grade.Value, 0.005);
    }

    [Fact]
    public void Sentences_end_with_a_mark_or_with_their_text_and_figures_are_words()
    {
        var grade = ReadingGrade.Of("Why? Tank 11.5 gal; it lasts.", "No mark");
        Assert.Equal((8, 3, 8), (grade.Words, grade.Sentences, grade.Syllables));
    }

    [Fact]
    public void Longer_words_and_longer_sentences_are_harder() => Assert.True(
        ReadingGrade.Of("Residual evaporation of the remaining accumulated heat may subsequently compromise the minimum liquid level.").Value
        > 8 + ReadingGrade.Of("The heat that is left can boil the pan dry.").Value);
}
