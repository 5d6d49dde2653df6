using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>When a charge is the last one: when the tank would come down to the stop within some minutes after it.</summary>
/// <param name="Stop">Sap that must be in the tank then.</param>
/// <param name="MinutesToNext">Minutes until the next charge is due.</param>
/// <param name="MinutesAhead">How far beyond a charge the tank is looked at.</param>
public readonly record struct LastChargeRule(Volume Stop, double MinutesToNext, double MinutesAhead);
