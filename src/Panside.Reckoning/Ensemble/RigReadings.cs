using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>What was read at tank, ruler and thermometer, each with the error that such a reading has of itself.</summary>
public static class RigReadings
{
    private const double InsistedSpread = 1.5;

    private const double WidestSpread = 2;

    /// <summary>The tank's gauge was read.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="read">What it shows.</param>
    /// <param name="insisted">Whether the operator stands by a reading that no member explains: then the members move to it, and know less.</param>
    public static RigEnsemble TankRead(this RigEnsemble rigs, Volume read, bool insisted = false)
    {
        var error = ReadingErrors.GaugeLiters(rigs.Rig);
        if (!rigs.IsTankKnown)
        {
            return rigs.Changed(
                (members, noise) =>
                {
                    for (var member = 0; member < members.Count; member++)
                    {
                        members[Field.Tank][member] =
                            double.Max(read.Liters - members[Field.GaugeOff][member] + (error * noise[member]), 0);
                    }
                },
                rigs.Common with { IsTankKnown = true });
        }

        if (insisted)
        {
            return rigs.Changed((members, noise) =>
            {
                Widen(rigs, members);
                for (var member = 0; member < members.Count; member++)
                {
                    members[Field.Tank][member] =
                        double.Max(read.Liters - members[Field.GaugeOff][member] + (2 * error * noise[member]), 0);
                }
            });
        }

        return rigs.Changed(members => Assimilation.Read(members, rigs.Expected.Gauges(), read.Liters, error));
    }

    /// <summary>
    /// The pan's depth was read. Under a fire it tells of the pan and of where the float holds it. A depth that is far
    /// off is taken as it is, and the float is taken to hold it there: sap was poured in, the float was set otherwise, or the
    /// feed fails. So is the first one after a flood: it tells how deep was flooded, and nothing of what boiled away before.
    /// </summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="read">What the ruler shows.</param>
    /// <param name="lit">Whether there is a fire: before, the pan's sugar content is kept; after, what is missing is water and what is more is sap.</param>
    public static RigEnsemble DepthRead(this RigEnsemble rigs, Length read, bool lit) => rigs.DepthRead(RuledPan.OfDraw(rigs), read, lit);

    /// <summary>The depth over the flues of the pan behind was read: the same of it, whose float feeds from the tank.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="read">What the ruler shows.</param>
    /// <param name="lit">Whether there is a fire.</param>
    /// <returns>What it comes to; the same where there is no such pan.</returns>
    public static RigEnsemble BackDepthRead(this RigEnsemble rigs, Length read, bool lit) => RuledPan.OfBack(rigs) is { } pan ? rigs.DepthRead(pan, read, lit) : rigs;

    private static RigEnsemble DepthRead(this RigEnsemble rigs, RuledPan pan, Length read, bool lit) =>
        !lit ? rigs.FilledTo(pan, read)
        : pan.IsFloodUnread || rigs.Expected.IsFar(pan, read) ? rigs.SetTo(pan, read)
        : rigs.Changed(members => Assimilation.Read(members, rigs.Expected.Depths(pan), read.Meters, ReadingErrors.RulerMeters));

    private static Common HeldAt(Common common, RuledPan pan, Length depth) =>
        pan.Cells.IsBack ? common with { HeldBackDepth = depth } : common with { HeldDepth = depth };

    /// <summary>A cold pan can be filled higher than its float holds it, and then boils down to it; lower it can only be where the float holds less.</summary>
    private static RigEnsemble FilledTo(this RigEnsemble rigs, RuledPan pan, Length read) => rigs.Changed(
        (members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                var (before, to) = (members.Liters(pan.Cells, member), Reads(pan, read, noise[member]));
                members.SetLiters(pan.Cells, member, to);
                PanDeeds.ScaleSugar(members, member, pan.Cells, to / before);
            }
        },
        rigs.Rig.HasFloat && read > pan.Least && read < pan.Held ? HeldAt(rigs.Common, pan, read) : rigs.Common);

    private static RigEnsemble SetTo(this RigEnsemble rigs, RuledPan pan, Length read)
    {
        var isHeld = rigs.Rig.HasFloat && read > pan.Least;
        var common = isHeld ? HeldAt(rigs.Common, pan, read) : rigs.Common;
        return rigs.Changed(
            (members, noise) =>
            {
                for (var member = 0; member < members.Count; member++)
                {
                    var (before, to) = (members.Liters(pan.Cells, member), Reads(pan, read, noise[member]));
                    if (to - before > ReadingErrors.PouredLiters)
                    {
                        PanDeeds.Pour(members, member, pan.Cells, to - before, rigs.Constants.SapCelsius);
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

    /// <summary>Where water boils today was read at the thermometer, or follows from the pressure.</summary>
    /// <param name="rigs">The ensemble.</param>
    /// <param name="boiling">The temperature.</param>
    /// <param name="read">Whether it was read: then the thermometer's own error is in it, and cancels in each later reading.</param>
    public static RigEnsemble BoilingAt(this RigEnsemble rigs, Temperature boiling, bool read)
    {
        var members = rigs.Members.Copy();
        if (read && !rigs.IsThermometerKnown)
        {
            for (var member = 0; member < members.Count; member++)
            {
                members[Field.ThermometerOff][member] *= Beginning.ReadThermometer / Beginning.UnreadThermometer;
            }
        }

        return new(rigs.Rig, rigs.Prior, boiling, members, rigs.Common with { IsThermometerKnown = rigs.IsThermometerKnown || read })
        {
            Minute = rigs.Minute,
            Told = rigs.Told + 1,
        };
    }

    /// <summary>
    /// The operator stands by something that was not expected: the rig is less like the members than was thought. Their traits
    /// spread by half, and every band with them, up to twice what rigs of this size differ by: however often something is insisted on, a
    /// rig stays a rig.
    /// </summary>
    public static RigEnsemble Insisted(this RigEnsemble rigs) => rigs.Changed(members => Widen(rigs, members));

    private static void Widen(RigEnsemble rigs, Members members)
    {
        var suggested = RigEnsemble.Cold(rigs.Rig, rigs.Boiling, rigs.Prior, rigs.Count).Members;
        Assimilation.Widen(members, InsistedSpread, field => WidestSpread * double.Sqrt(Assimilation.Moments(suggested[field]).Variance));
    }

    private static double Reads(RuledPan pan, Length read, double noise) =>
        double.Max(pan.LitersAt(read + Length.FromMeters(ReadingErrors.RulerMeters * noise)), 0.1);
}
