namespace Panside.Reckon;

/// <summary>Everything that <c>panside reckon</c> can tell.</summary>
internal static class Calculations
{
    /// <summary>In groups, as they are listed.</summary>
    public static IReadOnlyList<Group> Groups { get; } =
    [
        FinishTable.Group, InstrumentTable.Group, BatchTable.Group, SyrupTable.Group, WeatherTable.Group, PropertyTable.Group, FireTable.Group,
    ];

    /// <summary>All of them.</summary>
    public static IEnumerable<Calculation> All => Groups.SelectMany(group => group.Calculations);
}
