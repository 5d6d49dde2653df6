namespace Panside.Reckoning.Ensemble;

/// <summary>The cells of one pan: of two, the one behind comes first on the sap's way.</summary>
/// <param name="First">The first.</param>
/// <param name="Count">How many.</param>
/// <param name="IsBack">Whether it is the pan behind the one with the draw-off.</param>
internal readonly record struct Stretch(int First, int Count, bool IsBack);
