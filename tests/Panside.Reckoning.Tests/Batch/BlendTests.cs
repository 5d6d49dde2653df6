using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class BlendTests
{
    private static readonly Gen<Portion> Portions = Gen.Select(Gen.Double[0.1, 100], Gen.Double[0, 85], Gen.Double[1, 105], Of);

    [Fact]
    public void Equal_masses_meet_in_the_middle()
    {
        Portion one = Portion.OfMass(Mass.FromKilograms(3), SugarContent.FromBrix(70), Temperature.FromCelsius(20));
        Portion other = Portion.OfMass(Mass.FromKilograms(3), SugarContent.FromBrix(60), Temperature.FromCelsius(20));
        Within.Relative(1e-12).Holds(65, Blend.Of(one, other).SugarContent.Brix);
        Within.Relative(1e-12).Holds(20, Blend.Of(one, other).Temperature.Celsius);
    }

    [Fact]
    public void Mass_and_sugar_are_kept_and_order_does_not_matter() =>
        Gen.Select(Portions, Portions).Holds((one, other) =>
        {
            Portion both = Blend.Of(one, other);
            Portion turned = Blend.Of(other, one);
            return Near(both.Mass.Kilograms, (one.Mass + other.Mass).Kilograms)
                && Near(both.Sugar.Kilograms, (one.Sugar + other.Sugar).Kilograms)
                && Near(both.SugarContent.Brix, turned.SugarContent.Brix)
                && Near(both.Temperature.Celsius, turned.Temperature.Celsius);
        });

    [Fact]
    public void A_blend_lies_between_its_parts() =>
        Gen.Select(Portions, Portions).Holds((one, other) =>
        {
            Portion both = Blend.Of(one, other);
            return Between(both.SugarContent.Brix, one.SugarContent.Brix, other.SugarContent.Brix)
                && Between(both.Temperature.Celsius, one.Temperature.Celsius, other.Temperature.Celsius);
        });

    [Fact]
    public void The_thinner_that_is_asked_for_hits_the_target() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[67.5, 80], Gen.Double[60, 67], Gen.Double[0, 59], Gen.Double[1, 105])
            .Holds((liters, heavy, target, thinner, t) =>
            {
                Portion batch = Of(liters, heavy, t);
                Portion added = Blend.ThinnerToAdd(
                    batch, SugarContent.FromBrix(target), SugarContent.FromBrix(thinner), Temperature.FromCelsius(90));
                return Near(Blend.Of(batch, added).SugarContent.Brix, target);
            });

    [Fact]
    public void A_gallon_half_a_Brix_heavy_takes_an_ounce_and_a_quarter_of_sap()
    {
        Portion gallon = Portion.OfVolume(Volume.FromUsGallons(1), SugarContent.FromBrix(67.4), Temperature.FromCelsius(20));
        Portion sap = Blend.ThinnerToAdd(gallon, SugarContent.FromBrix(66.9), SugarContent.FromBrix(2), Temperature.FromFahrenheit(38));
        Within.Relative(0.01).Holds(1.025, sap.Volume / gallon.Volume * 100);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Portion batch = Of(1, 67, 20);
        Assert.Throws<ArgumentOutOfRangeException>(() => Thin(batch, 67, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Thin(batch, 66, 66));
        Assert.Throws<ArgumentOutOfRangeException>(() => Blend.Of(Of(0, 67, 20), Of(0, 2, 20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(-1, 67, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(1, 86, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(1, 67, 111));
    }

    private static Portion Thin(Portion batch, double target, double thinner) => Blend.ThinnerToAdd(
        batch, SugarContent.FromBrix(target), SugarContent.FromBrix(thinner), Temperature.FromCelsius(20));

    private static Portion Of(double liters, double brix, double celsius) =>
        Portion.OfVolume(Volume.FromLiters(liters), SugarContent.FromBrix(brix), Temperature.FromCelsius(celsius));

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(1, Math.Abs(other));

    private static bool Between(double x, double one, double other) =>
        x >= Math.Min(one, other) - 1e-9 && x <= Math.Max(one, other) + 1e-9;
}
