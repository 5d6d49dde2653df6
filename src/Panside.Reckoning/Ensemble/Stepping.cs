using System.Numerics;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// Moves members on. Between charges the fire is a linear system: each store of heat empties exponentially, exactly within a
/// step. The heat covers the surface's losses, warms the pan, and boils. The float feeds the first cell; liquid passes on so
/// that all cells stand equally high; neighbors exchange where the feed is weak. Energy, water and sugar are kept exactly:
/// what leaves one place comes to another. A block of members runs through all steps before the next, so that it stays near
/// the processor; only sums within one member are formed, so that the width of vectors changes no digit.
/// </summary>
internal static class Stepping
{
    /// <summary>Part of the exchange between cells that a full feed leaves: no source, calibrated.</summary>
    private const double MixingAtFullFeed = 0.08;

    /// <summary>Longer steps than this, in minutes, would carry more than a cell holds: then only the whole pan's sugar is kept.</summary>
    private const double LongestMoving = 2;

    /// <summary>Runs members on, in place.</summary>
    public static RunResult Go(Members members, in RigConstants rig, in Run run)
    {
        var result = new RunResult(members.Count);
        var (keepFlame, keepCoals, keepBrick) = (new double[members.Count], new double[members.Count], new double[members.Count]);
        var (toPan, brickToPan, toBrick) = (new double[members.Count], new double[members.Count], new double[members.Count]);
        var (air, vapor, mixing) = (new double[members.Count], new double[members.Count], new double[members.Count]);
        for (var member = 0; member < members.Count; member++)
        {
            double Of(int field) => double.Exp(members[field][member]);
            keepFlame[member] = double.Exp(-run.StepMinutes / Of(Field.FlameTime));
            keepCoals[member] = double.Exp(-run.StepMinutes / Of(Field.CoalTime));
            keepBrick[member] = double.Exp(-run.StepMinutes / Of(Field.BrickTime));
            var heat = double.Exp(members[Field.Heat][member] + members[Field.Weather][member]);
            toPan[member] = heat * rig.ToPan;
            brickToPan[member] = heat * rig.BrickToPan;
            toBrick[member] = Of(Field.ToBrick);
            air[member] = Of(Field.AirLoss) * rig.Area * run.StepMinutes;
            vapor[member] = Of(Field.Vapor) * rig.Area * run.StepMinutes;
            mixing[member] = Of(Field.Mixing) * rig.Area * run.StepMinutes;
        }

        for (var at = 0; at < members.Count; at += Vector<double>.Count)
        {
            var block = new Block(members, at);
            block.Go(
                rig, run, result, at,
                new(keepFlame, at), new(keepCoals, at), new(keepBrick, at), new(toPan, at), new(brickToPan, at), new(toBrick, at),
                new(air, at), new(vapor, at), new(mixing, at));
            block.Store(members, at);
        }

        return result;
    }

    /// <summary>Vapor pressure of water in kPa: the Magnus form by a polynomial in hundreds of °C; 0.001 kPa from it over 0–108 °C.</summary>
    private static Vector<double> VaporPressure(Vector<double> celsius)
    {
        var x = celsius * 0.01;
        var sum = (x * 36.70275198638407) + new Vector<double>(17.190161864760952);
        sum = (sum * x) + new Vector<double>(31.938608411716487);
        sum = (sum * x) + new Vector<double>(13.11957513616963);
        sum = (sum * x) + new Vector<double>(4.515790157478342);
        return (sum * x) + new Vector<double>(0.6098639945246405);
    }

