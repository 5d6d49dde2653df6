namespace Panside.Picturing;

/// <summary>Something that happened once.</summary>
/// <param name="Minute">On the clock, in minutes from midnight before the boil.</param>
/// <param name="Name">What it was.</param>
public sealed record Mark(double Minute, string Name);
