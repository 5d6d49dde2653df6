using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// The boiling-point elevation by sugar fraction and back, in K, from a table of half a Brix between which it is straight: 0.01 K
/// from <see cref="BoilingPointElevation"/>. Many members ask at once.
/// </summary>
internal sealed class RiseTable
{
    private const int Last = 170;

    private const double PlacesPerFraction = 200;

    private readonly double[] _rises = new double[Last + 1];

    /// <summary>The table at a pressure.</summary>
    public RiseTable(Pressure station)
    {
        for (var place = 0; place <= Last; place++)
        {
            _rises[place] = BoilingPointElevation.Of(SugarContent.FromBrix(100 * place / PlacesPerFraction), station).Celsius;
        }
    }

    /// <summary>The elevation at a fraction, from 0 to 0.85.</summary>
    public double Of(double fraction)
    {
        var place = double.Clamp(fraction * PlacesPerFraction, 0, Last);
        var low = int.Min((int)place, Last - 1);
        return _rises[low] + ((place - low) * (_rises[low + 1] - _rises[low]));
    }

    /// <summary>The fraction at an elevation; 0 or 0.85 outside.</summary>
    public double FractionAt(double rise)
    {
        if (rise <= _rises[0] || rise >= _rises[^1])
        {
            return rise <= _rises[0] ? 0 : Last / PlacesPerFraction;
        }

        var found = Array.BinarySearch(_rises, rise);
        var high = found >= 0 ? int.Max(found, 1) : ~found;
        return (high - 1 + ((rise - _rises[high - 1]) / (_rises[high] - _rises[high - 1]))) / PlacesPerFraction;
    }
}
