using Panside.Commands;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Wording;

/// <summary>The longest that each figure was in an evening, in every system of units: what a text must have room for.</summary>
internal static class Longest
{
    private static readonly string[] Units = ["us", "metric", "imperial"];

    /// <summary>Before the fire, with a draw due, at the last charge and at the end.</summary>
    private static readonly string[] Moments = ["start-up", "draw-off", "last-charge", "clear"];

    /// <summary>The advice that names these holds within half an hour of them only.</summary>
    private static readonly string[] Near = ["minutes-to-last-charge", "minutes-to-last-charge-soonest"];

    private static readonly Lazy<Dictionary<string, string>> All = new(() =>
    {
        var rig = Library.BuiltIn("rigs/" + Library.BuiltInRig);
        var states = Moments.Select(scene => Played.Scene(scene).Talk.State).ToList();
        var situations = Units.SelectMany(units =>
        {
            var setting = new Setting(
                Library.Flow(null), RigFile.Read(Library.BuiltInRig, rig.Replace("units: us", "units: " + units, StringComparison.Ordinal)),
                Guidance.Beginner, "panside test");
            return states.Select(state => new Situation(setting, state));
        }).ToList();
        return Figures.Names.ToDictionary(
            name => name,
            name => Near.Contains(name) ? "30 minutes" : situations.Select(now => Figures.Of(now, name)).MaxBy(shown => (shown.Split(' ').Length, shown.Length))!);
    });

    public static string Of(string figure) => All.Value[figure];
}
