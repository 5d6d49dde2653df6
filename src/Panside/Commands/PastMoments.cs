using Panside.Guide.Advice;
using Panside.Guide.Debriefing;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Commands;

/// <summary>The moments of a past boil that are worth going to, as lines: its alarms and draws, each with what was forecast then beside what came.</summary>
internal static class PastMoments
{
    /// <summary>The lines.</summary>
    /// <param name="boil">The boil.</param>
    /// <param name="from">The first time that counts; null for the beginning.</param>
    /// <param name="to">The last one; null for the end.</param>
    public static IEnumerable<string> Of(PastBoil boil, DateTimeOffset? from, DateTimeOffset? to)
    {
        var practice = boil.Setting.Header.Practice ? " PRACTICE" : "";
        foreach (var (position, exchange) in boil.Exchanges.Index().Where(one => !(one.Item.At.Time < from) && !(one.Item.At.Time > to)))
        {
            var what = What(boil, exchange).ToList();
            foreach (var words in what)
            {
                yield return $"[{exchange.At.Time:HH:mm}{practice}] {words}";
            }

            foreach (var told in what.Count > 0 ? boil.Told(boil.StateAt(position)) : [])
            {
                yield return $"  {Name(told.Told.Name)}: told {Band(told.Told)}; {(told.Came.StartsWith("after", StringComparison.Ordinal) ? "came " : "")}{told.Came}.";
            }
        }
    }

    private static IEnumerable<string> What(PastBoil boil, PastExchange exchange)
    {
        foreach (var advice in exchange.Answers.OfType<AdviceLine>().Where(line => line.Advice.Urgency is "danger" or "now"))
        {
            yield return LinesOfText.Of([advice]).First();
        }

        if (boil.IsDraw(exchange))
        {
            yield return "A draw.";
        }
    }

    private static string Name(string forecast) => forecast switch
    {
        Forecasts.ToDraw => "Next draw",
        Forecasts.ToLastCharge => "Last charge",
        Forecasts.ToStill => "Pan still",
        _ => "Boils away with no more wood",
    };

    private static string Band(Forecast told) => told is { P5: { } low, P95: { } high }
        ? (told.Unit == Unit.Minute ? "in " : "") + Amount.Range(low, high, told.Unit)
        : "nothing";
}
