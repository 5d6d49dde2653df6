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
