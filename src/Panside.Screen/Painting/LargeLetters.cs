using System.Collections.Frozen;
using System.Text;

namespace Panside.Screen.Painting;

/// <summary>Letters and figures five rows high, for reading across a sugarhouse.</summary>
internal static class LargeLetters
{
    /// <summary>Rows of a letter.</summary>
    public const int Height = 5;

    private const int Between = 1;

    private static readonly FrozenDictionary<char, string[]> Shapes = new Dictionary<char, string>
    {
        ['A'] = ".###.|#...#|#####|#...#|#...#",
        ['B'] = "####.|#...#|####.|#...#|####.",
        ['C'] = ".####|#....|#....|#....|.####",
        ['D'] = "####.|#...#|#...#|#...#|####.",
        ['E'] = "#####|#....|####.|#....|#####",
        ['F'] = "#####|#....|####.|#....|#....",
        ['G'] = ".####|#....|#..##|#...#|.####",
        ['H'] = "#...#|#...#|#####|#...#|#...#",
        ['I'] = "###|.#.|.#.|.#.|###",
        ['J'] = "..###|...#.|...#.|#..#.|.##..",
        ['K'] = "#...#|#..#.|###..|#..#.|#...#",
        ['L'] = "#....|#....|#....|#....|#####",
        ['M'] = "#...#|##.##|#.#.#|#...#|#...#",
        ['N'] = "#...#|##..#|#.#.#|#..##|#...#",
        ['O'] = ".###.|#...#|#...#|#...#|.###.",
        ['P'] = "####.|#...#|####.|#....|#....",
        ['Q'] = ".###.|#...#|#.#.#|#..#.|.##.#",
        ['R'] = "####.|#...#|####.|#..#.|#...#",
        ['S'] = ".####|#....|.###.|....#|####.",
        ['T'] = "#####|..#..|..#..|..#..|..#..",
        ['U'] = "#...#|#...#|#...#|#...#|.###.",
        ['V'] = "#...#|#...#|#...#|.#.#.|..#..",
        ['W'] = "#...#|#...#|#.#.#|##.##|#...#",
        ['X'] = "#...#|.#.#.|..#..|.#.#.|#...#",
        ['Y'] = "#...#|.#.#.|..#..|..#..|..#..",
        ['Z'] = "#####|...#.|..#..|.#...|#####",
        ['0'] = ".###.|#..##|#.#.#|##..#|.###.",
        ['1'] = ".#.|##.|.#.|.#.|###",
        ['2'] = "####.|....#|.###.|#....|#####",
        ['3'] = "####.|....#|.###.|....#|####.",
        ['4'] = "#..#.|#..#.|#####|...#.|...#.",
        ['5'] = "#####|#....|####.|....#|####.",
        ['6'] = ".###.|#....|####.|#...#|.###.",
        ['7'] = "#####|...#.|..#..|.#...|.#...",
        ['8'] = ".###.|#...#|.###.|#...#|.###.",
        ['9'] = ".###.|#...#|.####|....#|.###.",
        [' '] = "...|...|...|...|...",
        [':'] = ".|#|.|#|.",
        ['.'] = ".|.|.|.|#",
        ['/'] = "....#|...#.|..#..|.#...|#....",
        ['-'] = "....|....|####|....|....",
    }.ToFrozenDictionary(shape => shape.Key, shape => shape.Value.Split('|'));

    /// <summary>Columns that a text takes.</summary>
    public static int WidthOf(string text) => int.Max(Known(text).Sum(shape => shape[0].Length + Between) - Between, 0);

    /// <summary>The rows of a text; a sign that has no shape is left out.</summary>
    /// <param name="text">The text, in capitals or not.</param>
    /// <param name="ink">What a letter is made of.</param>
    public static IReadOnlyList<string> Rows(string text, char ink)
    {
        var rows = Enumerable.Range(0, Height).Select(_ => new StringBuilder()).ToArray();
        foreach (var shape in Known(text))
        {
            for (var row = 0; row < Height; row++)
            {
                rows[row].Append(rows[row].Length > 0 ? " " : "").Append(shape[row].Replace('.', ' ').Replace('#', ink));
            }
        }

        return [.. rows.Select(row => row.ToString())];
    }

    private static IEnumerable<string[]> Known(string text) =>
        text.ToUpperInvariant().Where(Shapes.ContainsKey).Select(letter => Shapes[letter]);
}
