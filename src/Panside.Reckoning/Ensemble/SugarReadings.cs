using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What was read of the sugar in pan and sap, each with the error that such a reading has of itself.</summary>
public static class SugarReadings
{
    /// <summary>Sweeter than this no cell is taken to be: sugar would come out.</summary>
    private const double MostFraction = 0.77;

    /// <summary>
    /// So far on the way from sap to what stands in front the pan behind is left, on the mean: by the balance of sugar over a boil with
    /// draws a quarter to a third; give or take as much as that is worth. No source.
    /// </summary>
    private const double LeftBehind = 0.3;

    /// <summary>Its deviation, as a logarithm.</summary>
    private const double LeftBehindSpread = 0.4;

    /// <summary>The thermometer at the draw-off stands so far over boiling water today.</summary>
    public static RigEnsemble DrawOffRead(this RigEnsemble rigs, TemperatureRise overBoilingWater, Pressure station)
    {
        var rises = new RiseTable(station);
        return rigs.Changed((members, noise) =>
        {
            var predicted = new double[members.Count];
            for (var member = 0; member < members.Count; member++)
            {
                predicted[member] = rises.Of(members.LastFraction(member)) + members[Field.ThermometerOff][member];
            }

            var (shows, isFar) = DrawOffShows(members, predicted, overBoilingWater.Celsius, ReadingErrors.ThermometerEye, noise);
            for (var member = 0; member < members.Count; member++)
            {
                SetLastFraction(members, member, rigs.Rig, rises.FractionAt(shows[member] - members[Field.ThermometerOff][member]), isFar);
            }
        });
    }

    /// <summary>A cooled sample from the draw-off side was read with a refractometer.</summary>
    public static RigEnsemble DrawOffRead(this RigEnsemble rigs, SugarContent sample) => rigs.Changed((members, noise) =>
    {
        var predicted = new double[members.Count];
        for (var member = 0; member < members.Count; member++)
        {
            predicted[member] = 100 * members.LastFraction(member);
        }

        var (shows, isFar) = DrawOffShows(members, predicted, sample.Brix, ReadingErrors.SampleBrix(sample.Brix), noise);
        for (var member = 0; member < members.Count; member++)
        {
            SetLastFraction(members, member, rigs.Rig, shows[member] / 100, isFar);
        }
    });

    /// <summary>A sample stirred from the whole pan where the draw-off is was read.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="sample">What the refractometer shows.</param>
    /// <param name="isLeft">Whether it was left there by the last boil. Then the pan behind was left on its way to it: not known, but no raw sap.</param>
    public static RigEnsemble PanSugarRead(this RigEnsemble rigs, SugarContent sample, bool isLeft = false) => rigs.Changed((members, noise) =>
    {
        var left = isLeft && rigs.Rig.Back is not null ? Beginning.Noise(members.Count, rigs.Told, purpose: 1) : null;
        for (var member = 0; member < members.Count; member++)
        {
            var fraction = double.Clamp(sample.MassFraction * double.Exp(0.04 * noise[member]), 0, 0.8);
            var sugar = members.SugarOf(members.Front, member);
            if (sugar > 1e-6)
            {
                var wanted = members[members.DrawPan][member] * RigConstants.KilogramsOfSap(fraction) * fraction;
                PanDeeds.ScaleSugar(members, member, members.Front, wanted / sugar);
            }

            if (left is not null)
            {
                var sap = members[Field.Sap][member];
                PanDeeds.SetSugar(members, member, members.Back, double.Max(sap + ((fraction - sap) * LeftBehind * double.Exp(LeftBehindSpread * left[member])), sap));
            }
        }
    });

    /// <summary>The raw sap's sugar was read.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="read">The reading.</param>
    /// <param name="fillsPan">Whether the pan holds nothing else yet.</param>
    public static RigEnsemble SapRead(this RigEnsemble rigs, SugarContent read, bool fillsPan) => rigs.Changed((members, noise) =>
    {
        for (var member = 0; member < members.Count; member++)
        {
            members[Field.Sap][member] = double.Max(read.MassFraction + (0.001 * noise[member]), 0.001);
            if (fillsPan)
            {
                PanDeeds.SetSugar(members, member, members[Field.Sap][member]);
            }
        }
    });

    /// <summary>
    /// What each member is to show at the draw-off. A reading that no member comes near, as of a pan left sweeter than anyone
    /// said, is taken as it is: neither the thermometer nor the mixing could be so far off.
    /// </summary>
    private static (double[] Shows, bool IsFar) DrawOffShows(Members members, double[] predicted, double read, double error, double[] noise) =>
        Assimilation.IsFar(predicted, read, error)
            ? ([.. noise.Select(by => read + (error * by))], true)
            : (Assimilation.Read(members, predicted, read, error, ofSugarOnly: true), false);

    /// <summary>
    /// What stands at the draw-off is set outright: it bends with its sugar, so that a regression would miss what was read, and
    /// in a long tail even spread it.
    /// </summary>
    private static void SetLastFraction(Members members, int member, RigDescription rig, double fraction, bool isFar)
    {
        var most = double.Clamp(fraction, 0, MostFraction);
        members.LastSugar[member] = most * members[members.DrawPan][member] / members.Front.Count * RigConstants.KilogramsOfSap(most);
        if (isFar && rig.Back is not null)
        {
            PanDeeds.LeadUpThroughBoth(members, member, rig.BoiledInFront);
        }
        else if (isFar)
        {
            PanDeeds.LeadUpToLast(members, member);
        }
    }
}
