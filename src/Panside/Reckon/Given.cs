using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>The inputs of a calculation, read and believed, as the reckoning's own quantities.</summary>
internal sealed class Given(UnitSystem units, IReadOnlyDictionary<string, Value> values)
{
    /// <summary>The units that results are shown in.</summary>
    public UnitSystem Units => units;

    private readonly HashSet<string> _used = [];

    /// <summary>Whether a value was looked at; a usual one that was not is none of the result's business.</summary>
    public bool IsUsed(string name) => _used.Contains(name);

    /// <summary>Whether there is a value, given or usual.</summary>
    public bool Has(string name) => values.ContainsKey(name);

    /// <summary>A value as a person reads it.</summary>
    public string Text(string name) => values[name].ToString();

    /// <summary>A temperature.</summary>
    public Temperature Temperature(string name) => UnitSystem.Temperature(Measure(name));

    /// <summary>A sugar content.</summary>
    public SugarContent Sugar(string name) => UnitSystem.Sugar(Measure(name));

    /// <summary>A pressure.</summary>
    public Pressure Pressure(string name) => UnitSystem.Pressure(Measure(name));

    /// <summary>A length.</summary>
    public Length Length(string name) => UnitSystem.Length(Measure(name));

    /// <summary>A volume.</summary>
    public Volume Volume(string name) => units.Volume(Measure(name));

    /// <summary>A mass.</summary>
    public Mass Mass(string name) => UnitSystem.Mass(Measure(name));

    /// <summary>A volume a time.</summary>
    public VolumeRate Rate(string name)
    {
        var rate = Measure(name);
        var hour = rate.Unit == Unit.GallonPerHour ? Unit.Gallon : Unit.Liter;
        return VolumeRate.FromLitersPerHour(units.Volume(new(rate.Value, hour)).Liters);
    }

    /// <summary>A share, in percent.</summary>
    public double Percent(string name) => Measure(name).Value;

    /// <summary>Degrees Baume.</summary>
    public double Baume(string name) => Value(name).Baume!.Value;

    /// <summary>A word of those to choose from.</summary>
    public string Word(string name) => Value(name).Word!;

    private Measure Measure(string name) => Value(name).Measure!.Value;

    private Value Value(string name)
    {
        _used.Add(name);
        return values[name];
    }
}
