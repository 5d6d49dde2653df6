using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Journal;

namespace Panside.Reporting;

/// <summary>
/// What one boil was told ahead, beside what came, in minutes from when it was told. The record alone says it: a deed or a look that was taken
/// back later may stand in it.
/// </summary>
/// <param name="What">Which forecast.</param>
/// <param name="Soonest">The 5 % of it.</param>
/// <param name="Likely">The 50 %.</param>
/// <param name="Latest">The 95 %.</param>
/// <param name="CameAfter">When it came at the soonest: what is only looked at may have come since the look before.</param>
/// <param name="Came">When it came, or was seen.</param>
internal sealed record ToldAhead(ToldAhead.Kind What, double Soonest, double Likely, double Latest, double CameAfter, double Came)
{
    /// <summary>A draw and a last charge that are nearer than this share of the time asked for were not told ahead.</summary>
    private const double LeastOfLead = 1.0 / 3;

    /// <summary>The forecasts that are told.</summary>
    internal enum Kind
    {
        /// <summary>The last wood, or the shut-off, told about an hour before.</summary>
        LastWood,

        /// <summary>The first draw, told about half an hour before.</summary>
        FirstDraw,

        /// <summary>The boil's end, told at the last wood.</summary>
        Still,
    }

    /// <summary>How far the middle was from what came; nothing within what the looks leave open.</summary>
    public double Miss => double.Max(double.Max(CameAfter - Likely, Likely - Came), 0);

    /// <summary>Whether the band of 9 in 10 held what came.</summary>
    public bool IsHeld => Latest >= CameAfter && Soonest <= Came;

    /// <summary>All that a record tells of a boil; none of one that has no end.</summary>
    /// <param name="glance">The record.</param>
    /// <param name="firedHours">From lighting to the last wood, as the outcome has it; null where it does not say.</param>
    public static IEnumerable<ToldAhead> Of(RecordGlance glance, double? firedHours)
    {
        if (glance.Said.OfType<Did>().FirstOrDefault(did => did.Name == DeedName.OpenDraw || did.Name == DeedName.CloseDraw) is { } draw
            && Before(glance, Forecasts.ToDraw, draw.At.Time, lead: 30) is var (drawTold, toDraw))
        {
            yield return At(Kind.FirstDraw, toDraw, drawTold, draw.At.Time, draw.At.Time);
        }

        if (firedHours is not { } hours || glance.Said.OfType<Did>().LastOrDefault(did => did.Name == DeedName.LitFire) is not { } lit)
        {
            yield break;
        }

        var heat = lit.At.Time.AddHours(hours);
        if (!IsByOwnWord(glance) && Before(glance, Forecasts.ToLastCharge, heat, lead: 60) is var (woodTold, toWood))
        {
            yield return At(Kind.LastWood, toWood, woodTold, heat, heat);
        }

        var looks = glance.Said.OfType<Observed>().Where(seen => seen.Name == ObservationName.Boil).ToList();
        if (Told(glance, Forecasts.ToStill).FirstOrDefault(one => one.At >= heat) is { Told: { } toStill, At: var stillTold }
            && looks.FindIndex(look => look.At.Time > stillTold && look.Is == "still") is >= 0 and var still)
        {
            var after = still > 0 && looks[still - 1].At.Time > stillTold ? looks[still - 1].At.Time : stillTold;
            yield return At(Kind.Still, toStill, stillTold, after, looks[still].At.Time);
        }
    }

    /// <summary>Whether the operator ended the firing with a word of the flow: then the last wood came when it was wished, not when it had to.</summary>
    private static bool IsByOwnWord(RecordGlance glance) =>
        glance.Answers.OfType<PhaseLine>().LastOrDefault(line => line.Phase == "shutdown") is { At: { } at } && glance.Said.OfType<Text>().Any(said => said.At == at);

    /// <summary>The telling that was nearest to so many minutes before something came; null where none was so far ahead.</summary>
    private static (DateTimeOffset At, Forecast Told)? Before(RecordGlance glance, string name, DateTimeOffset came, double lead) => Told(glance, name)
        .Where(one => (came - one.At).TotalMinutes >= lead * LeastOfLead)
        .OrderBy(one => double.Abs((came - one.At).TotalMinutes - lead))
        .Select(one => ((DateTimeOffset, Forecast)?)one)
        .FirstOrDefault();

    private static IEnumerable<(DateTimeOffset At, Forecast Told)> Told(RecordGlance glance, string name) => glance.Answers.OfType<ForecastLine>()
        .Where(line => line.Forecast.Name == name && line is { At: not null, Forecast: { P5: not null, P50: not null, P95: not null } })
        .Select(line => (line.At!.Value.Time, line.Forecast));

    private static ToldAhead At(Kind what, Forecast told, DateTimeOffset at, DateTimeOffset after, DateTimeOffset came) =>
        new(what, told.P5!.Value, told.P50!.Value, told.P95!.Value, (after - at).TotalMinutes, (came - at).TotalMinutes);
}
