using Panside.Guide.Answering;

namespace Panside.Screen.Painting;

/// <summary>One page: the words of the trade in what is asked now, what each is and how to measure it.</summary>
internal static class TermsPage
{
    /// <summary>The page, as much of it as fits.</summary>
    public static IReadOnlyList<StyledLine> Of(ScreenPicture picture, int width, int height)
    {
        var terms = TermsOfStep.Of(picture.Setting, picture.State);
        List<StyledLine> rows =
        [
            StyledLine.Of($" WORDS OF THIS STEP{TopRow.Marks(picture, "   ")}   any key goes back", Tone.Bar),
            .. Wrapped(picture.State.Open?.Text ?? "Nothing is asked just now.", width, Tone.Strong),
        ];
        foreach (var term in terms)
        {
            rows.Add(StyledLine.Empty);
            rows.Add(StyledLine.Of($" {term.Name.Replace('-', ' ')}", Tone.Strong));
            rows.AddRange(Wrapped(term.Is, width - 2, Tone.Plain));
            rows.AddRange(term.Measure is { } measure ? Wrapped(measure, width - 2, Tone.Plain) : []);
        }

        if (terms.Count == 0)
        {
            rows.Add(StyledLine.Of(" No word of the trade stands here. 'what is Brix' explains any other."));
        }

        return [.. Enumerable.Range(0, height).Select(index => (index < rows.Count ? rows[index] : StyledLine.Empty).Fit(width))];
    }

    private static IEnumerable<StyledLine> Wrapped(string text, int width, Tone tone) => Wrapping.Rows(text, width - 2).Select(row => StyledLine.Of("  " + row, tone));
}
