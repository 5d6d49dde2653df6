using System.Globalization;
using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>What is ahead, on one axis of time that begins now: the likely moment and the band that it may come in.</summary>
internal static class AheadChart
{
    private const int LabelWidth = 11;
    private const double StepMinutes = 30;

    /// <summary>The rows; none where nothing is forecast.</summary>
    public static IReadOnlyList<PanelRow> Of(Situation now, int width)
    {
        var axis = width - LabelWidth - 2;
        var ahead = Ahead(now).ToList();
        if (ahead.Count == 0 || axis < 12 || now.State.Now is not { } at)
        {
            return [];
        }

        var last = ahead.Max(one => one.Latest);
        var span = double.Max(double.Ceiling(last / StepMinutes) * StepMinutes, StepMinutes);
        int Column(double minutes) => int.Clamp((int)double.Round(minutes / span * (axis - 1)), 0, axis - 1);
        var rows = new List<PanelRow> { new(PanelRow.Gap, Tone.Strong, "Ahead: O likely, --- 9 in 10") };
        foreach (var (name, soonest, likely, latest) in ahead)
        {
            var line = new char[axis];
            Array.Fill(line, ' ');
            line[0] = '|';
            for (var column = Column(soonest); column <= Column(latest); column++)
            {
                line[column] = '-';
            }

            line[Column(likely)] = 'O';
            rows.Add(Row(name, new string(line).TrimEnd()));
        }

        rows.Add(Row("", "|" + new string('.', axis - 2) + "|"));
        rows.Add(Row("", Ends("now", Clock(at.Time.AddMinutes(span)), axis)));
        return rows;
    }

    private static IEnumerable<(string Name, double Soonest, double Likely, double Latest)> Ahead(Situation now)
    {
        (string Name, string Forecast)[] all = now.IsEnding || now.IsHeld
            ? [("Boil stops", Forecasts.ToStill)]
            : [("Draw", Forecasts.ToDraw), ("Last wood", Forecasts.ToLastCharge)];
        foreach (var (name, forecast) in TopRow.IsEmergency(now.State, now.Setting) || now.State.IsOver ? [] : all)
        {
            if (Forecasts.One(now, forecast) is { P5: { } soonest, P50: { } likely, P95: { } latest } && double.IsFinite(latest))
            {
                yield return (name, soonest, likely, latest);
            }
        }

        if (now.State.Now is { } at && Dues.Wood(now) is { } wood && !TopRow.IsEmergency(now.State, now.Setting))
        {
            var minutes = double.Max((wood - at.Time).TotalMinutes, 0);
            yield return ("Wood", minutes, minutes, minutes);
        }
    }

    private static PanelRow Row(string name, string line) => PanelRow.Of(PanelRow.Gap, Columns.Pad(name, LabelWidth) + " " + line);

    private static string Ends(string left, string right, int width) => left + right.PadLeft(int.Max(width - left.Length, 0));

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);
}
