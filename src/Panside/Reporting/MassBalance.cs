using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Reporting;

/// <summary>What sap would give as syrup, by the sugar that it holds.</summary>
internal static class MassBalance
{
    /// <summary>Sap as it is measured, as the rules of yield take it: 38 °F.</summary>
    private static readonly Temperature SapMeasured = Temperature.FromFahrenheit(38);

    /// <summary>The syrup in the sap of a boil; null where sap or its sugar is not known, or no sap was used.</summary>
    public static Volume? Syrup(Outcome? outcome, UnitSystem units, SugarContent target)
    {
        if (outcome is not { SapUsed: { } used, SapBrix: { } brix } || used.Value <= 0
            || UnitSystem.Sugar(brix) is not { Brix: > 0 } sugar || sugar >= target)
        {
            return null;
        }

        return SyrupYield.ByMassBalance(Portion.OfVolume(units.Volume(used), sugar, SapMeasured), target);
    }
}
