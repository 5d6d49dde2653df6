using System.Collections.Frozen;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Simulation;

/// <summary>
/// What the instruments show: the truth with a small error of the eye, rounded to the scale. The thermometer has an error of
/// its own that is the same in boiling water and in syrup.
/// </summary>
public sealed class Instruments
{
    private static readonly FrozenDictionary<ReadingName, Func<Instruments, Measure>> Truth = new Dictionary<ReadingName, Func<Instruments, Measure>>
    {
        [ReadingName.TankVolume] = at => new(at._rig.Kit.GaugeHangs ?? at.Makeup.World.GaugedLiters(at.Makeup, at._rig.Truth, at._rig.Tank.Liters), Unit.Liter),
        [ReadingName.PanDepth] = at => new(at._rig.Depth.Meters + at._rig.Kit.RulerOff, Unit.Meter),
        [ReadingName.BackPanDepth] = at => new((at._rig.BackDepth?.Meters ?? 0) + at._rig.Kit.RulerOff, Unit.Meter),
        [ReadingName.DrawTemperature] = at => Celsius(at.Makeup.World.DrawCelsius(at.Makeup, at._rig.Truth) + at.ThermometerOff),
        [ReadingName.BoilingWaterTemperature] = at => Celsius(at.Makeup.Materials.BoilingCelsius + at.ThermometerOff),
        [ReadingName.AirTemperature] = at => Celsius(at.Makeup.AirCelsius),
        [ReadingName.SapBrix] = at => Brix(at._rig.Truth.Tank.Fraction),
        [ReadingName.PanBrix] = at => Brix(at._rig.Truth.Pan.Skip(at.Makeup.BackCells).Aggregate((a, b) => a + b).Fraction),
        [ReadingName.DrawBrix] = at => Brix(at._rig.Truth.Pan[^1].Fraction),
        [ReadingName.SampleTemperature] = at => Celsius(at.Sample() + at.ThermometerOff),
        [ReadingName.HydrometerBrix] = at => Brix((at.Glass() + at._rig.Kit.HydrometerOff) / 100),
        [ReadingName.DrawnVolume] = at => new(at._rig.Pail.Liters, Unit.Liter),
        [ReadingName.StationPressure] = at => new(
            BoilingWater.PressureAt(Temperature.FromCelsius(at.Makeup.Materials.BoilingCelsius)).Kilopascals, Unit.Kilopascal),
    }.ToFrozenDictionary();

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
    public static bool CanRead(ReadingName name) => Truth.ContainsKey(name);

    /// <summary>One reading, in the unit that is asked for.</summary>
    public Measure Read(ReadingName name, Unit? unit = null)
    {
        var shown = unit ?? name.UnitIn(_units);
        var value = _units.Convert(Truth[name](this), shown).Value;
        var (scale, eye) = Scale(name, shown);
        var marks = double.Round((value + (eye * _eye.Normal())) / scale);
        return new(double.Max(double.Round(marks * scale, 3), Least(name.Kind)), shown);
    }

    /// <summary>The smallest step of a scale, and the deviation of an eye's error.</summary>
    internal (double Step, double Eye) Scale(ReadingName name, Unit unit) => Makeup.World.Scale(name, unit) ?? (name.Code, unit) switch
    {
        ("tank-volume", Unit.Gallon) => (0.5, 0.2),
        ("tank-volume", _) => (2, 0.8),
        ("pan-depth" or "back-pan-depth", Unit.Inch) => (0.125, 0.03),
        ("pan-depth" or "back-pan-depth", _) => (0.25, 0.08),
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

    /// <summary>Syrup from the pail in a cup cools at once by some 8 K.</summary>
    private double Sample()
    {
        _sample = _rig.Truth.Pail.Mass > 0.1 ? _rig.Truth.Pail : _rig.Truth.Pan[^1];
        return _sampleCelsius = double.Min(_sample.Celsius(Makeup.Materials) - (8 + _eye.Normal()), 103);
    }

    /// <summary>
    /// A glass made for 60 °F floats lower in what is hot, and has grown by 25 parts in a million for each degree: in a hot cup half a Brix, by
    /// which it floats higher again.
    /// </summary>
    private double Glass()
    {
        if (_sample.Mass == 0)
        {
            Sample();
        }

        var hot = SugarSolution.DensityOf(
            SugarContent.FromMassFraction(double.Min(_sample.Fraction, 0.8)), Temperature.FromCelsius(double.Max(_sampleCelsius, 1)));
        var water = SugarSolution.DensityOf(default, Temperature.FromFahrenheit(60));
        var grown = Density.FromKilogramsPerCubicMeter(hot.KilogramsPerCubicMeter * (1 + (GlassGrows * (_sampleCelsius - CalibratedCelsius))));
        return grown > water ? SugarSolution.SugarContentOf(grown, Temperature.FromFahrenheit(60)).Brix : 0;
    }

    /// <summary>Volume of soda glass a K, from memory of handbooks.</summary>
    private const double GlassGrows = 25e-6;

    private const double CalibratedCelsius = 15.6;

    private static Measure Celsius(double celsius) => new(celsius, Unit.DegreeCelsius);

    private static Measure Brix(double fraction) => new(fraction * 100, Unit.Brix);

    private static double Least(Dimension kind) => kind == Dimension.Temperature ? double.MinValue : 0;
}
