using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Physics;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice;

/// <summary>
/// What the instruments show: the truth with a small error of the eye, rounded to the scale. The thermometer has an error of
/// its own that is the same in boiling water and in syrup.
/// </summary>
public sealed class Instruments
{
    private readonly PracticeRig _rig;
    private readonly UnitSystem _units;
    private readonly RandomStream _eye;
    private readonly double _thermometerOff;
    private readonly bool _isFine;
    private Cell _sample;
    private double _sampleCelsius;

    /// <summary>The instruments of a rig.</summary>
    public Instruments(PracticeRig rig, UnitSystem units, long seed)
    {
        (_rig, _units, _eye) = (rig, units, RandomStream.For(seed, "eye"));
        var kit = RandomStream.For(seed, "instruments");
        _thermometerOff = 0.25 * kit.Normal();
        _isFine = kit.Chance(0.5);
    }

    private Makeup Makeup => _rig.Makeup;

    private double ThermometerOff => _thermometerOff + _rig.Kit.ThermometerOff;

    /// <summary>Whether there is an instrument for it: a weather report's pressure has none.</summary>
    public static bool CanRead(ReadingName name) => name != ReadingName.Barometer;

    /// <summary>One reading, in the unit that is asked for.</summary>
    public Measure Read(ReadingName name, Unit? unit = null)
    {
        var shown = unit ?? (name == ReadingName.DrawnVolume ? _units.SmallVolume : _units.Preferred(name.Kind));
        var value = _units.Convert(True(name), shown).Value;
        var (scale, eye) = Scale(name, shown);
        var marks = double.Round((value + (eye * _eye.Normal())) / scale);
        return new(double.Max(double.Round(marks * scale, 3), Least(name.Kind)), shown);
    }

    /// <summary>The smallest step of a scale, and the deviation of an eye's error.</summary>
    internal (double Step, double Eye) Scale(ReadingName name, Unit unit) => (name.Code, unit) switch
    {
        ("tank-volume", Unit.Gallon) => (0.5, 0.2),
        ("tank-volume", _) => (2, 0.8),
        ("pan-depth", Unit.Inch) => (0.125, 0.03),
        ("pan-depth", _) => (0.25, 0.08),
        ("drawn-volume", Unit.Quart) => (0.25, 0.05),
        ("drawn-volume", _) => (0.1, 0.05),
        (_, Unit.DegreeFahrenheit) => (_isFine ? 0.1 : 0.5, 0.1),
        (_, Unit.DegreeCelsius) => (_isFine ? 0.1 : 0.2, 0.05),
        ("sap-brix", _) => (0.1, 0.05),
        ("pan-brix" or "draw-brix", _) => (0.2, 0.1),
        ("hydrometer-brix", _) => (0.5, 0.15),
        (_, Unit.InchOfMercury) => (0.01, 0.01),
        (_, Unit.Hectopascal) => (1, 0.3),
        _ => (0.1, 0.05),
    };

    private Measure True(ReadingName name) => name.Code switch
    {
        "tank-volume" => new(_rig.Kit.GaugeHangs ?? _rig.Tank.Liters, Unit.Liter),
        "pan-depth" => new(_rig.Depth.Meters + _rig.Kit.RulerOff, Unit.Meter),
        "draw-temperature" => Celsius(_rig.Truth.Pan[^1].Celsius(Makeup.Materials) + ThermometerOff),
        "boiling-water-temperature" => Celsius(Makeup.Materials.BoilingCelsius + ThermometerOff),
        "air-temperature" => Celsius(Makeup.AirCelsius),
        "sap-brix" => Brix(_rig.Truth.Tank.Fraction),
        "pan-brix" => Brix(_rig.Truth.Pan.Aggregate((a, b) => a + b).Fraction),
        "draw-brix" => Brix(_rig.Truth.Pan[^1].Fraction),
        "sample-temperature" => Celsius(Sample() + ThermometerOff),
        "hydrometer-brix" => Brix((Glass() + _rig.Kit.HydrometerOff) / 100),
        "drawn-volume" => new(_rig.Pail.Liters, Unit.Liter),
        "station-pressure" => new(
            BoilingWater.PressureAt(Temperature.FromCelsius(Makeup.Materials.BoilingCelsius)).Kilopascals, Unit.Kilopascal),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name.Code, "No instrument of the practice rig reads it."),
    };

    /// <summary>Syrup from the pail in a cup cools at once by some 8 K.</summary>
    private double Sample()
    {
        _sample = _rig.Truth.Pail.Mass > 0.1 ? _rig.Truth.Pail : _rig.Truth.Pan[^1];
        return _sampleCelsius = double.Min(_sample.Celsius(Makeup.Materials) - (8 + _eye.Normal()), 103);
    }

    /// <summary>A glass made for 60 °F floats lower in what is hot; its own expansion is left out, half a tenth of a Brix.</summary>
    private double Glass()
    {
        if (_sample.Mass == 0)
        {
            Sample();
        }

        var hot = SugarSolution.DensityOf(
            SugarContent.FromMassFraction(double.Min(_sample.Fraction, 0.8)), Temperature.FromCelsius(double.Max(_sampleCelsius, 1)));
        var water = SugarSolution.DensityOf(default, Temperature.FromFahrenheit(60));
        return hot > water ? SugarSolution.SugarContentOf(hot, Temperature.FromFahrenheit(60)).Brix : 0;
    }

    private static Measure Celsius(double celsius) => new(celsius, Unit.DegreeCelsius);

    private static Measure Brix(double fraction) => new(fraction * 100, Unit.Brix);

    private static double Least(Dimension kind) => kind == Dimension.Temperature ? double.MinValue : 0;
}
