using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What was read, each with the error that such a reading has of itself.</summary>
public sealed partial class RigEnsemble
{
    /// <summary>An eye at a tank's gauge and its marks, in liters: the larger the tank, the coarser. Common practice, no source.</summary>
    private double GaugeLiters => Rig.Tank is { } tank ? double.Max(LeastGaugeLiters, GaugeShare * tank.Liters) : 1.0;

    private const double LeastGaugeLiters = 0.7;

    private const double GaugeShare = 0.01;

    /// <summary>A ruler in a boiling pan, read to the eighth of an inch.</summary>
    private const double RulerMeters = 0.0015;

    /// <summary>So many deviations over what is reckoned a depth is no matter of the ruler.</summary>
    private const double FarOverDepth = 3.5;

    /// <summary>So many under it: much sooner, since a failing feed burns the pan, and a pan is never to be believed deeper than it is.</summary>
    private const double FarUnderDepth = 2;

    /// <summary>A deeper pan by less than this is the ruler's doing, and no sap poured in.</summary>
    private const double PouredLiters = 4;

    /// <summary>Sweeter than this no cell is taken to be: sugar would come out.</summary>
    private const double MostFraction = 0.77;

    /// <summary>The eye at a thermometer, in K; what it is off by all evening is a number of the members.</summary>
    private const double ThermometerEye = 0.08;

    /// <summary>
    /// So far on the way from sap to what stands in front the pan behind is left, on the mean: by the balance of sugar over a boil with
    /// draws a quarter to a third; give or take as much as that is worth. No source.
    /// </summary>
    private const double LeftBehind = 0.3;

    /// <summary>Its deviation, as a logarithm.</summary>
    private const double LeftBehindSpread = 0.4;

    /// <summary>Whether no member explains a reading of the tank.</summary>
    public bool IsFar(Volume tank) => IsTankKnown && Assimilation.IsFar(Gauge(), tank.Liters, GaugeLiters);

    /// <summary>What the tank's gauge would show: mean and standard deviation of a reading, in liters; null before the first.</summary>
    public (double Mean, double Deviation)? ExpectedTank
    {
        get
        {
            if (!IsTankKnown)
            {
                return null;
            }

            var (mean, variance) = Assimilation.Moments(Gauge());
            return (mean, double.Sqrt(variance + (GaugeLiters * GaugeLiters)));
        }
    }

    /// <summary>The tank's gauge was read.</summary>
    /// <param name="read">What it shows.</param>
    /// <param name="insisted">Whether the operator stands by a reading that no member explains: then the members move to it, and know less.</param>
    public RigEnsemble TankRead(Volume read, bool insisted = false)
    {
        if (!IsTankKnown)
        {
            return Changed(
                (members, noise) =>
                {
                    for (var member = 0; member < members.Count; member++)
                    {
                        members[Field.Tank][member] =
                            double.Max(read.Liters - members[Field.GaugeOff][member] + (GaugeLiters * noise[member]), 0);
                    }
                },
                Common with { IsTankKnown = true });
        }

        if (insisted)
        {
            return Changed((members, noise) =>
            {
                Widen(members);
                for (var member = 0; member < members.Count; member++)
                {
                    members[Field.Tank][member] =
                        double.Max(read.Liters - members[Field.GaugeOff][member] + (2 * GaugeLiters * noise[member]), 0);
                }
            });
        }

        return Changed(members => Assimilation.Read(members, Gauge(), read.Liters, GaugeLiters));
    }

    /// <summary>
    /// The pan's depth was read. Under a fire it tells of the pan and of where the float holds it. A depth that is far
    /// off is taken as it is, and the float is taken to hold it there: sap was poured in, the float was set otherwise, or the
    /// feed fails. So is the first one after a flood: it tells how deep was flooded, and nothing of what boiled away before.
    /// </summary>
    /// <param name="read">What the ruler shows.</param>
    /// <param name="lit">Whether there is a fire: before, the pan's sugar content is kept; after, what is missing is water and what is more is sap.</param>
    public RigEnsemble DepthRead(Length read, bool lit) => DepthRead(DrawPan, read, lit);

    /// <summary>The depth over the flues of the pan behind was read: the same of it, whose float feeds from the tank.</summary>
    /// <param name="read">What the ruler shows.</param>
    /// <param name="lit">Whether there is a fire.</param>
    /// <returns>What it comes to; the same where there is no such pan.</returns>
    public RigEnsemble BackDepthRead(Length read, bool lit) => PanBehind is { } pan ? DepthRead(pan, read, lit) : this;

    private RigEnsemble DepthRead(RuledPan pan, Length read, bool lit) =>
        !lit ? FilledTo(pan, read)
        : pan.IsFloodUnread || IsFarDepth(pan, read) ? SetTo(pan, read)
        : Changed(members => Assimilation.Read(members, Depths(pan), read.Meters, RulerMeters));

    private RuledPan DrawPan => new(Members.Front, Rig.PanArea, default, Rig.LeastDepth, HeldDepth, Members.DrawPanOff, Common.IsFloodUnread);

    private RuledPan? PanBehind => Rig.Back is not { } back
        ? null
        : new(Members.Back, back.Area, back.InFlues, back.LeastDepth, Common.HeldBackDepth, Field.FloatOff, Common.IsBackFloodUnread);

    private Common HeldAt(RuledPan pan, Length depth) =>
        pan.Cells.IsBack ? Common with { HeldBackDepth = depth } : Common with { HeldDepth = depth };

