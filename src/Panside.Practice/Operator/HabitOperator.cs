using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Simulation;

namespace Panside.Practice.Operator;

/// <summary>
/// A simulated person who goes by habit and heeds no advice: lights, fires by the clock as long as the tank shows sap, draws by
/// the thermometer, trusts the float, and goes to bed a while after the last wood. Tells what is done, and says yes to every
/// doubt. Common practice warns of each of these habits; how they are mixed has no source.
/// </summary>
public sealed class HabitOperator : IPracticeOperator
{
    private const int LooksEverySeconds = 60;
    private const int TankEverySeconds = 1800;
    private const double DrawsAboveBoilingKelvin = 4.0;

    private readonly PracticeRig _rig;
    private readonly Instruments _instruments;
    private readonly RandomStream _chance;
    private readonly Queue<Func<Moment, LineIn?>> _said = new();
    private readonly double _staysSeconds;
    private readonly double _emptyLiters;
    private long _next = 600;
    private long _tankRead;
    private long _lastWood;
    private double _wait;
    private bool _hasLeft;

    /// <summary>An operator at a rig.</summary>
    public HabitOperator(PracticeRig rig, UnitSystem units, long seed)
    {
        (_rig, _instruments, _chance) = (rig, new(rig, units, seed), RandomStream.For(seed, "habit"));
        _staysSeconds = _chance.Between(600, 1500);
        _emptyLiters = rig.Makeup.Area * _chance.Between(0, 3);
    }

    /// <inheritdoc/>
    public bool IsHeld { get; private set; }

    /// <inheritdoc/>
    public int WoodAskedAfterHold => 0;

    /// <inheritdoc/>
    public long? NextSecond => _said.Count > 0 ? _rig.Second : _rig.Temper.IsAway ? null : _next;

    /// <inheritdoc/>
    public LineIn? Notices(Moment at) => null;

    /// <inheritdoc/>
    public void FireByHabit()
    {
    }

    /// <inheritdoc/>
    public LineIn? Go(long second, Moment at)
    {
        if (_said.Count == 0)
        {
            _next = second + LooksEverySeconds;
            Act(second);
        }

        return _said.TryDequeue(out var line) ? line(at) : null;
    }

    /// <inheritdoc/>
    public void Hear(IReadOnlyList<LineOut> lines, long second)
    {
        if (lines.Any(line => line is QuestionLine))
        {
            _said.Enqueue(at => new Answer(at, AnswerWords.Yes));
        }
    }

    private void Act(long second)
    {
        if (!_rig.IsFired)
        {
            AddWood(second, DeedName.LitFire);
            return;
        }

        Draw();
        if (Sights.Of(_rig, ObservationName.Foam) != "low")
        {
            _rig.AddDefoamer();
        }

        if (second - _tankRead >= TankEverySeconds)
        {
            _tankRead = second;
            IsHeld |= Liters() <= _emptyLiters;
            if (IsHeld && _rig.Makeup.Rig.IsBurner)
            {
                _rig.ShutBurner();
                _said.Enqueue(at => new Did(at, DeedName.ShutOff, null));
            }
        }

        if (!IsHeld && second - _lastWood >= _wait)
        {
            AddWood(second, DeedName.AddWood);
        }
        else if (IsHeld && !_hasLeft && second - _lastWood >= _staysSeconds)
        {
            _hasLeft = true;
            _said.Enqueue(at => new Did(at, DeedName.Leave, null));
        }
    }

    private double Liters() =>
        _rig.Makeup.Rig.Units.Volume(_instruments.Read(ReadingName.TankVolume)).Liters;

    private void AddWood(long second, DeedName name)
    {
        if (_rig.Makeup.Rig.IsBurner)
        {
            if (name == DeedName.LitFire)
            {
                _rig.LightBurner();
                _said.Enqueue(at => new Did(at, name, null));
            }

            _lastWood = second;
            return;
        }

        _rig.AddWood(_rig.Makeup.Rig.Charge * _rig.Temper.Charges * _chance.Factor(0.15));
        (_lastWood, _wait) = (second, _rig.Makeup.Rig.Interval.TotalSeconds * _chance.Factor(0.15));
        _said.Enqueue(at => new Did(at, name, null));
    }

    private void Draw()
    {
        var over = UnitSystem.Temperature(_instruments.Read(ReadingName.DrawTemperature)).Celsius - _rig.Makeup.Materials.BoilingCelsius;
        if (over < DrawsAboveBoilingKelvin || _rig.IsDrawOpen)
        {
            _rig.CloseDraw();
            return;
        }

        _rig.OpenDraw();
    }
}
