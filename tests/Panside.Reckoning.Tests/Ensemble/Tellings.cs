using CsCheck;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>What may be told of a boil, in any order.</summary>
internal static class Tellings
{
    public static readonly Pressure Air = Pressure.FromKilopascals(99.5);

    private static readonly Gen<Func<RigEnsemble, RigEnsemble>> Each = Gen.OneOf(
        Gen.Int[1, 30].Select(minutes => (Func<RigEnsemble, RigEnsemble>)(rig => rig.After(minutes))),
        Gen.Int[1, 60].Select(minutes => (Func<RigEnsemble, RigEnsemble>)(rig => EnsembleRig.Fired(rig, minutes))),
        Gen.Double[1, 10].Select(pounds => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Charged(Mass.FromPounds(pounds)))),
        Gen.Double[0, 60].Select(gallons => (Func<RigEnsemble, RigEnsemble>)(rig => rig.TankRead(Volume.FromUsGallons(gallons)))),
        Gen.Double[0.4, 3].Select(inches => (Func<RigEnsemble, RigEnsemble>)(rig => rig.DepthRead(Length.FromInches(inches), lit: true))),
        Gen.Double[0, 4.5].Select(kelvins => (Func<RigEnsemble, RigEnsemble>)(rig => rig.DrawOffRead(TemperatureRise.FromCelsius(kelvins), Air))),
        Gen.Double[1, 68].Select(brix => (Func<RigEnsemble, RigEnsemble>)(rig => rig.DrawOffRead(SugarContent.FromBrix(brix)))),
        Gen.Double[0.5, 4].Select(quarts => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Drawn(Volume.FromUsQuarts(quarts)))),
        Gen.Double[1, 20].Select(gallons => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Refilled(Volume.FromUsGallons(gallons)))),
        Gen.Enum<BoilSeen>().Select(boil => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Seen(boil))),
        Gen.Enum<CoalsSeen>().Select(coals => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Seen(coals))),
        Gen.Enum<GradientSeen>().Select(gradient => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Seen(gradient))),
        Gen.Const((Func<RigEnsemble, RigEnsemble>)(rig => rig.Flooded())));

    /// <summary>Readings that members explain: others are questioned before they come here.</summary>
    private static readonly Gen<Func<RigEnsemble, RigEnsemble>> Expected = Gen.OneOf(
        Gen.Int[1, 30].Select(minutes => (Func<RigEnsemble, RigEnsemble>)(rig => EnsembleRig.Fired(rig, minutes))),
        Gen.Double[-3, 3].Select(deviate => (Func<RigEnsemble, RigEnsemble>)(rig => rig.TankRead(NearTank(rig, deviate)))),
        Gen.Int[0, 103].Select(member => (Func<RigEnsemble, RigEnsemble>)(rig => rig.DrawOffRead(Shown(rig, member)))),
        Gen.Int[0, 103].Select(member => (Func<RigEnsemble, RigEnsemble>)(
            rig => rig.DrawOffRead(ShownRise(rig, member), Air))),
        Gen.Double[0.5, 2].Select(quarts => (Func<RigEnsemble, RigEnsemble>)(rig => rig.Drawn(Volume.FromUsQuarts(quarts)))));

    /// <summary>A few things told one after the other, however wild.</summary>
    public static readonly Gen<Func<RigEnsemble, RigEnsemble>[]> Few = Each.Array[1, 12];

    /// <summary>A few things told one after the other that members explain.</summary>
    public static readonly Gen<Func<RigEnsemble, RigEnsemble>[]> Likely = Expected.Array[1, 12];

    /// <summary>What the tank may be read at, so many deviations from what is expected.</summary>
    public static Volume NearTank(RigEnsemble rig, double deviate)
    {
        var (mean, deviation) = rig.Expected.Tank!.Value;
        return Volume.FromLiters(double.Max(mean + (deviate * deviation), 0));
    }

    /// <summary>What one member would show at the draw-off.</summary>
    public static SugarContent Shown(RigEnsemble rig, int member) => SugarContent.FromBrix(double.Clamp(100 * Fractions(rig)[member], 1, 80));

    /// <summary>What the thermometer of one member would show there, over boiling water.</summary>
    public static TemperatureRise ShownRise(RigEnsemble rig, int member) => TemperatureRise.FromCelsius(
        BoilingPointElevation.Of(Shown(rig, member), Air).Celsius + rig.Members[Field.ThermometerOff][member]);

    /// <summary>The draw-off's sugar of each member, as a mass fraction.</summary>
    public static double[] Fractions(RigEnsemble rig) => [.. Enumerable.Range(0, rig.Count).Select(member =>
    {
        var sugar = rig.Members.LastSugar[member];
        return sugar / ((rig.Members[Field.Pan][member] / rig.Members.Cells) + (sugar * (1 - RigConstants.SugarLiters)));
    })];

    /// <summary>Tells them to a rig that has been fired for an hour with its tank read.</summary>
    public static RigEnsemble Tell(bool forced, Func<RigEnsemble, RigEnsemble>[] told)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced, 104).TankRead(Volume.FromUsGallons(40)), 60);
        return told.Aggregate(rig, (at, tell) => tell(at));
    }
}
