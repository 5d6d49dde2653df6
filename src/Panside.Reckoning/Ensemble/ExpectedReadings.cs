using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What an instrument would show now: the mean over the members, and the standard deviation of a reading, its own error
/// included. So a reading can be held against it before it is taken.
/// </summary>
public sealed class ExpectedReadings
{
    /// <summary>So many deviations over what is reckoned a depth is no matter of the ruler.</summary>
    private const double FarOverDepth = 3.5;

    /// <summary>So many under it: much sooner, since a failing feed burns the pan, and a pan is never to be believed deeper than it is.</summary>
    private const double FarUnderDepth = 2;

    private readonly RigEnsemble _rigs;
    private IReadOnlyList<Band>? _channelBrix;

    internal ExpectedReadings(RigEnsemble rigs) => _rigs = rigs;

    /// <summary>A ruler in the pan where the draw-off is, in meters.</summary>
    public (double Mean, double Deviation) Depth =>
        Of(member => Members[Members.DrawPan][member] / (1000 * _rigs.Rig.PanArea.SquareMeters), ReadingErrors.RulerMeters);

    /// <summary>A ruler over the flues of the pan behind, in meters; null where there is none.</summary>
    public (double Mean, double Deviation)? BackDepth => _rigs.Rig.Back is { } back
        ? Of(member => (Members.Liters(Members.Back, member) - back.InFlues.Liters) / (1000 * back.Area.SquareMeters), ReadingErrors.RulerMeters)
        : null;

    /// <summary>The tank's gauge, in liters; null before its first reading.</summary>
    public (double Mean, double Deviation)? Tank
    {
        get
        {
            if (!_rigs.IsTankKnown)
            {
                return null;
            }

            var (mean, variance) = Assimilation.Moments(Gauges());
            var error = ReadingErrors.GaugeLiters(_rigs.Rig);
            return (mean, double.Sqrt(variance + (error * error)));
        }
    }

    /// <summary>The raw sap, in Brix.</summary>
    public (double Mean, double Deviation) Sap => Of(member => 100 * Members[Field.Sap][member], 0.1);

    /// <summary>A sample stirred from the whole pan where the draw-off is, in Brix.</summary>
    public (double Mean, double Deviation) PanSugar => Of(
        member => 100 * RigConstants.FractionOf(Members.SugarOf(Members.Front, member), Members[Members.DrawPan][member]),
        error: mean => 0.04 * mean);

    /// <summary>A cooled sample from the draw-off, in Brix.</summary>
    public (double Mean, double Deviation) DrawSugar => Of(member => 100 * Members.LastFraction(member), error: ReadingErrors.SampleBrix);

    /// <summary>The sugar of each channel in Brix, from the float to the draw-off; the cells of a channel taken together. Of two pans, of the one where the draw-off is.</summary>
    public IReadOnlyList<Band> ChannelBrix => _channelBrix ??= [.. Enumerable.Range(0, Channels).Select(ChannelBand)];

    private Members Members => _rigs.Members;

    private int Channels => int.Clamp(_rigs.Rig.Channels, 1, Members.Front.Count);

    /// <summary>The thermometer at the draw-off of a pan that boils, in K over boiling water today.</summary>
    /// <param name="station">The pressure here.</param>
    public (double Mean, double Deviation) Rise(Pressure station)
    {
        var rises = new RiseTable(station);
        return Of(member => rises.Of(Members.LastFraction(member)) + Members[Field.ThermometerOff][member], ReadingErrors.ThermometerEye);
    }

    /// <summary>Whether no member explains a reading of the tank.</summary>
    public bool IsFar(Volume tank) => _rigs.IsTankKnown && Assimilation.IsFar(Gauges(), tank.Liters, ReadingErrors.GaugeLiters(_rigs.Rig));

    /// <summary>Whether a depth is so far over what is reckoned, and by so much, that sap was poured in which nobody told of.</summary>
    /// <param name="read">What the ruler shows.</param>
    public bool IsFilled(Length read)
    {
        var pan = RuledPan.OfDraw(_rigs);
        return IsFar(pan, read) && (_rigs.Rig.PanArea * (read - Length.FromMeters(Assimilation.Moments(Depths(pan)).Mean))).Liters > ReadingErrors.PouredLiters;
    }

    /// <summary>Whether a depth is no matter of the ruler.</summary>
    internal bool IsFar(RuledPan pan, Length read)
    {
        var (mean, variance) = Assimilation.Moments(Depths(pan));
        var deviation = double.Sqrt(variance + (ReadingErrors.RulerMeters * ReadingErrors.RulerMeters));
        return read.Meters > mean + (FarOverDepth * deviation) || read.Meters < mean - (FarUnderDepth * deviation);
    }

    /// <summary>The depth of a pan in each member, over its flues, in meters.</summary>
    internal double[] Depths(RuledPan pan) => All(member => pan.DepthOf(Members.Liters(pan.Cells, member)));

    /// <summary>What the tank's gauge shows in each member, in liters.</summary>
    internal double[] Gauges() => All(member => Members[Field.Tank][member] + Members[Field.GaugeOff][member]);

    private Band ChannelBand(int channel)
    {
        var pan = Members.Front;
        var (from, to) = (channel * pan.Count / Channels, (channel + 1) * pan.Count / Channels);
        return Band.Of(new RankedValues(All(member =>
        {
            var sugar = 0.0;
            for (var cell = from; cell < to; cell++)
            {
                sugar += Members[Field.Sugar + pan.First + cell][member];
            }

            return 100 * RigConstants.FractionOf(sugar, Members.Liters(pan, member) * (to - from) / pan.Count);
        })).At);
    }

    private (double Mean, double Deviation) Of(Func<int, double> shows, double error) => Of(shows, _ => error);

    private (double Mean, double Deviation) Of(Func<int, double> shows, Func<double, double> error)
    {
        var (mean, variance) = Assimilation.Moments(All(shows));
        var own = error(mean);
        return (mean, double.Sqrt(variance + (own * own)));
    }

    private double[] All(Func<int, double> shows)
    {
        var shown = new double[_rigs.Count];
        for (var member = 0; member < shown.Length; member++)
        {
            shown[member] = shows(member);
        }

        return shown;
    }
}
