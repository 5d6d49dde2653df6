using System.Text.RegularExpressions;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>Doors that do not shut are no leak of the pan: that of the firebox is answered with care, one of the house with nothing.</summary>
internal static partial class Doors
{
    /// <summary>No source; it tells of care and of no way to mend it.</summary>
    private const string OpenDoor = "Door open: flame can roll out, so keep people, sleeves and wood away from it. Put in no wood until it shuts. Keep the pan deep. Nothing is taken.";

    private const string OtherDoor = "Of a door of the house nothing is taken.";

    /// <summary>What it means; null where a line says anything else.</summary>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig: over a burner no door is meant that flame comes out of.</param>
    public static MeansNothing? Understand(string said, Rig rig) =>
        HouseDoor().IsMatch(said) || (rig.IsBurner && Door().IsMatch(said)) ? new(rig.IsBurner ? OtherDoor : OtherDoor + " Of the other say 'firebox door won't shut'.") { IsPlain = true }
        : Door().IsMatch(said) ? new(OpenDoor) { IsPlain = true }
        : null;

    [GeneratedRegex(@"^(?:the |my |our )*(?:front|back|house|shed|barn|sugarhouse|sauna|side|screen|truck|car|garage|cellar|oven|fridge|kitchen) doors?(?:'?s)? (?:(?:is|are|just|it) )*(?:won'?t|will not|doesn'?t|does not|can'?t|not|wont|dont|don'?t) (?:shut|close|latch|open|stay (?:shut|closed))(?: (?:any ?more|now|all the way|right|properly|tight|at all))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HouseDoor();

    [GeneratedRegex(@"^(?:the |my |now |and )*(?:firebox |fire |arch |stove )?doors?(?:'?s)? (?:(?:is|are|just|it) )*(?:won'?t|will not|doesn'?t|does not|can'?t|not|wont|dont|don'?t) (?:shut|close|latch|stay (?:shut|closed))(?:ing)?(?: (?:any ?more|now|all the way|right|properly|tight|at all))*$|^(?:i |we )?(?:can'?t|cannot|couldn'?t|cant) (?:get |)(?:shut|close|latch)? ?(?:the |my )?(?:firebox |fire |arch )?door(?: to)?(?: shut| closed?| latch)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Door();
}
