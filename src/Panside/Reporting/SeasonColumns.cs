using System.Globalization;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Reporting;

/// <summary>One column of the season's book.</summary>
/// <param name="Key">Its name for programs.</param>
/// <param name="Title">Its name for a person.</param>
/// <param name="Unit">Its unit's code; empty where it has none.</param>
/// <param name="Digits">Decimals that a person sees.</param>
/// <param name="Of">The value for one boil; null where it is not known.</param>
/// <param name="Total">The value for the season; null where there is none.</param>
internal sealed record SeasonColumn(string Key, string Title, string Unit, int Digits, Func<BookedBoil, double?> Of, double? Total)
{
    /// <summary>Over the column.</summary>
    public string Head => Unit.Length > 0 ? $"{Title}, {Unit}" : Title;

    /// <summary>A value as a person sees it; empty where it is not known.</summary>
    public string Shown(double? value) => value?.ToString("F" + Digits, CultureInfo.InvariantCulture) ?? "";
}

/// <summary>The columns of the book, in the units of the newest boil's rig.</summary>
internal static class SeasonColumns
{
    /// <summary>The columns.</summary>
    public static IReadOnlyList<SeasonColumn> Of(SeasonBook book)
    {
        var units = book.Units;
        var (volume, mass, rate) = (units.Preferred(Dimension.Volume).Code(), units.Preferred(Dimension.Mass).Code(), units.Preferred(Dimension.VolumeRate).Code());
        double? Volumes(Volume? liters) => liters is { } known ? units.From(known).Value : null;
        double? Rate(double? liters) => liters is { } known ? units.From(VolumeRate.FromLitersPerHour(known)).Value : null;
        double? PerVolume(double? kilograms) => kilograms is { } known
            ? units.From(Mass.FromKilograms(known)).Value / units.From(Volume.FromLiters(1)).Value
            : null;
        SeasonColumn Sum(string key, string title, string unit, int digits, Func<BookedBoil, double?> of) => new(key, title, unit, digits, of, book.Sum(of));
        return
        [
            Sum("sap", "sap", volume, 1, boil => Volumes(boil.Sap)),
            new("sap-brix", "sap", "Brix", 1, boil => boil.SapBrix, book.Ratio(boil => boil.SapBrix * boil.Sap?.Liters, boil => boil.SapBrix is null ? null : boil.Sap?.Liters)),
            Sum("syrup", "syrup", volume, 2, boil => Volumes(boil.Syrup)),
            new("syrup-brix", "syrup", "Brix", 1, boil => boil.SyrupBrix, book.Ratio(boil => boil.SyrupBrix * boil.Syrup?.Liters, boil => boil.SyrupBrix is null ? null : boil.Syrup?.Liters)),
            Sum("syrup-by-balance", "in that sap", volume, 2, boil => Volumes(boil.Balance)),
            new("yield", "yield", "%", 0, boil => boil.Balance is { Liters: > 0 } balance ? 100 * boil.Syrup?.Liters / balance.Liters : null, 100 * book.Ratio(boil => boil.Syrup?.Liters, boil => boil.Balance?.Liters)),
            Sum("hours", "time", "h", 1, boil => boil.Hours),
            Sum("wood", "wood", mass, 0, boil => boil.Wood is { } wood ? units.From(wood).Value : null),
            Sum("water", "water boiled", volume, 1, boil => Volumes(boil.Water)),
            new("rate", "rate", rate, 1, boil => Rate(boil.LitersPerHour), Rate(book.Ratio(boil => boil.Water?.Liters, boil => boil.FiredHours))),
            new("wood-per-water", "wood for water", $"{mass}/{volume}", 2, boil => PerVolume(boil.KilogramsPerLiter), PerVolume(book.Ratio(boil => boil.Wood?.Kilograms, boil => boil.Water?.Liters))),
            new("wood-per-syrup", "wood for syrup", $"{mass}/{volume}", 0, boil => PerVolume(boil.KilogramsPerSyrup), PerVolume(WoodForSyrup(book))),
        ];
    }

    /// <summary>All wood beside all syrup, boils without a draw too: a pan that one boil leaves sweet is drawn from at the next. In kilograms a liter; null where nothing was drawn.</summary>
    private static double? WoodForSyrup(SeasonBook book)
    {
        var both = book.Boils.Where(boil => boil.Wood is not null && boil.Syrup is not null).ToList();
        var syrup = both.Sum(boil => boil.Syrup!.Value.Liters);
        return syrup > 0 ? both.Sum(boil => boil.Wood!.Value.Kilograms) / syrup : null;
    }
}
