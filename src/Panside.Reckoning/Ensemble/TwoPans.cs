using System.Numerics;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// Two pans through a run, for as many members as a vector is wide: what each holds, what goes on from the one behind to the one in
/// front, and the sugar with it. Water and sugar are kept; heat is that of both together.
/// </summary>
internal struct TwoPans
{
    /// <summary>Part of a cell that can pass on in a step: with what it exchanges with two neighbors, never more than all of it.</summary>
    private const double MostPassed = 1 - (2 * Stepping.MostExchanged);

    private readonly int _backCells;
    private readonly Vector<double> _boiledInFront;
    private readonly Vector<double> _heldFront;
    private readonly Vector<double> _heldBack;
    private readonly Vector<double> _flues;
    private readonly double _areaInFront;
    private readonly double _stillsBack;
    private readonly double _stillsFront;

    private Vector<double> _backLeft;
    private Vector<double> _frontLeft;
    private Vector<double> _flow;

    /// <summary>For the members at a place.</summary>
    public TwoPans(Members members, in RigConstants rig, in Run run, int at)
    {
        _backCells = rig.BackCells;
        _boiledInFront = new(rig.BoiledInFront);
        _flues = new(rig.FlueLiters);
        _areaInFront = rig.AreaInFront;
        var full = Stepping.HalvingFeed * rig.FullFeed * run.StepMinutes;
        (_stillsBack, _stillsFront) = (1 / full, 1 / (full * rig.BoiledInFront));
        (_heldFront, _heldBack) = (Held(members, members.DrawPanOff, run.HeldLiters, at), Held(members, Field.FloatOff, run.HeldBackLiters, at));
        Front = new(members[members.DrawPan], at);
        FrontUnfed = Front;
        (Back, _backLeft, _frontLeft, _flow) = (new Vector<double>(members[Field.Pan], at) - Front, default, default, default);
    }

    /// <summary>Liters in the pan where the draw-off is.</summary>
    public Vector<double> Front { get; private set; }

    /// <summary>Liters in the pan behind.</summary>
    public Vector<double> Back { get; private set; }

    /// <summary>Liters that would be in the pan where the draw-off is if nothing had come into it since the run began.</summary>
    public Vector<double> FrontUnfed { get; private set; }

    /// <summary>Water leaves both, and the second float lets on what the pan in front lacks, as far as the one behind has it over its flues.</summary>
    /// <param name="left">Liters left in both.</param>
    /// <param name="gone">Liters of water gone from both.</param>
    /// <returns>What the tank's float would let in for it.</returns>
    public Vector<double> Falls(Vector<double> left, Vector<double> gone)
    {
        // A pan that is dry gives off nothing: the other one gives it all then.
        var fromFront = Vector.MinNative(Vector.MaxNative(gone * _boiledInFront, gone - Back), Front);
        _frontLeft = Front - fromFront;
        _backLeft = Vector.MaxNative(left - _frontLeft, Vector<double>.Zero);
        FrontUnfed = Vector.MaxNative(FrontUnfed - fromFront, Vector<double>.Zero);
        var lacks = Vector.MaxNative(_heldFront - _frontLeft, Vector<double>.Zero);
        _flow = Vector.MinNative(lacks, Vector.MaxNative(_backLeft - _flues, Vector<double>.Zero));
        return Vector.MaxNative(_heldBack - (_backLeft - _flow), Vector<double>.Zero);
    }

    /// <summary>So much comes in from the tank.</summary>
    public void Rises(Vector<double> fed)
    {
        Front = _frontLeft + _flow;
        Back = _backLeft - _flow + fed;
    }

    /// <summary>Sugar moves with it, cell by cell through both.</summary>
    /// <param name="sugar">Of each cell, in kg.</param>
    /// <param name="fed">Liters from the tank.</param>
    /// <param name="comes">Sugar in them.</param>
    /// <param name="mixing">Exchange between neighbors in a step without feed, in liters times all cells.</param>
    public readonly void Move(Span<Vector<double>> sugar, Vector<double> fed, Vector<double> comes, Vector<double> mixing)
    {
        var back = sugar[.._backCells];
        var front = sugar[_backCells..];
        var each = mixing / sugar.Length;
        var on = Through(back, _backLeft, fed, _flow, comes, each * ((1 - _areaInFront) * back.Length), _stillsBack);
        Through(front, _frontLeft, _flow, Vector<double>.Zero, on, each * (_areaInFront * front.Length), _stillsFront);
    }

    /// <summary>
    /// Through one pan whose cells stand equally high and lose the same: with f in and g out, what passes on falls evenly from f to g
    /// along it, so that out of cell i of n goes f - (f - g)(i + 1)/n.
    /// </summary>
    /// <returns>Sugar that leaves its last cell.</returns>
    private static Vector<double> Through(
        Span<Vector<double>> sugar, Vector<double> left, Vector<double> enters, Vector<double> leaves, Vector<double> comes, Vector<double> mixing, double stills)
    {
        var cells = sugar.Length;
        var liters = Vector.MaxNative(left, new Vector<double>(1e-6));
        var exchange = Vector.MinNative(mixing / (liters + (liters * enters * stills)), new Vector<double>(Stepping.MostExchanged));
        for (var cell = 0; cell < cells; cell++)
        {
            var passes = enters - ((enters - leaves) * ((cell + 1.0) / cells));
            var part = Vector.MinNative(passes * cells / liters, new Vector<double>(MostPassed));
            var isLast = cell == cells - 1;
            var on = isLast ? sugar[cell] * part : (sugar[cell] * (part + exchange)) - (sugar[cell + 1] * exchange);
            sugar[cell] += comes - on;
            comes = on;
        }

        return comes;
    }

    private static Vector<double> Held(Members members, int off, double liters, int at) =>
        liters > 0 ? Vector.MaxNative(new Vector<double>(liters) + new Vector<double>(members[off], at), Vector<double>.Zero) : default;
}
