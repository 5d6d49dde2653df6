namespace Panside.Workshop.Worlds.Drafted;

/// <summary>The brick of the drafted world: layers one behind the other, each at one temperature.</summary>
internal static class DraftedSlab
{
    /// <summary>One second.</summary>
    /// <param name="rig">Its sizes.</param>
    /// <param name="before">Each layer, in °C, the face first.</param>
    /// <param name="after">The same a second later.</param>
    /// <param name="toFace">Heat to the face, in MJ.</param>
    /// <param name="air">The air, in °C.</param>
    /// <returns>Heat out at the back, in MJ.</returns>
    public static double Conducted(DraftedRig rig, ReadOnlySpan<double> before, Span<double> after, double toFace, double air)
    {
        var comes = toFace;
        for (var layer = 0; layer < DraftedRig.Layers; layer++)
        {
            var goes = layer + 1 < DraftedRig.Layers
                ? rig.LayerConduction * (before[layer] - before[layer + 1])
                : rig.BackLoss * (before[layer] - air);
            after[layer] = before[layer] + ((comes - goes) / rig.LayerCapacity);
            comes = goes;
        }

        return comes;
    }

    /// <summary>Brick and sheet together, in °C, so that the rig's capacity times it is their heat.</summary>
    public static double Mean(DraftedRig rig, ReadOnlySpan<double> layers, double sheet)
    {
        var (heat, capacity) = (sheet * rig.StackCapacity, rig.StackCapacity);
        foreach (var layer in layers)
        {
            heat += layer * rig.LayerCapacity;
            capacity += rig.LayerCapacity;
        }

        return heat / capacity;
    }
}
