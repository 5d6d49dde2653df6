using System.Numerics;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What stays the same through a run, for as many members as a vector is wide. Heat is counted here in liters of water that it
/// boils away, so that the loop need not convert.
/// </summary>
internal readonly ref struct Pace
{
    /// <summary>For the members at a place.</summary>
    public Pace(Members members, TraitTerms terms, in RigConstants rig, in Run run, int at)
    {
        var perLiter = new Vector<double>(1 / rig.Latent);
        var heat = Exp(new Vector<double>(members[Field.Heat], at) + new Vector<double>(members[Field.Weather], at)) * perLiter;
        var share = new Vector<double>(members[Field.CoalShare], at);
        var sap = new Vector<double>(members[Field.Sap], at);
        var one = Vector<double>.One;
        var (area, wood) = (new Vector<double>(rig.Area * run.StepMinutes), new Vector<double>(run.WoodMegajoules * run.StepMinutes));
        FlameGives = new(terms.FlameGives, at);
        CoalsGive = new(terms.CoalsGive, at);
        BrickGives = new(terms.BrickGives, at);
        ToPan = heat * rig.ToPan;
        BrickToPan = heat * rig.BrickToPan;
        ToBrick = new(terms.ToBrick, at);
        Air = new Vector<double>(terms.AirLoss, at) * area * perLiter;
        Vapor = new Vector<double>(terms.Vapor, at) * area;
        Mixing = new Vector<double>(terms.Mixing, at) * area * members.Cells;
        SapSugar = sap / (one - (sap * (1 - RigConstants.SugarLiters)));
        WoodToCoals = wood * share;
        WoodToFlame = wood * (one - share);
    }

    /// <summary>Part of the volatiles' heat that a step gives off.</summary>
    public Vector<double> FlameGives { get; }

    /// <summary>Part of the coals'.</summary>
    public Vector<double> CoalsGive { get; }

    /// <summary>Part of the brick's.</summary>
    public Vector<double> BrickGives { get; }

    /// <summary>Liters that a megajoule of the fire boils away.</summary>
    public Vector<double> ToPan { get; }

    /// <summary>Liters that a megajoule of the brick boils away.</summary>
    public Vector<double> BrickToPan { get; }

    /// <summary>Share of the fire's heat that goes into the brick.</summary>
    public Vector<double> ToBrick { get; }

    /// <summary>Liters that the air takes the heat of, in a step and a kelvin.</summary>
    public Vector<double> Air { get; }

    /// <summary>Liters that go off as vapor, in a step and a kPa.</summary>
    public Vector<double> Vapor { get; }

    /// <summary>Exchange between neighbors in a step without feed, in pans.</summary>
    public Vector<double> Mixing { get; }

    /// <summary>Sugar in a liter of sap, in kg.</summary>
    public Vector<double> SapSugar { get; }

    /// <summary>Heat of the wood of a step that goes to the coals, in MJ.</summary>
    public Vector<double> WoodToCoals { get; }

    /// <summary>Heat of the wood of a step that goes to the volatiles, in MJ.</summary>
    public Vector<double> WoodToFlame { get; }

    /// <summary>One by one: the library's vectors have an exponential of their own, but not the same one at every width.</summary>
    private static Vector<double> Exp(Vector<double> of)
    {
        Span<double> each = stackalloc double[Vector<double>.Count];
        of.CopyTo(each);
        for (var at = 0; at < each.Length; at++)
        {
            each[at] = double.Exp(each[at]);
        }

        return new(each);
    }
}
