using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class HotPackTests
{
    private static readonly SugarContent Syrup = SugarContent.FromBrix(66.9);
    private static readonly Temperature Shelf = Temperature.FromFahrenheit(68);
    private static readonly Volume Quart = Volume.FromUsQuarts(1);

    [Fact]
    public void Every_row_of_contraction_agrees_to_its_last_digit() =>
        Within.Absolute(0.051).HoldsOver(Figures.Compare(
            "contraction",
            "percent",
            r => 100 * HotPack.ContractionFraction(Syrup, Temperature.FromFahrenheit(r["from_F"]), Shelf)));

    [Fact]
    public void A_gallon_on_the_shelf_fills_four_quarts_and_a_gallon_hot_only_three()
    {
        Temperature hot = Temperature.FromFahrenheit(185);
        Portion onShelf = Portion.OfVolume(Volume.FromUsGallons(1), Syrup, Shelf);
        Assert.Equal(4, HotPack.Fill(onShelf.At(hot), Quart, Shelf).Filled);
        ContainerFill fill = HotPack.Fill(Portion.OfVolume(Volume.FromUsGallons(1), Syrup, hot), Quart, Shelf);
        Assert.Equal(3, fill.Filled);
        Within.Absolute(0.001).Holds(1.030, fill.HotVolumeOfEach.UsQuarts);
    }

    [Fact]
    public void Full_containers_and_the_rest_make_up_the_batch_and_the_rest_fills_none() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0.05, 20], Gen.Double[60, 72], Gen.Double[70, 100]).Holds((liters, each, brix, t) =>
        {
            Portion batch = Portion.OfVolume(Volume.FromLiters(liters), SugarContent.FromBrix(brix), Temperature.FromCelsius(t));
            ContainerFill fill = HotPack.Fill(batch, Volume.FromLiters(each), Shelf);
            double whole = (fill.HotVolumeOfEach.Liters * fill.Filled) + fill.HotVolumeLeft.Liters;
            return Math.Abs(whole - liters) < 1e-6 * Math.Max(1, liters) && fill.HotVolumeLeft < fill.HotVolumeOfEach;
        });

    [Fact]
    public void Hotter_packing_shrinks_more() =>
        Gen.Select(Gen.Double[20, 104], Gen.Double[0.01, 1]).Holds((t, more) => Fraction(t + more) > Fraction(t));

    [Fact]
    public void Cooling_that_warms_and_containers_of_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fraction(19));
        Portion batch = Portion.OfVolume(Quart, Syrup, Shelf);
        Assert.Throws<ArgumentOutOfRangeException>(() => HotPack.Fill(batch, Volume.FromLiters(0), Shelf));
        Assert.Throws<ArgumentOutOfRangeException>(() => HotPack.Fill(batch, Volume.FromLiters(-1), Shelf));
    }

    private static double Fraction(double celsius) => HotPack.ContractionFraction(Syrup, Temperature.FromCelsius(celsius), Shelf);
}