    /// <summary>As many members as a vector is wide.</summary>
    private ref struct Block
    {
        private readonly int _cells;
        private Vector<double> _flame;
        private Vector<double> _coals;
        private Vector<double> _brick;
        private Vector<double> _pan;
        private Vector<double> _celsius;
        private Vector<double> _tank;
        private Vector<double> _evaporated;
        private Vector<double> _fed;
        private Vector<double> _steam;
        private Vector<double> _rate;
        private Sugars _sugar;

        public Block(Members members, int at)
        {
            _cells = members.Cells;
            _flame = new(members[Field.Flame], at);
            _coals = new(members[Field.Coals], at);
            _brick = new(members[Field.Brick], at);
            _pan = new(members[Field.Pan], at);
            _celsius = new(members[Field.Temperature], at);
            _tank = new(members[Field.Tank], at);
            _evaporated = new(members[Field.Evaporated], at);
            _fed = new(members[Field.Fed], at);
            _steam = new(members[Field.Steam], at);
            _rate = new(members[Field.Rate], at);
            for (var cell = 0; cell < _cells; cell++)
            {
                _sugar[cell] = new(members[Field.Sugar + cell], at);
            }

            Sap = new(members[Field.Sap], at);
            CoalShare = new(members[Field.CoalShare], at);
        }

        private Vector<double> Sap { get; }

        private Vector<double> CoalShare { get; }

        public readonly void Store(Members members, int at)
        {
            _flame.CopyTo(members[Field.Flame], at);
            _coals.CopyTo(members[Field.Coals], at);
            _brick.CopyTo(members[Field.Brick], at);
            _pan.CopyTo(members[Field.Pan], at);
            _celsius.CopyTo(members[Field.Temperature], at);
            _tank.CopyTo(members[Field.Tank], at);
            _evaporated.CopyTo(members[Field.Evaporated], at);
            _fed.CopyTo(members[Field.Fed], at);
            _steam.CopyTo(members[Field.Steam], at);
            _rate.CopyTo(members[Field.Rate], at);
            for (var cell = 0; cell < _cells; cell++)
            {
                _sugar[cell].CopyTo(members[Field.Sugar + cell], at);
            }
        }

        public void Go(
            in RigConstants rig, in Run run, RunResult result, int at,
            Vector<double> keepFlame, Vector<double> keepCoals, Vector<double> keepBrick, Vector<double> toPan, Vector<double> brickToPan,
            Vector<double> toBrick, Vector<double> air, Vector<double> vapor, Vector<double> mixing)
        {
            var one = Vector<double>.One;
            var zero = Vector<double>.Zero;
            var (boilingPoint, cold) = (new Vector<double>(rig.BoilingCelsius), new Vector<double>(rig.AirCelsius));
            var sapCelsius = new Vector<double>(rig.SapCelsius);
            var held = new Vector<double>(run.HeldLiters);
            var wood = new Vector<double>(run.WoodMegajoules * run.StepMinutes);
            var sapMass = one / (one - (Sap * (1 - RigConstants.SugarLiters)));
            var (still, draw) = (new Vector<double>(result.StillMinutes, at), new Vector<double>(result.DrawMinutes, at));
            var (least, empty) = (new Vector<double>(result.LeastLiters, at), new Vector<double>(result.EmptyMinutes, at));
            var moves = run.StepMinutes <= LongestMoving;
            for (var step = 1; step <= run.Steps; step++)
            {
                // The fire.
                _flame += wood * (one - CoalShare);
                _coals += wood * CoalShare;
                var flames = _flame * (one - keepFlame);
                var glows = _coals * (one - keepCoals);
                var gives = _brick * (one - keepBrick);
                var fire = flames + glows;
                _flame -= flames;
                _coals -= glows;
                _brick += (toBrick * fire) - gives;

                // The surface first; what is left warms the pan up to the boil; what is left of that boils.
                var lost = air * Vector.Max(_celsius - cold, zero);
                var damp = vapor * VaporPressure(_celsius);
                var net = (toPan * fire) + (brickToPan * gives) - lost - (damp * rig.Latent);
                var capacity = _pan * RigConstants.LiterHeat;
                var toBoil = capacity * (boilingPoint - _celsius);
                var boils = Vector.GreaterThan(net, toBoil);
                var steam = Vector.ConditionalSelect(boils, (net - toBoil) / new Vector<double>(rig.Latent), zero);
                _celsius = Vector.Max(Vector.ConditionalSelect(boils, boilingPoint, _celsius + (net / capacity)), cold);
                var most = _pan * 0.9;
                var gone = Vector.Min(steam + damp, most);
                var left = _pan - gone;

                // The feed, into the first cell, as much as the tank has.
                var wanted = Vector.Max(held - left, zero);
                var fed = run.TankEnds ? Vector.Min(wanted, _tank) : wanted;
                var now = left + fed;
                _tank = Vector.Max(_tank - fed, zero);
                _celsius -= (_celsius - sapCelsius) * (fed / now);

                if (moves)
                {
                    Move(fed, left, sapMass, mixing, rig.FullFeed * run.StepMinutes);
                }
                else
                {
                    _sugar[0] += fed * sapMass * Sap;
                }

                _pan = now;
                _evaporated += gone;
                _fed += fed;
                _steam = steam * (1 / run.StepMinutes);
                _rate = gone * (1 / run.StepMinutes);

                var minute = new Vector<double>(step * run.StepMinutes);
                still = Vector.ConditionalSelect(boils, minute, still);
                least = Vector.Min(least, now);
                var last = _sugar[_cells - 1];
                var mass = (now * (1.0 / _cells)) + (last * (1 - RigConstants.SugarLiters));
                var drawn = Vector.GreaterThanOrEqual(last, mass * run.DrawFraction);
                draw = Vector.ConditionalSelect(drawn, Vector.Min(draw, minute), draw);
                empty = Vector.ConditionalSelect(Vector.LessThanOrEqual(_tank, zero), Vector.Min(empty, minute), empty);
            }

            still.CopyTo(result.StillMinutes, at);
            draw.CopyTo(result.DrawMinutes, at);
            least.CopyTo(result.LeastLiters, at);
            empty.CopyTo(result.EmptyMinutes, at);
        }

        /// <summary>
        /// Sugar moves with the liquid. Every cell holds the same volume, and each loses the same share to steam, so that of the
        /// feed f the part f (n − 1 − i)/n passes on from cell i of n.
        /// </summary>
        private void Move(Vector<double> fed, Vector<double> left, Vector<double> sapMass, Vector<double> mixing, double fullFeed)
        {
            var cells = (double)_cells;
            var perLiter = new Vector<double>(cells) / left;
            var calm = Vector.Max(Vector<double>.One - (fed * ((1 - MixingAtFullFeed) / fullFeed)), new Vector<double>(MixingAtFullFeed));
            var exchange = Vector.Min(mixing * calm * perLiter, new Vector<double>(0.25));
            var moved = fed * perLiter * (1 / cells);
            var from = fed * sapMass * Sap;
            var before = _sugar[0];
            for (var cell = 0; cell < _cells; cell++)
            {
                var here = _sugar[cell];
                var on = here * Vector.Min(moved * (cells - 1 - cell), new Vector<double>(0.9));
                var next = cell + 1 < _cells ? (_sugar[cell + 1] - here) * exchange : Vector<double>.Zero;
                var previous = cell > 0 ? (before - here) * exchange : Vector<double>.Zero;
                _sugar[cell] = here + from - on + next + previous;
                before = here;
                from = on;
            }
        }
    }

    /// <summary>Sugar of each cell; no pan has more than 24.</summary>
    [System.Runtime.CompilerServices.InlineArray(24)]
    private struct Sugars
    {
        private Vector<double> _first;
    }
}