    /// <summary>A cold pan can be filled higher than its float holds it, and then boils down to it; lower it can only be where the float holds less.</summary>
    private RigEnsemble FilledTo(RuledPan pan, Length read) => Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                var (before, to) = (members.Liters(pan.Cells, member), Reads(pan, read, noise[member]));
                members.SetLiters(pan.Cells, member, to);
                PanDeeds.ScaleSugar(members, member, pan.Cells, to / before);
            }
        },
        Rig.HasFloat && read > pan.Least && read < pan.Held ? HeldAt(pan, read) : Common);

    private RigEnsemble SetTo(RuledPan pan, Length read)
    {
        var isHeld = Rig.HasFloat && read > pan.Least;
        var common = isHeld ? HeldAt(pan, read) : Common;
        return Changed(
            (members, noise) =>
            {
                for (var member = 0; member < members.Count; member++)
                {
                    var (before, to) = (members.Liters(pan.Cells, member), Reads(pan, read, noise[member]));
                    if (to - before > PouredLiters)
                    {
                        PanDeeds.Pour(members, member, pan.Cells, to - before, Constants.SapCelsius);
                    }
                    else
                    {
                        members.SetLiters(pan.Cells, member, to);
                    }

                    members[pan.FloatOff][member] = isHeld ? to - pan.LitersAt(read) : members[pan.FloatOff][member];
                }
            },
            pan.Cells.IsBack ? common with { IsBackFloodUnread = false } : common with { IsFloodUnread = false });
    }

    /// <summary>Whether a depth is so far over what is reckoned, and by so much, that sap was poured in which nobody told of.</summary>
    /// <param name="read">What the ruler shows.</param>
    public bool IsFilled(Length read) =>
        IsFarDepth(DrawPan, read) && (Rig.PanArea * (read - Length.FromMeters(Assimilation.Moments(Depths(DrawPan)).Mean))).Liters > PouredLiters;

    private bool IsFarDepth(RuledPan pan, Length read)
    {
        var (mean, variance) = Assimilation.Moments(Depths(pan));
        var deviation = double.Sqrt(variance + (RulerMeters * RulerMeters));
        return read.Meters > mean + (FarOverDepth * deviation) || read.Meters < mean - (FarUnderDepth * deviation);
    }

    /// <summary>The depth of a pan in each member, over its flues, in meters.</summary>
    private double[] Depths(RuledPan pan)
    {
        var depths = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            depths[member] = pan.DepthOf(Members.Liters(pan.Cells, member));
        }

        return depths;
    }

    private static double Reads(RuledPan pan, Length read, double noise) =>
        double.Max(pan.LitersAt(read + Length.FromMeters(RulerMeters * noise)), 0.1);

    /// <summary>The thermometer at the draw-off stands so far over boiling water today.</summary>
    public RigEnsemble DrawOffRead(TemperatureRise overBoilingWater, Pressure station)
    {
        var rises = new RiseTable(station);
        return Changed((members, noise) =>
        {
            var predicted = new double[members.Count];
            for (var member = 0; member < members.Count; member++)
            {
                predicted[member] = rises.Of(LastFraction(members, member)) + members[Field.ThermometerOff][member];
            }

            var (shows, isFar) = DrawOffShows(members, predicted, overBoilingWater.Celsius, ThermometerEye, noise);
            for (var member = 0; member < members.Count; member++)
            {
                SetLastFraction(members, member, rises.FractionAt(shows[member] - members[Field.ThermometerOff][member]), isFar);
            }
        });
    }

    /// <summary>A cooled sample from the draw-off side was read with a refractometer.</summary>
    public RigEnsemble DrawOffRead(SugarContent sample) => Changed((members, noise) =>
    {
        var predicted = new double[members.Count];
        for (var member = 0; member < members.Count; member++)
        {
            predicted[member] = 100 * LastFraction(members, member);
        }

        var (shows, isFar) = DrawOffShows(members, predicted, sample.Brix, 0.5 + (0.02 * sample.Brix), noise);
        for (var member = 0; member < members.Count; member++)
        {
            SetLastFraction(members, member, shows[member] / 100, isFar);
        }
    });

    /// <summary>A sample stirred from the whole pan where the draw-off is was read.</summary>
    /// <param name="sample">What the refractometer shows.</param>
    /// <param name="isLeft">Whether it was left there by the last boil. Then the pan behind was left on its way to it: not known, but no raw sap.</param>
    public RigEnsemble PanSugarRead(SugarContent sample, bool isLeft = false) => Changed((members, noise) =>
    {
        var left = isLeft && Rig.Back is not null ? Beginning.Noise(members.Count, Told, purpose: 1) : null;
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
    /// <param name="read">The reading.</param>
    /// <param name="fillsPan">Whether the pan holds nothing else yet.</param>
    public RigEnsemble SapRead(SugarContent read, bool fillsPan) => Changed((members, noise) =>
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

    private static double LastFraction(Members members, int member) =>
        FractionOf(members.LastSugar[member], members[members.DrawPan][member] / members.Front.Count);

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
    private void SetLastFraction(Members members, int member, double fraction, bool isFar)
    {
        var most = double.Clamp(fraction, 0, MostFraction);
        members.LastSugar[member] = most * members[members.DrawPan][member] / members.Front.Count * RigConstants.KilogramsOfSap(most);
        if (isFar && Rig.Back is not null)
        {
            PanDeeds.LeadUpThroughBoth(members, member, Rig.BoiledInFront);
        }
        else if (isFar)
        {
            PanDeeds.LeadUpToLast(members, member);
        }
    }

    private double[] Gauge()
    {
        var gauge = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            gauge[member] = Members[Field.Tank][member] + Members[Field.GaugeOff][member];
        }

        return gauge;
    }
}
