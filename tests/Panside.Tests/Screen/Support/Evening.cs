using Microsoft.Extensions.Time.Testing;

namespace Panside.Tests.Screen.Support;

/// <summary>An invented evening in the sugarhouse.</summary>
internal static class Evening
{
    private static readonly string[] ToTheFire =
    [
        "yes", "yes", "no", "depth 1 1/2", "yes", "yes", "tank 30", "sap 2.1", "yes",
    ];

    private static readonly string[] ToTheBoil =
    [
        "yes", "lit", "@7", "rolling", "water 211.5", "wood", "@8", "wood", "@7", "clear", "@1", "draw 213", "wood", "tank 27",
        "depth 1.5", "low", "@8", "draw 214.8", "wood", "@5", "tank 24", "@3", "wood", "draw 216", "@2", "depth 1 1/2", "low", "rolling",
    ];

    private static readonly string[] ToTheDraw = ["@6", "wood", "tank 21.5", "depth 1 1/2", "@3", "draw 219.5"];

    private static readonly string[] ToTheSyrup = ["yes", "@2", "drew 1.5 qt", "sample 180", "hydrometer 60.8", "yes"];

    private static readonly string[] ToTheLastCharge =
    [
        "@5", "wood", "@4", "tank 18.5", "draw 214", "@4", "wood", "depth 1 1/2", "low", "@8", "tank 15", "wood", "@4", "draw 215", "@4",
        "wood", "@3", "tank 11.5", "depth 1 1/2", "low", "@5", "wood", "draw 216", "shutdown",
    ];

    private static readonly string[] ToTheWait = ["yes", "yes", "yes", "@9", "spread", "yes", "flooded", "depth 2.4", "simmering", "tank 7", "thin", "clear", "@9"];

    private static readonly string[] ToTheEnd =
    [
        "@8", "depth 2 1/2", "still", "@4", "spent", "gone", "tank 6.5", "covered", "yes", "depth 2.5", "yes", "no", "@4",
    ];

    /// <summary>The moments that are worth a picture, each with the lines that lead to it.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Scenes { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        ["start-up"] = ToTheFire,
        ["steady-boil"] = [.. ToTheFire, .. ToTheBoil],
        ["draw-off"] = [.. ToTheFire, .. ToTheBoil, .. ToTheDraw],
        ["last-charge"] = [.. ToTheFire, .. ToTheBoil, .. ToTheDraw, .. ToTheSyrup, .. ToTheLastCharge],
        ["shutdown"] = [.. ToTheFire, .. ToTheBoil, .. ToTheDraw, .. ToTheSyrup, .. ToTheLastCharge, .. ToTheWait],
        ["clear"] = [.. ToTheFire, .. ToTheBoil, .. ToTheDraw, .. ToTheSyrup, .. ToTheLastCharge, .. ToTheWait, .. ToTheEnd],
        ["over"] = [.. ToTheFire, .. ToTheBoil, .. ToTheDraw, .. ToTheSyrup, .. ToTheLastCharge, .. ToTheWait, .. ToTheEnd, "leave"],
        ["emergency"] = [.. ToTheFire, .. ToTheBoil, "emergency"],
        ["dry-pan"] = [.. ToTheFire, .. ToTheBoil, "emergency", "dry"],
        ["help"] = [.. ToTheFire, .. ToTheBoil],
        ["large"] = [.. ToTheFire, .. ToTheBoil],
        ["question"] = [.. ToTheFire, .. ToTheBoil, "tank 3"],
    };

    /// <summary>A clock that stands at its beginning.</summary>
    public static FakeTimeProvider Clock()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5)).ToUniversalTime());
        clock.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("sugarhouse", TimeSpan.FromHours(-5), "sugarhouse", "sugarhouse"));
        return clock;
    }
}
