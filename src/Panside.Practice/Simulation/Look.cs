using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Practice.Simulation;

/// <summary>What a person sees who looks at the simulated rig, and what the instruments show: some lines of text.</summary>
public static class Look
{
    /// <summary>Less than this is no sample: an empty tank has no sugar.</summary>
    private const double LeastLiters = 0.1;

    /// <summary>The lines.</summary>
    public static IEnumerable<string> At(PracticeRig rig, Instruments instruments)
    {
        string Read(ReadingName name) => $"{name.Spoken} {instruments.Read(name)}";
        string See(ObservationName name) => $"{name.Code} {Sights.Of(rig, name)}";
        yield return string.Join("; ", Read(ReadingName.TankVolume), Read(ReadingName.PanDepth),
            rig.Makeup.Rig.Feed != Feed.ByHand ? rig.IsFed ? "sap feeds the pan" : "no sap comes" : "fed by hand");
        if (rig.BackDepth is not null)
        {
            yield return Read(ReadingName.BackPanDepth);
        }

        var sap = Read(ReadingName.SapBrix);
        yield return string.Join("; ", Read(ReadingName.DrawTemperature), Read(ReadingName.BoilingWaterTemperature),
            rig.Tank.Liters < LeastLiters ? "no sap to read" : sap, Read(ReadingName.PanBrix));
        yield return string.Join("; ", ObservationName.All.Where(name => name.IsThere(rig.Makeup.Rig)).Select(See));
        if (rig.Pail.Liters > 0.05)
        {
            yield return string.Join("; ", $"in the pail {instruments.Read(ReadingName.DrawnVolume)}",
                Read(ReadingName.SampleTemperature), Read(ReadingName.HydrometerBrix));
        }
    }
}
