using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>
/// The first reckoning of the rig: three stores of heat (volatiles, coals, brick) that empty exponentially into a pan of
/// one well-mixed body, stepped by whole minutes. Energy and mass are kept exactly within a step. Not modelled: cells along
/// the pan, the lid, wind, uneven heat. Accuracy: as wide as <see cref="Spread"/> says.
/// </summary>
public static class RigModel
{
    private const double SecondsPerMinute = 60;

    /// <summary>Water's specific heat in MJ/(kg K), from the sucrose form at 0 Brix; see [S7] in docs/sources.md.</summary>
    private const double WaterHeat = 4.19e-3;

    /// <summary>Heat a square meter of hot surface gives to the air a kelvin, in kW: no source, calibrated.</summary>
    internal const double SurfaceLoss = 0.012;

    /// <summary>Water that a hot, still surface gives off, in kg/(m² h kPa) of vapor pressure: no source, calibrated.</summary>
    internal const double SurfaceEvaporation = 0.04;

    private const double AirCelsius = 2;

    /// <summary>The rig cold, with the pan at a depth.</summary>
    public static RigState Cold(RigDescription rig, Temperature boiling) => new()
    {
        Pan = rig.PanArea * rig.RunDepth,
        PanTemperature = Temperature.FromCelsius(4),
        Sap = SugarContent.FromBrix(2),
        SapTemperature = Temperature.FromCelsius(4),
        Boiling = boiling,
        HeldDepth = rig.RunDepth,
        PanSugar = Mass.FromKilograms((rig.PanArea * rig.RunDepth).Liters * 0.02),
    };

    /// <summary>A charge of wood goes in.</summary>
    public static RigState Charged(RigDescription rig, RigState state, Mass wood)
    {
        var heat = rig.HeatOf(wood);
        return state with
        {
            Flame = state.Flame + (heat * (1 - FireConstants.CoalShare)),
            Coals = state.Coals + (heat * FireConstants.CoalShare),
        };
    }

    /// <summary>The heat of coals when the fire has run long at the usual firing.</summary>
    public static Energy UsualCoals(RigDescription rig) =>
        rig.HeatOfCharge * (FireConstants.CoalShare * FireConstants.Of(rig.ForcedDraft).CoalMinutes / rig.Interval.TotalMinutes);

    /// <summary>Heat to the pan now.</summary>
    public static Power HeatToPan(RigDescription rig, RigState state)
    {
        var (flame, coals, brick) = Flows(rig, state);
        var toPan = FireConstants.Of(rig.ForcedDraft).ToPan;
        return Power.FromKilowatts(
            state.HeatFactor * ((toPan * (flame + coals)) + (FireConstants.BrickToPan * brick)) * 1000 / SecondsPerMinute);
    }

    /// <summary>
    /// The mean rate when the usual charge goes in at its interval and everything has come to a balance: heat of fire and
    /// brick to the pan, less the surface's loss to the air, over the heat that warms the feed and boils it away.
    /// </summary>
    public static VolumeRate SteadyRate(RigDescription rig, RigState state)
    {
        var constants = FireConstants.Of(rig.ForcedDraft);
        var fire = rig.HeatOfCharge.Megajoules / rig.Interval.TotalMinutes;
        var heat = state.HeatFactor * fire * (constants.ToPan + (FireConstants.BrickToPan * FireConstants.ToBrick));
        var each = Steam.LatentHeatMegajoulesPerKilogram(state.Boiling)
            + (WaterHeat * (state.Boiling - state.SapTemperature).Celsius);
        return VolumeRate.FromLitersPerHour(60 * double.Max(heat - Losses(rig, state.Boiling).Sensible, 0) / each);
    }

    /// <summary>Heat that the hot surface gives off without boiling: below it a boil goes still.</summary>
    public static Power StillBelow(RigDescription rig, RigState state) =>
        Power.FromKilowatts(Losses(rig, state.Boiling).Total * 1000 / SecondsPerMinute);

