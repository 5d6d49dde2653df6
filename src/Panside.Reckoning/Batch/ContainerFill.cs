using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>A batch in containers.</summary>
/// <param name="Filled">Full containers.</param>
/// <param name="HotVolumeOfEach">What goes hot into each.</param>
/// <param name="HotVolumeLeft">What is left over, hot.</param>
public readonly record struct ContainerFill(int Filled, Volume HotVolumeOfEach, Volume HotVolumeLeft);
