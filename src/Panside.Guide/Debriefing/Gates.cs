using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Debriefing;

/// <summary>The safety gates of a session: what must hold whatever else was gained.</summary>
/// <param name="Name">What had to hold.</param>
/// <param name="Missed">How it was missed, in few words; null where it was kept.</param>
/// <param name="NextTime">What keeps it next time.</param>
internal sealed record Gate(string Name, string? Missed, string NextTime)
{
    /// <summary>All of them for a session, the gravest first.</summary>
    public static IReadOnlyList<Gate> Of(Course course, SessionState state, Setting setting)
    {
        var now = new Situation(setting, state);
        Gate[] gates =
        [
            new("no scorched smell", course.Scorched is { } smell ? $"it smelled scorched at {Clock(smell)}" : null,
                "At the first strange smell pour sap in, then think. Clean the pan before it boils again."),
            new("pan never under its least depth",
                course.Shallowest is { } low && low.Depth < setting.Rig.LeastDepth
                    ? $"the pan stood at {Amount.Shown(setting.Units.From(low.Depth))} at {Clock(low.At)}"
                    : BackLow(state, setting),
                $"{Feeding(setting.Rig.Feed)}, and read the depth when asked."),
            new(setting.Rig.OfFire("no wood after the last charge", "off once it was shut off"), course.WoodAfter > 0 ? $"{course.WoodAfter} more went in" : null,
                setting.Rig.OfFire("Once wood is held, leave it held: each charge wants sap of its own.", "Once it is off, leave it off.")),
            new("pan flooded", Facts.Holds(now, "pan-flooded") ? null : "the pan was not flooded", "Flood the pan while the tank still has sap."),
            new(setting.Rig.OfFire("coals and boil seen down", "boil seen still, burner off"), Facts.Holds(now, "boil-still") && Facts.Holds(now, "coals-down") ? null : setting.Rig.OfFire("the last look did not find them down", "the last look did not find it so"),
                setting.Rig.OfFire("Look at coals and boil before you go.", "Look at burner and boil before you go.")),
            new("left when it was clear", state.IsSafe ? null : "it was not clear to leave", "Stay until it is clear, or have somebody stay."),
        ];

        // Of a boil brought in from a table nobody was asked whether it was clear to leave.
        return setting.Header.Imported && !state.IsSafe ? gates[..^1] : gates;
    }

    private static string? BackLow(SessionState state, Setting setting)
    {
        if (setting.Rig.Back is not { } back || state.Last(DeedName.LitFire) is not { } lit || !state.Readings.TryGetValue(ReadingName.BackPanDepth, out var read))
        {
            return null;
        }

        return read.Where(one => one.At.Time >= lit.At.Time && UnitSystem.Length(one.Value) < back.LeastDepth)
            .Select(one => $"the back pan stood at {Amount.Shown(one.Value)} at {Clock(one.At)}")
            .FirstOrDefault();
    }

    private static string Feeding(Rigs.Feed feed) => feed switch
    {
        Rigs.Feed.ByFloat => "Look at float and valve with each charge",
        Rigs.Feed.ByValve => "Set the feed valve by the depth",
        _ => "Pour little and often",
    };

    private static string Clock(Moment at) => at.Time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
