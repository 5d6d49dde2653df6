using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;

namespace Panside.Guide.Hearing;

/// <summary>Hears cries, each of the danger that a rig and the thing named in it make of it.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed partial class CryListener(Setting setting)
{
    /// <summary>The cry that a line is; null where it is none.</summary>
    /// <param name="text">The line.</param>
    public MeansCry? Hear(string text) => setting.Flow.Ear.Value.Hear(text) is { } cry && !(IsFaint(cry.Hazards) && NeedleStands().IsMatch(text))
        ? new(IsFaint(cry.Hazards) && LevelStands().IsMatch(text) ? [.. cry.Hazards.Select(OfLevel)]
            : NamesBackPan(text) ? [.. cry.Hazards.Select(OfBackPan)]
            : DrawOff().IsMatch(text) ? [.. cry.Hazards.Select(OfDrawOff)]
            : NothingLeft.IsSapIn(text) ? [.. cry.Hazards.Select(OfEmptyTank).Distinct()]
            : cry.Hazards, cry.IsSure)
        : null;

    private static bool IsFaint(IReadOnlyList<string> hazards) => hazards is ["faint", ..];

    /// <summary>No float hangs where there is no sap.</summary>
    private static string OfEmptyTank(string danger) => danger == "float" ? "dry" : danger;

    /// <summary>A tank that does not move is no person: its float or its gauge stands.</summary>
    private string OfLevel(string danger) => danger == "faint" ? InFlow("float", danger) : danger;

    /// <summary>A float does not hang at the draw-off: what is stuck there is the valve.</summary>
    private string OfDrawOff(string danger) => danger == "float" ? InFlow("stuck", danger) : danger;

    /// <summary>A cry that names the pan behind is of that pan.</summary>
    private string OfBackPan(string danger) => danger == "dry" ? InFlow("bare", danger) : danger;

    private string InFlow(string danger, string or) => setting.Flow.Dangers.Any(known => known.Code == danger) ? danger : or;

    private bool NamesBackPan(string text) => setting.Rig.Back is not null && BackPan().IsMatch(text);

    [GeneratedRegex(@"\b(back|rear|flue) ?pan\b|\bpan (behind|in the back)\b|\b(back|rear) (is|runs|goes|bare|dry|low)\b", RegexOptions.IgnoreCase)]
    private static partial Regex BackPan();

    /// <summary>A level that stands still; whoever else is named beside it is not this.</summary>
    [GeneratedRegex(@"^(?:the |my |head |sap |and |but |now |hey )*(?:tank|tank level|tank gauge|gauge|level|float|sight glass|sap)(?:'s)? .*\b(?:mov|budg|chang|drop|fall|going)\w*(?: (?:down|at all|any ?more|now|either))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LevelStands();

    /// <summary>The same of an instrument.</summary>
    [GeneratedRegex(@"^(?:the |my |and |but |now |hey )*(?:thermometer|needle|dial|temp|temperature|hydrometer|clock|screen)(?:'s)? .*\b(?:mov|budg|chang|going)\w*(?: (?:up|down|at all|any ?more|now|either))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NeedleStands();

    /// <summary>The draw-off and its valve, where neither float nor feed is spoken of.</summary>
    [GeneratedRegex(@"^(?!.*\b(?:float|feed)\b).*(?:\bdraw[ -]?off\b|\b(?:draw|syrup) (?:valve|tap)\b|\bspigot\b|\bfaucet\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex DrawOff();
}
