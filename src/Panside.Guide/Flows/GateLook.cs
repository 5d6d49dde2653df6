namespace Panside.Guide.Flows;

/// <summary>A look that the gate can want before anybody is clear to leave, and what was seen when it is wanted.</summary>
/// <param name="Spoken">It in words: <c>the coals</c>.</param>
/// <param name="Asks">What may be asked for it, each with what the rig must have for that.</param>
/// <param name="Needs">What the rig must have for the gate to want it; null for every rig.</param>
/// <param name="Names">Asks, actions and beginnings of facts by which a flow shows that it is for such rigs.</param>
/// <param name="Cases">What was seen when it is wanted, and the facts that hold then; <c>not</c> before one that does not.</param>
internal sealed record GateLook(
    string Spoken, IReadOnlyList<(string Ask, string? Has)> Asks, string? Needs, IReadOnlyList<string> Names, IReadOnlyList<(string Seen, string[] Facts)> Cases)
{
    private const string Emptied = "not pan-emptied";

    /// <summary>
    /// All of them, as <c>ClearToLeave</c> wants them. Channels that were seen fading are not among them: what settles those is a deed, stirring,
    /// and an advice tells it.
    /// </summary>
    public static IReadOnlyList<GateLook> All { get; } =
    [
        new("the boil", [("boil", null)], null, [],
        [
            ("never looked at", ["not boil-up", "not boil-rolling", "not boil-still", "not still-counts", Emptied]),
            ("last seen rolling", ["boil-up", "boil-rolling", "not boil-still", "not still-counts", Emptied]),
            ("last seen simmering", ["not boil-up", "not boil-rolling", "not boil-still", "not still-counts", Emptied]),
            ("seen still too soon to count", ["boil-still", "not still-counts", "not boil-up", "not boil-rolling", Emptied]),
        ]),
        new("the coals", [("coals", null)], "burns-wood", ["coals", "add-wood", "spread-coals", "burns-wood"],
        [
            ("never looked at", ["not coals-deep", "not coals-down", "not fire-spent"]),
            ("last seen deep", ["coals-deep", "not coals-down", "not fire-spent"]),
            ("last seen thin", ["not coals-deep", "not coals-down", "not fire-spent"]),
        ]),
        new("the pan's depth", [("pan-depth", null)], null, [],
        [
            ("never read", ["not depth-known", "not depth-since-wood", Emptied]),
            ("not read since the last heat", ["depth-known", "not depth-since-wood", Emptied]),
            ("not read since sap went in", ["depth-known", Emptied]),
        ]),
        new("the back pan's depth", [("back-pan-depth", null)], "has-back-pan", ["back-"],
        [
            ("not read since the last heat", ["not depth-since-wood", Emptied]),
            ("not read since sap went in", ["depth-since-wood", Emptied]),
        ]),
        new("the smell", [("smell", null)], null, [], [("last told scorched", ["smell-scorched"])]),
        new("the foam", [("foam", null)], null, [], [("last seen up", ["foam-up"])]),
        new("the draw-off side", [("gradient", null), ("draw-brix", "has-refractometer"), ("draw-temperature", "has-thermometer")], "has-channels", ["gradient", "channels-", "has-channels"],
        [
            ("nobody has looked at the channels", ["channels-unknown", "draw-side-wanted", "draw-side-unknown", "not gradient-clear", "not gradient-mixed", Emptied]),
            ("the channels were last seen apart", ["gradient-clear", "draw-side-wanted", "draw-side-unknown", "not channels-unknown", "not gradient-mixed", Emptied]),
        ]),
    ];
}
