namespace Panside.Workshop.Shutdowns;

/// <summary>One look at a boil near its end; volumes and depths in the rig's units.</summary>
/// <param name="Minute">On the clock, in minutes from midnight before the boil.</param>
/// <param name="Water">Water still to leave the open pan with no more wood.</param>
/// <param name="Still">Minutes until the boil goes still with no more wood.</param>
/// <param name="Tank">Sap that truly is in the tank.</param>
/// <param name="Depth">Depth that truly is at the pan's shallowest place.</param>
internal sealed record ShutdownLook(double Minute, Fan Water, Fan Still, double Tank, double Depth);
