namespace Panside.Reckoning.Ensemble;

/// <summary>What is done to one member's pan at once.</summary>
internal static class PanDeeds
{
    private const int DrawParts = 8;

    /// <summary>All cells get the same sugar content, as a mass fraction.</summary>
    public static void SetSugar(Members members, int member, double fraction)
    {
        var cell = members[Field.Pan][member] / members.Cells * RigConstants.KilogramsOfSap(fraction) * fraction;
        for (var at = 0; at < members.Cells; at++)
        {
            members[Field.Sugar + at][member] = cell;
        }
    }

    /// <summary>All cells' sugar is multiplied.</summary>
    public static void ScaleSugar(Members members, int member, double by)
    {
        for (var at = 0; at < members.Cells; at++)
        {
            members[Field.Sugar + at][member] *= by;
        }
    }

    /// <summary>Sap is poured in all over the pan; cold sap takes it off the boil.</summary>
    public static void Pour(Members members, int member, double liters, double celsius)
    {
        if (liters <= 0)
        {
            return;
        }

        var pan = members[Field.Pan][member];
        var fraction = members[Field.Sap][member];
        var sugar = liters * RigConstants.KilogramsOfSap(fraction) * fraction / members.Cells;
        for (var at = 0; at < members.Cells; at++)
        {
            members[Field.Sugar + at][member] += sugar;
        }

        members[Field.Temperature][member] -= (members[Field.Temperature][member] - celsius) * liters / (pan + liters);
        members[Field.Pan][member] = pan + liters;
    }

    /// <summary>The part of a cell that is poured in before the cells level out.</summary>
    private const double PourPart = 0.25;

    /// <summary>
    /// Liquid is poured into the first cell in small parts, and the cells level out after each, so that what stood there moves on
    /// toward the draw-off. Cold liquid takes the pan off the boil.
    /// </summary>
    /// <param name="members">The members.</param>
    /// <param name="member">The one that it is poured into.</param>
    /// <param name="liters">How much.</param>
    /// <param name="fraction">Its sugar, as a mass fraction.</param>
    /// <param name="celsius">How warm it is.</param>
    public static void PourAtFeed(Members members, int member, double liters, double fraction, double celsius)
    {
        var (cells, pan) = (members.Cells, members[Field.Pan][member]);
        var sugarPerLiter = RigConstants.KilogramsOfSap(fraction) * fraction;
        for (var left = liters; left > 0;)
        {
            var part = double.Min(left, PourPart * pan / cells);
            for (var at = cells - 2; at >= 0; at--)
            {
                var on = members[Field.Sugar + at][member] * (part * cells / pan) * (cells - 1 - at) / cells;
                members[Field.Sugar + at][member] -= on;
                members[Field.Sugar + at + 1][member] += on;
            }

            members[Field.Sugar][member] += part * sugarPerLiter;
            members[Field.Temperature][member] -= (members[Field.Temperature][member] - celsius) * part / (pan + part);
            pan += part;
            left = part < left ? left - part : 0;
        }

        members[Field.Pan][member] = pan;
    }

    /// <summary>
    /// The cells behind the last one are at least as sweet as an even rise, by the same factor from cell to cell, from the sap to
    /// what stands at the draw-off: no source. Where syrup stands there, sap does not stand next to it.
    /// </summary>
    public static void LeadUpToLast(Members members, int member)
    {
        var (cells, cell) = (members.Cells, members[Field.Pan][member] / members.Cells);
        double FractionOf(double sugar) => sugar / (cell + (sugar * (1 - RigConstants.SugarLiters)));
        var (sap, last) = (members[Field.Sap][member], FractionOf(members.LastSugar[member]));
        for (var at = 0; at < cells - 1 && last > sap; at++)
        {
            var fraction = sap * double.Pow(last / sap, (at + 1.0) / cells);
            var sugar = members[Field.Sugar + at];
            sugar[member] = double.Max(sugar[member], fraction * cell * RigConstants.KilogramsOfSap(fraction));
        }
    }

    /// <summary>
    /// Liters run out of the last cell in small parts; the cells level out after each. Less than none is a draw that was told too
    /// large: so much of what stands there was never gone.
    /// </summary>
    public static void Draw(Members members, int member, double liters)
    {
        var cells = members.Cells;
        if (liters < 0)
        {
            members.LastSugar[member] *= 1 - (liters * cells / members[Field.Pan][member]);
            members[Field.Pan][member] -= liters;
            return;
        }

        var part = double.Clamp(liters, 0, members[Field.Pan][member] * 0.8) / DrawParts;
        for (var count = 0; count < DrawParts; count++)
        {
            var perLiter = cells / members[Field.Pan][member];
            var last = members.LastSugar;
            last[member] -= last[member] * double.Min(part * perLiter, 0.9);
            for (var at = cells - 2; at >= 0; at--)
            {
                var on = members[Field.Sugar + at][member] * double.Min(part * perLiter * (at + 1) / cells, 0.9);
                members[Field.Sugar + at][member] -= on;
                members[Field.Sugar + at + 1][member] += on;
            }

            members[Field.Pan][member] -= part;
        }
    }
}
