using System.Globalization;

namespace Panside.Screen.Painting;

/// <summary>
/// The last two hours and the next on one axis: readings as heights at their times, wood as ticks, draws as marks, and right of now the bands
/// of what is forecast. Facts in, rows out.
/// </summary>
internal static class TimeAxis
{
    private const int LabelWidth = 10;
    private const int LeastWidth = 40;

    /// <summary>A single row over the clock tells no story.</summary>
    private const int LeastRows = 3;
    private const char Tick = '╵';
    private const char Mark = '◆';
    private const char Likely = '●';
    private const char Further = '►';
    private const char Band = '─';
    private const string Heights = "▁▂▃▄▅▆▇█";

    /// <summary>The rows, the clock under them; none where there is nothing to show or too little room.</summary>
    /// <param name="sight">What is drawn; null for nothing.</param>
    /// <param name="width">Columns.</param>
    /// <param name="most">Rows at the most, the clock's among them: those that matter least go.</param>
    public static IReadOnlyList<string> Rows(TimeSight? sight, int width, int most = int.MaxValue)
    {
        var axis = width - LabelWidth;
        if (sight is null || width < LeastWidth || most < LeastRows || sight.Rows.All(row => row.IsEmpty))
        {
            return [];
        }

        var shown = sight.Rows.Where(row => !row.IsEmpty).OrderBy(row => row.Rank).Take(most - 1).ToHashSet(ReferenceEqualityComparer.Instance);
        return
        [
            .. sight.Rows.Where(shown.Contains).Select(row => (Columns.Pad(row.Name, LabelWidth) + new string(Drawn(row, axis))).TrimEnd()),
            (new string(' ', LabelWidth) + new string(Clock(sight.Now, axis))).TrimEnd(),
        ];
    }

    /// <summary>The column of a minute; outside of the axis where it is further off than that reaches.</summary>
    private static int Column(double minute, int axis) =>
        (int)double.Round((double.Clamp(minute, -1e6, 1e6) + TimeSight.Reach) / (2 * TimeSight.Reach) * (axis - 1));

    private static char[] Drawn(TimeRow row, int axis)
    {
        var signs = new char[axis];
        Array.Fill(signs, ' ');
        void Put(double minute, char sign)
        {
            if (Column(minute, axis) is var column && column >= 0 && column < axis)
            {
                signs[column] = sign;
            }
        }

        Put(0, '│');
        foreach (var (minute, share) in row.Points)
        {
            Put(minute, Heights[int.Clamp((int)double.Round(share * Heights.Length) - 1, 0, Heights.Length - 1)]);
        }

        if (row.Band is { } band)
        {
            for (var column = int.Max(Column(band.Soonest, axis), 0); column <= int.Min(Column(band.Latest, axis), axis - 1); column++)
            {
                signs[column] = Band;
            }

            if (Column(band.Likely, axis) < axis)
            {
                Put(band.Likely, Likely);
            }
            else if (Column(band.Soonest, axis) < axis)
            {
                signs[^1] = Further;
            }

            Write(signs, PlaceOf(row, band, axis), row.Ahead);
        }

        foreach (var minute in row.Ticks)
        {
            Put(minute, Tick);
        }

        foreach (var minute in row.Marks)
        {
            Put(minute, Mark);
        }

        return signs;
    }

    /// <summary>Where it is told what a band is: behind it; before it where it leaves the axis and what stands there leaves room; else nowhere.</summary>
    private static int PlaceOf(TimeRow row, TimeBand band, int axis)
    {
        var (behind, before) = (int.Min(Column(band.Latest, axis), axis - 1) + 2, Column(band.Soonest, axis) - 1 - row.Ahead.Length);
        var taken = row.Ticks.Select(tick => Column(tick, axis)).Append(Column(0, axis)).Max();
        return behind + row.Ahead.Length <= axis ? behind : before > taken + 1 && Column(band.Soonest, axis) < axis ? before : -1;
    }

    private static char[] Clock(DateTimeOffset now, int axis)
    {
        var signs = new char[axis];
        Array.Fill(signs, ' ');
        foreach (var minute in new[] { -TimeSight.Reach, -TimeSight.Reach / 2, TimeSight.Reach / 2, TimeSight.Reach })
        {
            var words = now.AddMinutes(minute).ToString("HH:mm", CultureInfo.InvariantCulture);
            Write(signs, int.Clamp(Column(minute, axis) - (words.Length / 2), 0, axis - words.Length), words);
        }

        Write(signs, Column(0, axis) - 1, "now");
        return signs;
    }

    /// <summary>Writes words where all of them have room.</summary>
    private static void Write(char[] signs, int at, string words)
    {
        if (at >= 0 && at + words.Length <= signs.Length)
        {
            words.CopyTo(signs.AsSpan(at));
        }
    }
}
