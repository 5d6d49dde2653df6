using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>One of the pans, as a ruler tells of it.</summary>
/// <param name="Cells">Its cells.</param>
/// <param name="Area">Its plan area.</param>
/// <param name="InFlues">What its flues hold under the ruler.</param>
/// <param name="Least">The depth that it must never fall below.</param>
/// <param name="Held">The depth that its float is taken to hold.</param>
/// <param name="FloatOff">The field by which a member's float holds it otherwise.</param>
/// <param name="IsFloodUnread">Whether nobody has read it since a flood.</param>
internal sealed record RuledPan(Stretch Cells, Area Area, Volume InFlues, Length Least, Length Held, int FloatOff, bool IsFloodUnread)
{
    /// <summary>The pan where the draw-off is.</summary>
    public static RuledPan OfDraw(RigEnsemble rigs) =>
        new(rigs.Members.Front, rigs.Rig.PanArea, default, rigs.Rig.LeastDepth, rigs.HeldDepth, rigs.Members.DrawPanOff, rigs.Common.IsFloodUnread);

    /// <summary>The pan behind it; null where there is none.</summary>
    public static RuledPan? OfBack(RigEnsemble rigs) => rigs.Rig.Back is not { } back
        ? null
        : new(rigs.Members.Back, back.Area, back.InFlues, back.LeastDepth, rigs.Common.HeldBackDepth, Field.FloatOff, rigs.Common.IsBackFloodUnread);

    /// <summary>How deep so many liters stand over the flues, in meters; below 0 where not even they are full.</summary>
    public double DepthOf(double liters) => (liters - InFlues.Liters) / 1000 / Area.SquareMeters;

    /// <summary>Liters at a depth over the flues, what they hold among it.</summary>
    public double LitersAt(Length depth) => ((Area * depth) + InFlues).Liters;
}
