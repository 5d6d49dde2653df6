using Panside.Reckoning.Chance;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>Members as they are before anything was told, and the chance that works on them later.</summary>
internal static class Beginning
{
    /// <summary>Deviation of a draw-off temperature's rise over boiling water, in K, before this thermometer was held in it.</summary>
    public const double UnreadThermometer = 0.35;

    /// <summary>The same once it was: what is left is rounding.</summary>
    public const double ReadThermometer = 0.12;

    /// <summary>
    /// Exchange between neighboring cells without feed, in liters a minute and a square meter of pan: so that the channels mix in some twenty
    /// minutes, in proportion to 0.7 and half an hour. No source; with less, draws were told too soon in six of seven worlds.
    /// </summary>
    private const double FullExchange = 1.1;

    /// <summary>Minutes in which what draft, wood and weather do is forgotten.</summary>
    private const double WeatherMinutes = 40;

    /// <summary>What the float's mark wanders in a minute, in m: a quarter of a depth reading's worth in as long as between two of them. No source, calibrated.</summary>
    private const double FloatMoves = 0.00012;

    /// <summary>
    /// Standard deviation of how far a pan that a hand feeds stands later from where it stands now, as a part of a portion: between two pours
    /// any level is as likely, now and then.
    /// </summary>
    private const double OfAPortion = 0.41;

    private const ulong Seed = 0x50414E53;
    private const ulong DriftSeed = Seed + 1;
    private const ulong NoiseSeed = Seed + 2;

    /// <summary>Members drawn from a prior.</summary>
    public static Members Of(RigDescription rig, RigPrior prior, int count)
    {
        var constants = FireConstants.Of(rig);
        var members = new Members(count, PanCells.Of(rig), PanCells.OfBack(rig));
        var liters = (rig.PanArea * rig.RunDepth).Liters;
        var fedArea = rig.Back?.Area ?? rig.PanArea;
        for (var member = 0; member < count; member++)
        {
            var random = RandomNumbers.For(Seed, (ulong)member);
            void Draw(int field, double median, double deviation) =>
                members[field][member] = double.Log(median) + (deviation * random.WithinThree());
            Draw(Field.Heat, double.Exp(prior.HeatMean), prior.Heat);
            Draw(Field.FlameTime, constants.FlameMinutes, prior.FlameTime);
            Draw(Field.CoalTime, constants.CoalMinutes, prior.CoalTime);
            Draw(Field.BrickTime, BrickTime.MinutesOf(rig), prior.BrickTime);
            Draw(Field.ToBrick, FireConstants.ToBrick, prior.ToBrick);
            Draw(Field.AirLoss, SurfaceLoss.ToAir, prior.AirLoss);
            Draw(Field.Vapor, SurfaceLoss.Vapor, prior.Vapor);
            Draw(Field.Mixing, FullExchange, prior.Mixing);
            members[Field.CoalShare][member] = (FireConstants.CoalShare + (prior.CoalShare * random.WithinThree())) * (rig.IsBurner ? 0 : 1);
            members[Field.Weather][member] = prior.Weather * random.WithinThree();
            members[Field.GaugeOff][member] = prior.GaugeOff * random.WithinThree();
            members[Field.ThermometerOff][member] = UnreadThermometer * random.WithinThree();
            members[Field.FloatOff][member] = (rig.Portion.Liters > 0 ? rig.Portion.Liters * OfAPortion : (fedArea * prior.FloatOff).Liters) * random.WithinThree();
            members[Field.Sap][member] = 0.02 * double.Exp(0.2 * random.WithinThree());
            members[Field.Temperature][member] = 4;
            members[Field.Pan][member] = liters;
            if (rig.Back is { } back)
            {
                members[members.DrawPanOff][member] = (rig.PanArea * prior.FloatOff).Liters * random.WithinThree();
                members[members.DrawPan][member] = liters;
                members[Field.Pan][member] = liters + back.VolumeAt(back.RunDepth).Liters;
            }

            PanDeeds.SetSugar(members, member, members[Field.Sap][member]);
        }

        return members;
    }

    /// <summary>A minute on: what the fire does beside its mean wanders and comes back; a float is moved, wears and sticks a little.</summary>
    public static void Drift(Members members, RigPrior prior, RigDescription rig, int minute)
    {
        var keep = double.Exp(-1 / WeatherMinutes);
        var step = prior.Weather * double.Sqrt(1 - (keep * keep));
        var (weather, floatOff) = (members[Field.Weather], members[Field.FloatOff]);
        var floatMoves = rig.Portion.Liters > 0 ? 0 : FloatMoves * 1000 * (rig.Back?.Area ?? rig.PanArea).SquareMeters;
        var ofDrawPan = rig.Back is null ? null : members[members.DrawPanOff];
        for (var member = 0; member < members.Count; member++)
        {
            var random = RandomNumbers.For(DriftSeed + (ulong)minute, (ulong)member);
            weather[member] = (weather[member] * keep) + (step * random.Normal());
            floatOff[member] += floatMoves * random.Normal();
            if (ofDrawPan is not null)
            {
                ofDrawPan[member] += FloatMoves * 1000 * rig.PanArea.SquareMeters * random.Normal();
            }
        }
    }

    /// <summary>A normal number for each member, of the thing that was told as number so many.</summary>
    /// <param name="count">How many members.</param>
    /// <param name="told">The number of the thing.</param>
    /// <param name="purpose">What of it the numbers are for.</param>
    public static double[] Noise(int count, int told, int purpose = 0)
    {
        var noise = new double[count];
        for (var member = 0; member < count; member++)
        {
            noise[member] = RandomNumbers.For(NoiseSeed + ((ulong)told << 20) + ((ulong)purpose << 8), (ulong)member).WithinThree();
        }

        return noise;
    }

    /// <summary>An even number between 0 and 1 of the thing that was told as number so many.</summary>
    public static double Even(int told) => RandomNumbers.For(NoiseSeed + ((ulong)told << 20), ulong.MaxValue).Unit();
}
