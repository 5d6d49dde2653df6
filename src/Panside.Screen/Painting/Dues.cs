using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>Something that will be asked, and when.</summary>
/// <param name="Name">What it is about.</param>
/// <param name="At">When.</param>
/// <param name="Verb">What is done with it; empty where the name says it.</param>
internal readonly record struct Due(string Name, DateTimeOffset At, string Verb = "")
{
    /// <summary>What is to be done: <c>read draw-off</c> is no draw.</summary>
    public string What => Verb.Length > 0 ? $"{Verb} {Name}" : Name;
}

/// <summary>When the things that come back come next.</summary>
internal static class Dues
{
    private const string Watching = "-watch";

    /// <summary>The next charge of wood; null where none is to go in, or another thing comes before it.</summary>
    public static DateTimeOffset? Wood(Situation now) => now.WoodDue is { } due
        && (due > now.State.Now?.Time || now.Setting.Flow.Watches.Any(watch => IsWood(watch) && watch.Given.All(fact => Facts.Holds(now, fact)))) ? due : null;

    /// <summary>What comes first, wood or another thing; null where nothing comes by itself.</summary>
    public static Due? Soonest(Situation now)
    {
        var wood = Wood(now) is { } at ? new Due("wood", at) : (Due?)null;
        var read = Next(now);
        return wood is { } w && read is { } r ? r.At < w.At ? r : w : wood ?? read;
    }

    /// <summary>The next thing that is asked, other than wood; null where nothing comes by itself.</summary>
    public static Due? Next(Situation now)
    {
        if (now.State.Step.Length == 0 || now.State.IsOver)
        {
            return null;
        }

        var step = now.Setting.Flow.Steps[now.State.Step];
        if (step.Ask is not null)
        {
            // While it waits for its time, a watch may be asked.
            return now.State.Open?.Step != step.Id ? new(What(now.Setting, step.Id), Waited(now, step.Id) ?? (now.State.StepSince.Time + step.After)) : null;
        }

        return now.Setting.Flow.Watches
            .Where(watch => step.Watches.Contains(watch.Id) && watch.Id != now.State.Open?.Step && !IsWood(watch)
                && now.Setting.IsThere(watch.Ask) && watch.Given.All(fact => Facts.Holds(now, fact)))
            .Select(watch => (Due?)Of(now.Setting, watch, Waited(now, watch.Id) ?? After(now, watch)))
            .MinBy(due => due!.Value.At);
    }

    /// <summary>A step or watch as a person reads it: <c>foam-watch</c> is to look at the foam, <c>draw-temp</c> to read the draw-off.</summary>
    /// <param name="setting">What the session runs on.</param>
    /// <param name="id">The id of a step or watch.</param>
    public static string What(Setting setting, string id) =>
        setting.Flow.Watches.FirstOrDefault(watch => watch.Id == id) is { } watch ? Of(setting, watch, default).What
        : setting.Flow.Steps.GetValueOrDefault(id)?.Name ?? Name(id);

    /// <summary>What is looked at, as short as its row.</summary>
    private static Due Of(Setting setting, Watch watch, DateTimeOffset at) =>
        setting.Readings.Find(watch.Ask) is { } reading ? new(reading.Row ?? Name(watch.Id), at, "read")
        : ObservationName.FromCode(watch.Ask) is not null ? new(watch.Ask, at, "look at")
        : new(Name(watch.Id), at);

    private static string Name(string id) =>
        (id.EndsWith(Watching, StringComparison.Ordinal) ? id[..^Watching.Length] : id).Replace('-', ' ');

    private static DateTimeOffset After(Situation now, Watch watch) =>
        now.Setting.LastAnswered(watch, now.State) is { } last ? last + now.Setting.Every(watch) : now.State.StepSince.Time;

    private static DateTimeOffset? Waited(Situation now, string id) =>
        now.State.PutOff.TryGetValue(id, out var until) ? until : null;

    private static bool IsWood(Watch watch) => watch.Deed == DeedName.AddWood;
}
