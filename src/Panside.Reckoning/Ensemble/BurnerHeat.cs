using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What a burner gives.</summary>
public static class BurnerHeat
{
    /// <summary>What one gives in some time that boils away so much in an hour: <see cref="FireConstants.BurnerMegajoulesPerLiter"/>, no source.</summary>
    /// <param name="boils">What it boils away of sap.</param>
    /// <param name="time">How long it is on.</param>
    public static Energy Of(VolumeRate boils, TimeSpan time) =>
        Energy.FromMegajoules(boils.LitersPerHour * time.TotalHours * FireConstants.BurnerMegajoulesPerLiter);
}
