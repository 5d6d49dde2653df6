namespace Panside.Reckoning.Ensemble;

/// <summary>The numbers of which a member consists, by their place. Behind the last one stands the sugar of each cell, in kg; behind that, of two pans, what <see cref="Members.DrawPan"/> tells.</summary>
internal static class Field
{
    /// <summary>Heat in unburned volatiles, in MJ.</summary>
    public const int Flame = 0;

    /// <summary>Heat in the coals, in MJ.</summary>
    public const int Coals = 1;

    /// <summary>Heat in the brick above the pan's boiling point, in MJ.</summary>
    public const int Brick = 2;

    /// <summary>Liquid in the pan, of two in both, in liters.</summary>
    public const int Pan = 3;

    /// <summary>Its temperature, in °C.</summary>
    public const int Temperature = 4;

    /// <summary>Sap in the tank, in liters.</summary>
    public const int Tank = 5;

    /// <summary>Water that has left the pan so far, in liters.</summary>
    public const int Evaporated = 6;

    /// <summary>Sap that the tank has given so far, in liters.</summary>
    public const int Fed = 7;

    /// <summary>Water that left by boiling in the last minute, in liters.</summary>
    public const int Steam = 8;

    /// <summary>All water that left in the last minute, in liters.</summary>
    public const int Rate = 9;

    /// <summary>What draft, wood and weather do to the heat for a while, as a logarithm.</summary>
    public const int Weather = 10;

    /// <summary>How much more than it is said to the float holds in the pan, in liters.</summary>
    public const int FloatOff = 11;

    /// <summary>How far heat to the pan is above what the size suggests, as a logarithm.</summary>
    public const int Heat = 12;

    /// <summary>Time constant of the volatiles in minutes, as a logarithm.</summary>
    public const int FlameTime = 13;

    /// <summary>Time constant of the coals in minutes, as a logarithm.</summary>
    public const int CoalTime = 14;

    /// <summary>Time constant of the brick in minutes, as a logarithm.</summary>
    public const int BrickTime = 15;

    /// <summary>Share of the fire's heat that goes into the brick, as a logarithm.</summary>
    public const int ToBrick = 16;

    /// <summary>Share of the wood's heat that its coals give off.</summary>
    public const int CoalShare = 17;

    /// <summary>Heat that a hot surface loses to the air, in MJ a minute, a square meter and a kelvin, as a logarithm.</summary>
    public const int AirLoss = 18;

    /// <summary>Vapor that a hot surface gives off, in liters a minute, a square meter and a kPa, as a logarithm.</summary>
    public const int Vapor = 19;

    /// <summary>Exchange between neighboring cells without feed, in liters a minute and a square meter of pan, as a logarithm.</summary>
    public const int Mixing = 20;

    /// <summary>Sugar of the sap, as a mass fraction.</summary>
    public const int Sap = 21;

    /// <summary>Error of the tank's gauge, in liters.</summary>
    public const int GaugeOff = 22;

    /// <summary>Error of the thermometer's rise over boiling water, in K.</summary>
    public const int ThermometerOff = 23;

    /// <summary>Sugar of the first cell, in kg; the other cells' follow.</summary>
    public const int Sugar = 24;

    /// <summary>The first of the numbers that stay through a boil.</summary>
    public const int FirstTrait = Heat;
}
