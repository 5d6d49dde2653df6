using System.Numerics;
using System.Runtime.CompilerServices;

namespace Panside.Reckoning.Ensemble;

/// <summary>Vapor pressure of water, in kPa.</summary>
internal static class VaporPressure
{
    /// <summary>The Magnus form 0.61094 exp(17.625 t/(t + 243.04)), from memory: high by 0.4 % at 60 °C and by 2.7 % at 100 °C.</summary>
    public static double At(double celsius) => 0.61094 * double.Exp(17.625 * celsius / (celsius + 243.04));

    /// <summary>
    /// The same over the air's, without an exponential: by a polynomial that is 0.0012 kPa from it over 0–108 °C. Its powers are
    /// summed side by side, since each step waits for it.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> Over(Vector<double> air, Vector<double> celsius)
    {
        var square = celsius * celsius;
        var low = (celsius * 4.515790157478342e-2) + (new Vector<double>(0.6098639945246405) - air);
        var middle = (celsius * 31.938608411716487e-6) + new Vector<double>(13.11957513616963e-4);
        var high = (celsius * 36.70275198638407e-10) + new Vector<double>(17.190161864760952e-8);
        return low + (square * middle) + (square * square * high);
    }
}
