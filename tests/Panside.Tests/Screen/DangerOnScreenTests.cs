using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>Whoever cries out reads the right first line at once, wherever the boil stands and however large the terminal is.</summary>
public sealed class DangerOnScreenTests
{
    private const int FirstWords = 30;

    /// <summary>No step and no danger hangs on how many possible rigs are reckoned with.</summary>
    private const int FewMembers = 16;

    private static readonly (string Danger, string Cry)[] Cries =
    [
        ("fire", "the roof is on fire"),
        ("smoke", "I feel dizzy"),
        ("faint", "he passed out"),
        ("hurt", "I scalded my arm"),
        ("dry", "it's boiling dry"),
        ("scorch", "the syrup is scorching"),
        ("foam", "foam is going over the side"),
        ("chimney", "chimney on fire"),
        ("stack", "the stack fell over"),
        ("float", "no sap is coming in"),
        ("leak", "the pan is leaking"),
        ("away", "I have to go right now"),
        ("emergency", "something is wrong"),
    ];

    /// <summary>How many lines of an evening have been said.</summary>
    private static readonly int[] Moments = [0, 3, 6, 9, 11, 37, 43, 47, 73, 77, 86, 92, 99];

    /// <summary>One evening, stopped at each moment: what is cried is taken back before it goes on.</summary>
    [Fact]
    public void S9_one_cry_leads_to_what_to_do_first_at_every_step_and_size()
    {
        using var stage = Begun();
        var (said, steps, sizes) = (0, new HashSet<string>(), (Now: (Width: 80, Height: 24), Other: (Width: 120, Height: 40)));
        foreach (var moment in Moments)
        {
            stage.Play(Evening.Scenes["over"].Skip(said).Take(moment - said));
            said = moment;
            var step = stage.Door.State.Step;
            steps.Add(step);
            foreach (var (danger, cry) in Cries)
            {
                stage.Type(cry);
                AssertToldFirst(stage, danger, cry);
                sizes = (sizes.Other, sizes.Now);
                stage.Resize(sizes.Now.Width, sizes.Now.Height);
                AssertToldFirst(stage, danger, cry);
                stage.Type("undo");
                Assert.Equal(step, stage.Door.State.Step);
            }
        }

        Assert.True(steps.Count >= 10, string.Join(", ", steps));
    }

    private static Stage Begun() => new(played: new Played(door: new SessionDoor(SessionDoor.BuiltIn().With(FewMembers))));

    private static void AssertToldFirst(Stage stage, string danger, string cry)
    {
        var flow = stage.Door.Setting.Flow;
        var text = flow.Steps[flow.Dangers.Single(known => known.Code == danger).Go].Text.Split('{')[0];
        var first = text[..int.Min(text.Length, FirstWords)].TrimEnd();
        Assert.True(stage.Text.Contains(first, StringComparison.Ordinal), $"'{cry}': '{first}' is not on the screen:\n{stage.Text}");
    }
}
