using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>
/// One member of an ensemble in plain numbers, written from the equations and not from the vectors' loop: heat in MJ, one
/// thing after the other. The tests hold the loop to it; the benchmarks run it beside the loop.
/// </summary>
internal sealed class ScalarMember(RigConstants rig, Run run)
{
    private readonly double _minutes = run.StepMinutes;
    private double[] _sugar = [];
    private double _floatOff;

    public double Flame { get; private set; }

    public double Coals { get; private set; }

    public double Brick { get; private set; }

    public double Pan { get; private set; }

    public double Celsius { get; private set; }

    public double Tank { get; private set; }

    public double Evaporated { get; private set; }

    public double Fed { get; private set; }

    public double Steam { get; private set; }

    public double Rate { get; private set; }

    public double Still { get; private set; }

    public double Draw { get; private set; } = double.PositiveInfinity;

    public double Least { get; private set; } = double.PositiveInfinity;

    public double Empty { get; private set; } = double.PositiveInfinity;

    public IReadOnlyList<double> Sugar => _sugar;

    /// <summary>Takes a member's numbers and runs it.</summary>
    public ScalarMember Go(Members members, int member)
    {
        double Of(int field) => members[field][member];
        (Flame, Coals, Brick) = (Of(Field.Flame), Of(Field.Coals), Of(Field.Brick));
        (Pan, Celsius, Tank) = (Of(Field.Pan), Of(Field.Temperature), Of(Field.Tank));
        _floatOff = Of(Field.FloatOff);
        (Evaporated, Fed) = (Of(Field.Evaporated), Of(Field.Fed));
        _sugar = [.. Enumerable.Range(0, members.Cells).Select(cell => Of(Field.Sugar + cell))];
        var traits = new Traits(
            Part(Of(Field.FlameTime)), Part(Of(Field.CoalTime)), Part(Of(Field.BrickTime)),
            Math.Exp(Of(Field.Heat) + Of(Field.Weather)), Math.Exp(Of(Field.ToBrick)), Of(Field.CoalShare),
            Math.Exp(Of(Field.AirLoss)), Math.Exp(Of(Field.Vapor)), Math.Exp(Of(Field.Mixing)), Of(Field.Sap));
        for (var step = 1; step <= run.Steps; step++)
        {
            Step(traits, step * _minutes);
            if (run.DrawFraction > 0 && Draw < double.PositiveInfinity)
            {
                break;
            }
        }

        return this;
    }

    private void Step(in Traits of, double minute)
    {
        var heat = Burn(of);
        var heatOfLiter = RigConstants.LiterHeat;
        var warmth = Pan * heatOfLiter * (Celsius - rig.AirCelsius);
        var air = Math.Min(of.Air * rig.Area * _minutes * (Celsius - rig.AirCelsius), 0.5 * warmth);
        air = Celsius < rig.AirCelsius ? Math.Max(of.Air * rig.Area * _minutes * (Celsius - rig.AirCelsius), 0.5 * warmth) : air;
        var vapor = of.Vapor * rig.Area * _minutes * (Pressure(Celsius) - Pressure(rig.AirCelsius));
        var most = Math.Max(Pan - 0.05, 0);
        vapor = Math.Max(Math.Min(Math.Min(vapor, 0.3 * warmth / rig.Latent), most), 0);

        var over = heat - air - (vapor * rig.Latent) - (Pan * heatOfLiter * (rig.BoilingCelsius - Celsius));
        var steam = over > 0 ? Math.Min(over / rig.Latent, most - vapor) : 0;
        var gone = vapor + steam;
        var left = Pan - gone;
        var warmed = over > 0
            ? rig.BoilingCelsius
            : ((Pan * heatOfLiter * Celsius) + heat - air - (gone * (rig.Latent + (heatOfLiter * rig.BoilingCelsius)))) / (left * heatOfLiter);

        var fed = run.HeldLiters > 0 ? Math.Max(Math.Max(run.HeldLiters + _floatOff, 0) - left, 0) : 0;
        fed = run.TankEnds ? Math.Min(fed, Tank) : fed;
        Celsius = ((left * warmed) + (fed * rig.SapCelsius)) / (left + fed);
        if (!run.WithoutSugar)
        {
            Move(of, fed, left);
        }

        (Pan, Tank, Evaporated, Fed) = (left + fed, Math.Max(Tank - fed, 0), Evaporated + gone, Fed + fed);
        (Steam, Rate) = (steam / _minutes, gone / _minutes);
        Still = over > rig.StillLiters * _minutes * rig.Latent ? minute : Still;
        Least = Math.Min(Least, Pan);
        Empty = Tank <= 0 ? Math.Min(Empty, minute) : Empty;
        var mass = (Pan / _sugar.Length) + (_sugar[^1] * (1 - RigConstants.SugarLiters));
        Draw = run.DrawFraction > 0 && _sugar[^1] / mass >= run.DrawFraction ? Math.Min(Draw, minute) : Draw;
    }

    /// <summary>Heat that comes to the pan.</summary>
    private double Burn(in Traits of)
    {
        Flame += run.WoodMegajoules * _minutes * (1 - of.CoalShare);
        Coals += run.WoodMegajoules * _minutes * of.CoalShare;
        var (flames, glows, gives) = (Flame * of.FlameGives, Coals * of.CoalsGive, Brick * of.BrickGives);
        Flame -= flames;
        Coals -= glows;
        var soaks = rig.Soak * Math.Max(flames + glows - (Brick * rig.BrickEvens * _minutes), 0);
        Brick += (of.ToBrick * (flames + glows)) + (rig.ToPan * soaks) - gives;
        return of.Heat * ((rig.ToPan * (flames + glows - soaks)) + (rig.BrickToPan * gives));
    }

    private void Move(in Traits of, double fed, double left)
    {
        var (cells, cell) = (_sugar.Length, left / _sugar.Length);
        var calm = 1 / (1 + (fed / (0.025 * rig.FullFeed * _minutes)));
        var exchange = Math.Min(of.Mixing * rig.Area * _minutes * calm / cell, 0.25);
        var each = Math.Min(fed / cells / cell, cells > 1 ? 0.9 / (cells - 1) : 0.9);
        var comes = fed * of.Sap / (1 - (of.Sap * (1 - RigConstants.SugarLiters)));
        for (var at = 0; at + 1 < cells; at++)
        {
            var leaves = (_sugar[at] * each * (cells - 1 - at)) + (exchange * (_sugar[at] - _sugar[at + 1]));
            _sugar[at] += comes - leaves;
            comes = leaves;
        }

        _sugar[^1] += comes;
    }

    private double Part(double logarithm) => 1 - Math.Exp(-_minutes / Math.Exp(logarithm));

    private static double Pressure(double celsius)
    {
        var x = celsius / 100;
        return 0.6098639945246405 + (x * (4.515790157478342 + (x * (13.11957513616963 + (x * (31.938608411716487
            + (x * (17.190161864760952 + (x * 36.70275198638407)))))))));
    }

    private readonly record struct Traits(
        double FlameGives, double CoalsGive, double BrickGives, double Heat, double ToBrick, double CoalShare, double Air, double Vapor,
        double Mixing, double Sap);
}
