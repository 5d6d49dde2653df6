namespace Panside.Reckoning.Ensemble;

/// <summary>What is done to one member's pan at once.</summary>
internal static class PanDeeds
{
    private const int DrawParts = 8;

    /// <summary>All cells get the same sugar content, as a mass fraction.</summary>
    public static void SetSugar(Members members, int member, double fraction)
    {
        SetSugar(members, member, members.Back, fraction);
        SetSugar(members, member, members.Front, fraction);
    }

    /// <summary>All cells of a pan get the same sugar content, as a mass fraction.</summary>
    public static void SetSugar(Members members, int member, Stretch pan, double fraction)
    {
        if (pan.Count == 0)
        {
            return;
        }

        var cell = members.Liters(pan, member) / pan.Count * RigConstants.KilogramsOfSap(fraction) * fraction;
        for (var at = pan.First; at < pan.First + pan.Count; at++)
        {
            members[Field.Sugar + at][member] = cell;
        }
    }

    /// <summary>The sugar of all cells of a pan is multiplied.</summary>
    public static void ScaleSugar(Members members, int member, Stretch pan, double by)
    {
        for (var at = pan.First; at < pan.First + pan.Count; at++)
        {
            members[Field.Sugar + at][member] *= by;
        }
    }

    /// <summary>Sap is poured in all over a pan; cold sap takes it off the boil.</summary>
    public static void Pour(Members members, int member, Stretch into, double liters, double celsius)
    {
        if (liters <= 0)
        {
            return;
        }

        var pan = members[Field.Pan][member];
        var fraction = members[Field.Sap][member];
        var sugar = liters * RigConstants.KilogramsOfSap(fraction) * fraction / into.Count;
        for (var at = into.First; at < into.First + into.Count; at++)
        {
            members[Field.Sugar + at][member] += sugar;
        }

        members[Field.Temperature][member] -= (members[Field.Temperature][member] - celsius) * liters / (pan + liters);
        members.SetLiters(into, member, members.Liters(into, member) + liters);
    }

    /// <summary>The part of a cell that is poured in before the cells level out.</summary>
    private const double PourPart = 0.25;

    /// <summary>
    /// Liquid is poured into a pan's first cell in small parts, and the cells level out after each, so that what stood there moves on
    /// toward the draw-off. Cold liquid takes the pan off the boil.
    /// </summary>
    /// <param name="members">The members.</param>
    /// <param name="member">The one that it is poured into.</param>
    /// <param name="liters">How much.</param>
    /// <param name="fraction">Its sugar, as a mass fraction.</param>
    /// <param name="celsius">How warm it is.</param>
    /// <param name="pan">Into which pan; null for the one that the tank feeds.</param>
    public static void PourAtFeed(Members members, int member, double liters, double fraction, double celsius, Stretch? pan = null)
    {
        var into = pan ?? members.Fed;
        var (cells, liquid, whole) = (into.Count, members.Liters(into, member), members[Field.Pan][member]);
        var sugarPerLiter = RigConstants.KilogramsOfSap(fraction) * fraction;
        for (var left = liters; left > 0;)
        {
            var part = double.Min(left, PourPart * liquid / cells);
            for (var at = cells - 2; at >= 0; at--)
            {
                var on = members[Field.Sugar + into.First + at][member] * (part * cells / liquid) * (cells - 1 - at) / cells;
                members[Field.Sugar + into.First + at][member] -= on;
                members[Field.Sugar + into.First + at + 1][member] += on;
            }

            members[Field.Sugar + into.First][member] += part * sugarPerLiter;
            members[Field.Temperature][member] -= (members[Field.Temperature][member] - celsius) * part / (whole + part);
            (liquid, whole) = (liquid + part, whole + part);
            left = part < left ? left - part : 0;
        }

        members.SetLiters(into, member, liquid);
    }

    /// <summary>
    /// So many liters go on from the pan behind into the one in front, in parts of a quarter of a cell, after each of which the cells of both
    /// level out toward the draw-off; no more than stands over its flues.
    /// </summary>
    public static void PassOn(Members members, int member, double liters, double flues)
    {
        var (back, front) = (members.Back, members.Front);
        for (var left = double.Min(liters, members.Liters(back, member) - flues); left > 1e-9;)
        {
            var (behind, ahead) = (members.Liters(back, member), members.Liters(front, member));
            var part = double.Min(left, PourPart * double.Min(behind / back.Count, ahead / front.Count));
            if (part <= 0)
            {
                return;
            }

            for (var at = front.Count - 2; at >= 0; at--)
            {
                On(members, member, front.First + at, part / (ahead / front.Count) * (front.Count - 1 - at) / front.Count);
            }

            for (var at = back.Count - 1; at >= 0; at--)
            {
                On(members, member, at, part / (behind / back.Count) * (at + 1) / back.Count);
            }

            members[members.DrawPan][member] += part;
            left -= part;
        }
    }

