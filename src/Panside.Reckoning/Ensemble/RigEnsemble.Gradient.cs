using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>How sweet the pan is along its path.</summary>
public sealed partial class RigEnsemble
{
    private IReadOnlyList<Band>? _channelBrix;

    /// <summary>The sugar of each channel in Brix, from the float to the draw-off; the cells of a channel taken together. Of two pans, of the one where the draw-off is.</summary>
    public IReadOnlyList<Band> ChannelBrix => _channelBrix ??= [.. Enumerable.Range(0, Channels).Select(ChannelBand)];

    private int Channels => int.Clamp(Rig.Channels, 1, Members.Front.Count);

    private Band ChannelBand(int channel)
    {
        var pan = Members.Front;
        var (from, to) = (channel * pan.Count / Channels, (channel + 1) * pan.Count / Channels);
        var brix = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            var sugar = 0.0;
            for (var cell = from; cell < to; cell++)
            {
                sugar += Members[Field.Sugar + pan.First + cell][member];
            }

            brix[member] = 100 * FractionOf(sugar, Members.Liters(pan, member) * (to - from) / pan.Count);
        }

        return Band.Of(new RankedValues(brix).At);
    }
}
