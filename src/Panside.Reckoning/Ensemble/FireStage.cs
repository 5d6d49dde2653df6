namespace Panside.Reckoning.Ensemble;

/// <summary>How far a fire and its pan have come.</summary>
internal enum FireStage
{
    /// <summary>Lit not long ago, and the pan does not boil yet.</summary>
    Kindling,

    /// <summary>The pan boils; brick and stack are not hot yet.</summary>
    Warming,

    /// <summary>Fired at its interval.</summary>
    Fired,

    /// <summary>Without wood for more than two intervals, and the pan boils.</summary>
    Dying,

    /// <summary>Without wood for more than two intervals, and the pan does not boil.</summary>
    Still,
}