    /// <summary>One minute on.</summary>
    public static RigState Step(RigDescription rig, RigState state)
    {
        var (flame, coals, brick) = Flows(rig, state);
        var constants = FireConstants.Of(rig.ForcedDraft);
        var heat = state.HeatFactor * ((constants.ToPan * (flame + coals)) + (FireConstants.BrickToPan * brick));
        var (sensible, evaporative) = (Losses(rig, state.PanTemperature).Sensible, Losses(rig, state.PanTemperature).Evaporative);
        var latent = Steam.LatentHeatMegajoulesPerKilogram(state.Boiling);
        var water = state.Pan.Liters;
        var capacity = double.Max(water, 1) * WaterHeat;

        // Surface losses first; what is left warms the pan up to boiling; what is left of that boils.
        var net = heat - sensible - evaporative;
        var toBoiling = capacity * (state.Boiling - state.PanTemperature).Celsius;
        var boils = net > toBoiling;
        var temperature = boils ? state.Boiling : state.PanTemperature + TemperatureRise.FromCelsius(net / capacity);
        temperature = temperature.Celsius < AirCelsius ? Temperature.FromCelsius(AirCelsius) : temperature;
        var steam = (evaporative / latent) + (boils ? (net - toBoiling) / latent : 0);
        steam = double.Min(steam, double.Max(water - 0.1, 0));

        var left = Volume.FromLiters(water - steam);
        var wanted = (rig.PanArea * state.HeldDepth) - left;
        var fed = rig.HasFloat && wanted.Liters > 0
            ? Volume.FromLiters(double.Min(wanted.Liters, state.Tank?.Liters ?? wanted.Liters))
            : default;
        var mixed = temperature.Celsius - ((temperature - state.SapTemperature).Celsius * fed.Liters / double.Max((left + fed).Liters, 1));
        return state with
        {
            Flame = state.Flame - Energy.FromMegajoules(flame),
            Coals = state.Coals - Energy.FromMegajoules(coals),
            Brick = state.Brick + Energy.FromMegajoules((FireConstants.ToBrick * (flame + coals)) - brick),
            Pan = left + fed,
            PanTemperature = Temperature.FromCelsius(mixed),
            PanSugar = state.PanSugar + Mass.FromKilograms(fed.Liters * state.Sap.MassFraction),
            Tank = state.Tank - fed,
            Fed = state.Fed + fed,
            Evaporated = state.Evaporated + Volume.FromLiters(steam),
            Rate = VolumeRate.FromLitersPerHour(steam * 60),
            IsBoiling = boils,
        };
    }

    /// <summary>Many minutes on.</summary>
    public static RigState Step(RigDescription rig, RigState state, int minutes)
    {
        for (var minute = 0; minute < minutes; minute++)
        {
            state = Step(rig, state);
        }

        return state;
    }

    /// <summary>Time constant of this rig's brick in minutes: more brick, slower.</summary>
    internal static double BrickMinutes(RigDescription rig) =>
        FireConstants.Of(rig.ForcedDraft).BrickMinutes
        * double.Max(rig.Firebrick.Pounds / (15 * rig.PanArea.SquareFeet), 0.1);

    /// <summary>Heat leaving each store in the next minute, in MJ, exact for an exponential.</summary>
    private static (double Flame, double Coals, double Brick) Flows(RigDescription rig, RigState state)
    {
        var constants = FireConstants.Of(rig.ForcedDraft);
        return (
            state.Flame.Megajoules * (1 - double.Exp(-1 / constants.FlameMinutes)),
            state.Coals.Megajoules * (1 - double.Exp(-1 / constants.CoalMinutes)),
            state.Brick.Megajoules * (1 - double.Exp(-1 / BrickMinutes(rig))));
    }

    /// <summary>Heat given off by the surface in a minute, in MJ: to the air, and with vapor below the boil.</summary>
    private static (double Sensible, double Evaporative, double Total) Losses(RigDescription rig, Temperature pan)
    {
        var area = rig.PanArea.SquareMeters;
        var sensible = double.Max(SurfaceLoss * area * (pan.Celsius - AirCelsius) * SecondsPerMinute / 1000, 0);
        var evaporative = SurfaceEvaporation * area * VaporPressure(pan.Celsius) / 60 * 2.3;
        return (sensible, evaporative, sensible + evaporative);
    }

    /// <summary>Vapor pressure of water in kPa: the Magnus form 0.61094 exp(17.625 t/(t + 243.04)), from memory, 1 % over 0–100 °C.</summary>
    internal static double VaporPressure(double celsius) => 0.61094 * double.Exp(17.625 * celsius / (celsius + 243.04));
}
