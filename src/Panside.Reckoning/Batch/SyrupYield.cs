using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>The syrup in a tank of sap: by the sugar that it holds, and by the two rules of the trade.</summary>
/// <remarks>
/// Agreement in volumes of sap for one of syrup: the revised rule within 0.3 % of the mass balance for 66.0 Brix from 1
/// to 20 Brix of sap, and 0.8 % for 66.9; the rule of 86 lies 1.1 % under it at 1 Brix for 66.0, meets it at 4, and
/// lies 7 % over at 20. All take syrup at 20 °C and sap at 38 °F, and none counts what sticks to pan and filter.
/// </remarks>
public static class SyrupYield
{
    private static readonly Temperature SyrupMeasured = Temperature.FromCelsius(20);

    /// <summary>The volume of syrup at 20 °C by a balance of sugar.</summary>
    /// <remarks>Source: [S3] for both densities. Range: sap thinner than the syrup.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The sap is not thinner than the syrup.</exception>
    public static Volume ByMassBalance(Portion sap, SugarContent target) =>
        Finishing.Left(sap, target, SyrupMeasured).Volume;

    /// <summary>The volume of syrup by S = 86 / x, volumes of sap for one of syrup.</summary>
    /// <remarks>
    /// Source: [S27], read as cited. Range: 1 to 20 Brix of sap; made for the thinner syrup of its time.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Volume ByRuleOf86(Volume sap, SugarContent sapContent) => sap * (CheckedBrix(sapContent) / 86);

    /// <summary>The volume of syrup by S = 87.1 / x - 0.32 for 66.0 Brix, or S = 88.2 / x - 0.32 for 66.9.</summary>
    /// <remarks>
    /// Source: [S28], read as cited; the second constant's 0.32 is carried over from the first. Range: 1 to 20 Brix of
    /// sap, and these two targets. On a pure-sucrose balance 88.2 fits 66.5 Brix better than 66.9.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static Volume ByRevisedRule(Volume sap, SugarContent sapContent, SugarContent target)
    {
        double constant = target.Brix switch
        {
            66.0 => 87.1,
            66.9 => 88.2,
            _ => throw OutOfRange.For("The target in Brix", target.Brix, "66.0 or 66.9, as the revised rule is stated"),
        };
        return sap * (1 / ((constant / CheckedBrix(sapContent)) - 0.32));
    }

    private static double CheckedBrix(SugarContent sap) => sap.Brix is >= 1 and <= 20
        ? sap.Brix
        : throw OutOfRange.For("The sap's sugar content in Brix", sap.Brix, "1 to 20 Brix; the mass balance takes any");
}
