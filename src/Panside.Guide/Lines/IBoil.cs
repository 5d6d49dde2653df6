using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Lines;

/// <summary>A value and when it was said.</summary>
public readonly record struct Noted<T>(Moment At, T Value);

/// <summary>The boil as it stands: what the row of a thing may ask of it to say what is usual, expected or hard to believe.</summary>
public interface IBoil
{
    /// <summary>The rig as its file describes it.</summary>
    Rig Rig { get; }

    /// <summary>The rig as it most likely stands.</summary>
    RigState Likely { get; }

    /// <summary>What its instruments would show now.</summary>
    ExpectedReadings Expected { get; }

    /// <summary>Whether the thermometer was read in boiling water.</summary>
    bool IsThermometerKnown { get; }

    /// <summary>The units shown and assumed.</summary>
    UnitSystem Units => Rig.Units;

    /// <summary>The degree that the pan's thermometer shows: that of its last reading, else the one of <see cref="Units"/>.</summary>
    Unit Degree { get; }

    /// <summary>Where this rig's thermometer stands in boiling water.</summary>
    Temperature Boiling => Likely.Boiling;

    /// <summary>Where it should stand there by the pressure that was read last, else by the altitude.</summary>
    Temperature BoilingByWeather { get; }

    /// <summary>Where the draw-off thermometer stands at syrup today.</summary>
    Temperature DrawPointToday { get; }

    /// <summary>Where it stands when the liquid is no syrup any more.</summary>
    Temperature Overdrawn { get; }

    /// <summary>What the members expect of the draw-off over boiling water, in K.</summary>
    (double Mean, double Deviation) ExpectedRise { get; }

    /// <summary>Whether the operator has said that no more wood goes in.</summary>
    bool IsHeld { get; }

    /// <summary>Whether sap may be going from the tank into the pan for the flood.</summary>
    bool MayBeFlooding { get; }

    /// <summary>
    /// The most that can have gone into the pan since a moment: what the tank held by its readings from the last one before it on, and what was told as
    /// poured since. Null where nobody can say: no tank read, a refill, a flood, a pour of an amount that was not told, or a still
    /// pan that is asked to be filled before anybody leaves.
    /// </summary>
    Volume? SapToComeSince(Moment moment);

    /// <summary>Whether the pan was last read well under its run depth over a fire.</summary>
    bool IsPanFallen { get; }

    /// <summary>The same of the pan behind, where there is one.</summary>
    bool IsBackPanFallen { get; }

    /// <summary>Whether the flow stands in an emergency.</summary>
    bool IsEmergency { get; }

    /// <summary>Whether the pan was seen at a good boil, and nothing since has taken it off.</summary>
    bool IsSeenBoiling { get; }

    /// <summary>Whether the draw-off is shut.</summary>
    bool IsDrawShut { get; }

    /// <summary>What a fire fed as the rig file says boils away on a good rig, in liters an hour; 0 while nobody fires.</summary>
    double FiredLitersPerHour { get; }

    /// <summary>The newest reading of a kind; null where there is none.</summary>
    Noted<Measure>? Last(ReadingName name);

    /// <summary>The newest deed of a kind; null where there is none.</summary>
    Noted<Measure?>? Last(DeedName name);

    /// <summary>Whole minutes from a moment until now, never negative.</summary>
    int MinutesSince(Moment moment);
}