    private static void On(Members members, int member, int from, double share)
    {
        var on = members[Field.Sugar + from][member] * share;
        members[Field.Sugar + from][member] -= on;
        members[Field.Sugar + from + 1][member] += on;
    }

    /// <summary>
    /// The cells of its pan behind the last one are at least as sweet as an even rise, by the same factor from cell to cell, from the sap to
    /// what stands at the draw-off: no source. Where syrup stands there, sap does not stand next to it.
    /// </summary>
    public static void LeadUpToLast(Members members, int member)
    {
        var pan = members.Front;
        var (cells, cell) = (pan.Count, members.Liters(pan, member) / pan.Count);
        double FractionOf(double sugar) => sugar / (cell + (sugar * (1 - RigConstants.SugarLiters)));
        var (sap, last) = (members[Field.Sap][member], FractionOf(members.LastSugar[member]));
        for (var at = 0; at < cells - 1 && last > sap; at++)
        {
            var fraction = sap * double.Pow(last / sap, (at + 1.0) / cells);
            var sugar = members[Field.Sugar + pan.First + at];
            sugar[member] = double.Max(sugar[member], fraction * cell * RigConstants.KilogramsOfSap(fraction));
        }
    }

    /// <summary>
    /// The same of two pans, by how it comes to stand in both when syrup is drawn as fast as the sap's sugar comes: where the sap has passed
    /// the part p of all evaporation it holds B0/(1 - p (1 - B0/B)), with B at the draw-off. Derived from the balance of sugar.
    /// </summary>
    /// <param name="members">The members.</param>
    /// <param name="member">Which.</param>
    /// <param name="boiledInFront">The part of all water that leaves the pan where the draw-off is.</param>
    public static void LeadUpThroughBoth(Members members, int member, double boiledInFront)
    {
        var (back, front) = (members.Back, members.Front);
        var last = RigConstants.FractionOf(members.LastSugar[member], members.Liters(front, member) / front.Count);
        var sap = members[Field.Sap][member];
        for (var cell = 0; cell < members.Cells - 1 && last > sap; cell++)
        {
            var (pan, passed) = cell < back.Count
                ? (back, (1 - boiledInFront) * (cell + 1) / back.Count)
                : (front, 1 - boiledInFront + (boiledInFront * (cell + 1 - back.Count) / front.Count));
            var fraction = sap / (1 - (passed * (1 - (sap / last))));
            var sugar = members[Field.Sugar + cell];
            sugar[member] = double.Max(sugar[member], fraction * (members.Liters(pan, member) / pan.Count) * RigConstants.KilogramsOfSap(fraction));
        }
    }

    /// <summary>
    /// Liters run out of the last cell in small parts; the cells level out after each. Less than none is a draw that was told too
    /// large: so much of what stands there was never gone.
    /// </summary>
    public static void Draw(Members members, int member, double liters)
    {
        var pan = members.Front;
        var cells = pan.Count;
        if (liters < 0)
        {
            members.LastSugar[member] *= 1 - (liters * cells / members.Liters(pan, member));
            members.SetLiters(pan, member, members.Liters(pan, member) - liters);
            return;
        }

        var part = double.Clamp(liters, 0, members.Liters(pan, member) * 0.8) / DrawParts;
        for (var count = 0; count < DrawParts; count++)
        {
            var perLiter = cells / members.Liters(pan, member);
            var last = members.LastSugar;
            last[member] -= last[member] * double.Min(part * perLiter, 0.9);
            for (var at = cells - 2; at >= 0; at--)
            {
                var on = members[Field.Sugar + pan.First + at][member] * double.Min(part * perLiter * (at + 1) / cells, 0.9);
                members[Field.Sugar + pan.First + at][member] -= on;
                members[Field.Sugar + pan.First + at + 1][member] += on;
            }

            members.SetLiters(pan, member, members.Liters(pan, member) - part);
        }
    }
}
