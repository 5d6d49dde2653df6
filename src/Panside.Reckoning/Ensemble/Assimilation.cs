namespace Panside.Reckoning.Ensemble;

/// <summary>Corrects members by what was read or seen.</summary>
internal static class Assimilation
{
    /// <summary>Numbers that a reading of the tank or of the draw-off does not move: they follow from the next minute.</summary>
    private static readonly int[] Untouched = [Field.Temperature, Field.Steam, Field.Rate];

    /// <summary>
    /// One number read: the ensemble adjustment filter (J. L. Anderson, Monthly Weather Review 129 (2001) 2884–2903, from
    /// memory). What the members predict is shifted and drawn together as the reading asks, and every other number follows by
    /// its regression on the prediction.
    /// </summary>
    /// <param name="members">The members, changed in place.</param>
    /// <param name="predicted">What each would have shown.</param>
    /// <param name="read">What was read.</param>
    /// <param name="deviation">Standard deviation of the reading's own error.</param>
    /// <param name="ofSugarOnly">
    /// Whether it tells of the sugar's way alone. What stands at the draw-off hangs on much that no member has, so that it must
    /// not move fire and tank.
    /// </param>
    /// <returns>What each member is to show now.</returns>
    public static double[] Read(Members members, double[] predicted, double read, double deviation, bool ofSugarOnly = false)
    {
        var (mean, variance) = Moments(predicted);
        if (variance < 1e-12)
        {
            return predicted;
        }

        var error = deviation * deviation;
        var toward = mean + (variance / (variance + error) * (read - mean));
        var narrowed = double.Sqrt(error / (variance + error));
        var shift = new double[members.Count];
        for (var member = 0; member < members.Count; member++)
        {
            shift[member] = toward + (narrowed * (predicted[member] - mean)) - predicted[member];
        }

        for (var field = 0; field < members.Fields; field++)
        {
            var isOfSugar = members.IsSugar(field) || field is Field.Mixing or Field.ThermometerOff;
            if (!Untouched.Contains(field) && (isOfSugar || !ofSugarOnly))
            {
                Regress(members[field], predicted, mean, variance, shift);
            }
        }

        Bound(members);
        return [.. predicted.Zip(shift, (before, by) => before + by)];
    }

    /// <summary>A reading so many deviations from all that is expected is no matter of chance.</summary>
    public const double Far = 4.5;

    /// <summary>Whether a reading is further from what the members predict than chance brings it, and from each single member too.</summary>
    public static bool IsFar(double[] predicted, double read, double error)
    {
        var (mean, variance) = Moments(predicted);
        return double.Abs(read - mean) > Far * double.Sqrt(variance + (error * error))
            && Array.TrueForAll(predicted, value => double.Abs(read - value) > Far * error);
    }

    /// <summary>
    /// Something seen that can only be more or less likely: members are drawn anew by their likelihoods (systematic resampling),
    /// and their traits spread by as much as the drawing has narrowed them (J. Liu, M. West 2001, from memory).
    /// </summary>
    /// <returns>The members; the same where nothing tells them apart.</returns>
    public static Members Seen(Members members, double[] likelihoods, int told)
    {
        double sum = 0, squares = 0;
        foreach (var likelihood in likelihoods)
        {
            sum += likelihood;
            squares += likelihood * likelihood;
        }

        if (sum < 1e-9 * members.Count)
        {
            return members;
        }

        var effective = sum * sum / squares / members.Count;
        if (effective > 0.999)
        {
            return members;
        }

        var places = new int[members.Count];
        var step = sum / members.Count;
        var (at, reached, place) = (Beginning.Even(told) * step, likelihoods[0], 0);
        for (var member = 0; member < members.Count; member++)
        {
            var goal = at + (member * step);
            while (reached < goal && place + 1 < members.Count)
            {
                reached += likelihoods[++place];
            }

            places[member] = place;
        }

        var picked = members.Picked(places);
        Spread(picked, 0.1 * (1 - effective), told);
        return picked;
    }

    /// <summary>Widens the traits of all members about their mean, so that what nobody expected has room.</summary>
    /// <param name="members">The members.</param>
    /// <param name="by">How many times as wide.</param>
    /// <param name="most">The deviation that a trait is not widened beyond; one that is beyond stays as it is.</param>
    public static void Widen(Members members, double by, Func<int, double> most)
    {
        for (var field = Field.FirstTrait; field <= Field.Mixing; field++)
        {
            var (mean, variance) = Moments(members[field]);
            var room = variance > 0 ? most(field) / double.Sqrt(variance) : by;
            var times = double.Clamp(room, 1, by);
            var values = members[field];
            for (var member = 0; member < values.Length; member++)
            {
                values[member] = mean + (times * (values[member] - mean));
            }
        }

        Bound(members);
    }

    /// <summary>Mean and variance.</summary>
    public static (double Mean, double Variance) Moments(double[] values)
    {
        var mean = 0.0;
        foreach (var value in values)
        {
            mean += value;
        }

        mean /= values.Length;
        var squares = 0.0;
        foreach (var value in values)
        {
            squares += (value - mean) * (value - mean);
        }

        return (mean, squares / (values.Length - 1));
    }

    private static void Regress(double[] values, double[] predicted, double mean, double variance, double[] shift)
    {
        var own = 0.0;
        foreach (var value in values)
        {
            own += value;
        }

        own /= values.Length;
        var together = 0.0;
        for (var member = 0; member < values.Length; member++)
        {
            together += (values[member] - own) * (predicted[member] - mean);
        }

        var slope = together / (values.Length - 1) / variance;
        for (var member = 0; member < values.Length; member++)
        {
            values[member] += slope * shift[member];
        }
    }

    private static void Spread(Members members, double share, int told)
    {
        var keep = double.Sqrt(1 - share);
        for (var field = Field.FirstTrait; field <= Field.Mixing; field++)
        {
            var (mean, variance) = Moments(members[field]);
            var noise = Beginning.Noise(members.Count, told, field);
            var deviation = double.Sqrt(share * variance);
            var values = members[field];
            for (var member = 0; member < values.Length; member++)
            {
                values[member] = mean + (keep * (values[member] - mean)) + (deviation * noise[member]);
            }
        }

        Bound(members);
    }

    /// <summary>A regression knows no bounds; a rig does.</summary>
    private static void Bound(Members members)
    {
        for (var member = 0; member < members.Count; member++)
        {
            members[Field.Flame][member] = double.Max(members[Field.Flame][member], 0);
            members[Field.Coals][member] = double.Max(members[Field.Coals][member], 0);
            members[Field.Tank][member] = double.Max(members[Field.Tank][member], 0);
            members[Field.Pan][member] = double.Max(members[Field.Pan][member], 0.1);
            if (members.BackCells > 0)
            {
                var both = members[Field.Pan][member];
                members[members.DrawPan][member] = double.Clamp(members[members.DrawPan][member], 0.05, both - 0.05);
            }

            members[Field.CoalShare][member] = double.Clamp(members[Field.CoalShare][member], 0.15, 0.6);
            members[Field.Sap][member] = double.Clamp(members[Field.Sap][member], 0.002, 0.2);
            BoundSugar(members, member, members.Back);
            BoundSugar(members, member, members.Front);
        }
    }

    private static void BoundSugar(Members members, int member, Stretch pan)
    {
        var most = pan.Count > 0 ? members.Liters(pan, member) / pan.Count * 1.1 : 0;
        for (var cell = pan.First; cell < pan.First + pan.Count; cell++)
        {
            members[Field.Sugar + cell][member] = double.Clamp(members[Field.Sugar + cell][member], 0, most);
        }
    }
}
