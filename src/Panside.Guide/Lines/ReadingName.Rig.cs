using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Lines;

/// <content>What is read at the tank and at the pan.</content>
public sealed partial class ReadingName
{
    /// <summary>Sap in the head tank.</summary>
    public static readonly ReadingName TankVolume = new("tank-volume", Dimension.Volume, "tank", TimeSpan.FromMinutes(15))
    {
        Words = ["tank", "sap in tank", "head tank"],
        Row = "tank",
        Usual = boil => ToVolume(boil.Units, boil.Rig.Tank),
        Possible = rig => ToVolume(rig.Units, rig.MostInTank),
        Expected = TankExpected,
        WouldTake = (_, _, isHigh) => isHigh ? "It would take a refill that was not told." : "It would take a leak, or an open draw-off.",
        WarnsOfDanger = (boil, tank, _) => boil.Units.Volume(tank).Liters <= EmptyLiters,
        Doubted = TankDoubted,
    };

    /// <summary>Depth of liquid in the pan.</summary>
    public static readonly ReadingName PanDepth = new("pan-depth", Dimension.Length, "pan depth", TimeSpan.FromMinutes(20))
    {
        Words = ["depth", "level", "pan level", "pan"],
        Row = "depth",
        Usual = boil => (boil.Units.From(boil.Rig.LeastDepth), boil.Units.From(boil.Rig.FloodDepth)),
        Possible = rig => (rig.Units.From(default(Length)), rig.Units.From(rig.WallDepth)),
        Expected = boil => DepthExpected(
            boil, PanDepth!, boil.Rig.RunDepth, boil.Rig.LeastDepth, boil.Rig.FloodDepth, boil.Expected.Depth, boil.IsPanFallen),
        WouldTake = (boil, _, _) => $"It would take sap poured in that was not told{(boil.Rig.HasFloat ? ", or a float stuck open" : "")}.",
        WarnsOfDanger = (_, _, isHigh) => !isHigh,
        Doubted = DepthDoubted,
    };

    /// <summary>Depth of liquid in the pan behind the one with the draw-off, over its flues.</summary>
    public static readonly ReadingName BackPanDepth = new("back-pan-depth", Dimension.Length, "back pan depth", TimeSpan.FromMinutes(20))
    {
        IsThere = rig => rig.Back is not null,
        Row = "back pan",
        Words = ["back pan", "back pan level", "flue pan", "flue pan depth", "back depth", "rear pan", "rear depth", "depth back", "depth of the back pan", "depth of the rear pan", "depth of the flue pan"],
        Usual = boil => (boil.Units.From(Behind(boil.Rig).Least), boil.Units.From(Behind(boil.Rig).Flood)),
        Possible = rig => (rig.Units.From(default(Length)), rig.Units.From(Behind(rig).Wall)),
        Expected = boil => boil.Rig.Back is { } pan && boil.Expected.BackDepth is { } expected
            ? DepthExpected(boil, BackPanDepth!, pan.RunDepth, pan.LeastDepth, pan.FloodDepth, expected, boil.IsBackPanFallen)
            : null,
        WouldTake = (_, _, _) => "It would take sap poured in that was not told, or a float stuck open.",
        WarnsOfDanger = (_, _, isHigh) => !isHigh,
    };

    /// <summary>Temperature at the draw-off.</summary>
    public static readonly ReadingName DrawTemperature = new("draw-temperature", Dimension.Temperature, "draw-off temperature", TimeSpan.FromMinutes(10))
    {
        Instruments = ["thermometer"],
        Words = ["draw", "draw temp", "draw-off", "temp", "temperature"],
        Row = "draw-off",
        Usual = boil => (boil.Units.From(boil.Boiling, boil.Degree), boil.Units.From(boil.DrawPointToday + TemperatureRise.FromCelsius(1), boil.Degree)),
        Possible = _ => Between(-10, 130, Unit.DegreeCelsius),
        Expected = boil => DrawOffExpected(boil),
        WouldTake = (boil, read, isHigh) => !isHigh ? NotBoilingThere
            : UnitSystem.Temperature(read) > boil.Overdrawn
                ? "It would take sugar past syrup there: if so, say yes and pour sap in at the draw-off now."
            : UnitSystem.Temperature(read) >= boil.DrawPointToday
                ? "It would take syrup there: if so, say yes and draw it off now."
            : "It would take a much sweeter pan: if so, say yes, and have the pail ready.",
        WarnsOfDanger = (boil, read, _) => UnitSystem.Temperature(read) >= boil.DrawPointToday && (boil.IsPanFallen || IsOverDrawnPoint(boil)),
        Doubted = DrawOffDoubted,
    };

    /// <summary>Whether it stood at the draw point at the look before: syrup that is there thickens on, faster than anything is reckoned.</summary>
    private static bool IsOverDrawnPoint(IBoil boil) => boil.Last(DrawTemperature) is { } before && UnitSystem.Temperature(before.Value) >= boil.DrawPointToday
        && boil.MinutesSince(before.At) <= DrawTemperature.Interval.TotalMinutes * 2;

    /// <summary>The same thermometer in boiling water today.</summary>
    public static readonly ReadingName BoilingWaterTemperature = new("boiling-water-temperature", Dimension.Temperature, "boiling water", TimeSpan.FromHours(6))
    {
        Instruments = ["thermometer"],
        Words = ["water", "boiling water", "boiling", "water temp"],
        Usual = boil => (
            boil.Units.From(boil.Boiling - TemperatureRise.FromCelsius(2), boil.Degree), boil.Units.From(boil.Boiling + TemperatureRise.FromCelsius(2), boil.Degree)),
        Possible = _ => Between(85, 107, Unit.DegreeCelsius),
        Expected = boil => boil.Last(BoilingWaterTemperature!) is { } before
            ? new(UnitSystem.Temperature(before.Value).Celsius, 0.3)
            : new(boil.BoilingByWeather.Celsius, IsPressureRead(boil) ? 0.4 : 0.5),
        WouldTake = (_, _, _) => "It would take a thermometer that is off, water not at a full boil, or a quick change of weather.",
        Doubted = BoilingWaterDoubted,
    };

    /// <summary>The rows, in the order in which they are listed.</summary>
    internal static IEnumerable<ReadingName> AtTheRig => [TankVolume, PanDepth, DrawTemperature, BoilingWaterTemperature, BackPanDepth];

    /// <summary>Of a rig with one pan that pan's: whoever goes through all readings may ask before it is known which of them are there.</summary>
    private static (Length Least, Length Flood, Length Wall) Behind(Rig rig) =>
        rig.Back is { } back ? (back.LeastDepth, back.FloodDepth, back.WallDepth) : (rig.LeastDepth, rig.FloodDepth, rig.WallDepth);

    private const string NotBoilingThere = "It would take a pan that does not boil there, or a thermometer out of the liquid.";

    /// <summary>A tank so empty is told as empty.</summary>
    private const double EmptyLiters = 0.4;

    /// <summary>
    /// What two looks at a gauge are off by, as a share of the tank: each by one to two hundredths, marks and a bent tube together. Common
    /// practice, no source.
    /// </summary>
    private const double GaugeShare = 0.02;

    /// <summary>How far the boil of a rig that nobody modelled strays from what is reckoned, as a share of what it boiled. No source.</summary>
    private const double UnevenShare = 0.3;

    /// <summary>A tank lower than any member has it is questioned from so many deviations on.</summary>
    private const double FarFromMembers = 4.5;

    /// <summary>A boiling surface that heaves, and a pan that slopes, in meters.</summary>
    private const double Surface = 0.003;

    /// <summary>A ruler's quarter of an inch.</summary>
    private static Length SameDepth => Length.FromInches(0.25);

    /// <summary>
    /// Before the fire sap goes in as it comes, and nobody tells of each pail. Once no more wood goes in the pan is flooded out of the
    /// tank, and that is told when it is done: meanwhile the tank may hold less by as much.
    /// </summary>
    private static Expectation? TankExpected(IBoil boil)
    {
        var isRefilledSince = boil.Last(DeedName.RefillTank) is { Value: null } told && !(boil.Last(TankVolume)?.At.Time > told.At.Time);
        if (!IsLit(boil) || isRefilledSince || boil.Expected.Tank is not var (mean, deviation))
        {
            return null;
        }

        // A tank is known no better than by its gauge, and no rig boils as evenly as it is reckoned to. That less went than reckoned is held
        // against the reading sooner: so a gauge or a float shows that hangs.
        var gone = boil.Last(TankVolume) is { } last ? double.Max(boil.Units.Volume(last.Value).Liters - mean, 0) : 0;
        var own = With(With(deviation, GaugeShare * boil.Rig.Tank.Liters), UnevenShare * gone);
        var flood = boil.MayBeFlooding ? boil.Rig.ToFlood.Liters : 0;
        return boil.Rig.Feed == Feed.ByHand
            ? new(mean, With(deviation, Untold(boil) / 3)) { Below = With(own, (flood / 2) + (Untold(boil) / 2)) }
            : new(mean, deviation) { Below = With(own, flood / 2) };
    }

    /// <summary>
    /// What a tank that is dipped from may be off by, in liters, beside its gauge: it falls in pails, not all of which are told, by what has
    /// boiled away since it was read, and by two pails more or fewer that stand beside the pan.
    /// </summary>
    private static double Untold(IBoil boil) => boil.Last(TankVolume) is { } last
        ? (boil.Likely.Rate.LitersPerHour * boil.MinutesSince(last.At) / 60) + (2 * boil.Rig.Pail.Liters)
        : 0;

    /// <summary>
    /// Whether a tank over a hot fire that is fed did not fall, though such a fire boils away more than its marks could hide. Members that may boil slowly would believe it, and with it a gauge or a float that hangs.
    /// </summary>
    private static bool HardlyFell(IBoil boil, double liters, Moment from, Moment to) =>
        boil.FiredLitersPerHour * (to.Time - from.Time).TotalHours >= LeastToTell && liters < NoFall
        && boil.IsSeenBoiling && boil.Last(DeedName.LitFire) is { } lit && from.Time - lit.At.Time >= Hot && !IsOverItsFloat(boil);

    /// <summary>Whether the pan stood deeper than it is run when it was last read: then the float is shut, and the tank gives nothing.</summary>
    private static bool IsOverItsFloat(IBoil boil) => boil.Rig.HasFloat && boil.Last(PanDepth) is { } read
        && UnitSystem.Length(read.Value) > boil.Rig.RunDepth + Length.FromMeters(Surface);

    /// <summary>In liters: less says nothing beside what a gauge is off by. No source.</summary>
    private const double LeastToTell = 7;

    /// <summary>In liters: half a mark.</summary>
    private const double NoFall = 1;

    /// <summary>So long after lighting a fire gives most of what it will. No source.</summary>
    private static readonly TimeSpan Hot = TimeSpan.FromMinutes(15);

    private static Doubt? TankDoubted(IBoil boil, Reading reading)
    {
        var now = boil.Units.Volume(reading.Measure);
        if (!IsLit(boil) || boil.Last(TankVolume) is not { } last || boil.Likely.Tank is not { } likely)
        {
            return null;
        }

        // No member floods before it is told, so a tank that falls meanwhile is not held against them.
        var isMembersToo = boil.Rig.Feed != Feed.ByHand && (now > likely || !boil.MayBeFlooding);
        var expectation = TankExpected(boil);
        var hardlyFell = isMembersToo && now > likely && HardlyFell(boil, boil.Units.Volume(last.Value).Liters - now.Liters, last.At, reading.At);
        var isFar = hardlyFell || expectation?.IsFar(now.Liters) == true
            || (isMembersToo && boil.Expected.IsFar(now) && (now > likely || expectation?.Off(now.Liters) < -FarFromMembers));
        var refill = boil.Last(DeedName.RefillTank) is { } told && told.At.Time >= last.At.Time ? told : (Noted<Measure?>?)null;
        if (!isFar || (now > likely ? refill is { Value: null } : now.Liters <= EmptyLiters))
        {
            return null;
        }

        string Shown(Volume volume) => Amount.Shown(boil.Units.From(volume));
        var expected = boil.Units.Volume(last.Value).Liters + (refill is { Value: { } added } ? boil.Units.Volume(added).Liters : 0);
        var gone = expected - now.Liters;
        var minutes = double.Max(1, double.Ceiling((reading.At.Time - last.At.Time).TotalMinutes));
        var since = $"in {Amount.Minutes(minutes)}";
        if (Shown(now) == Shown(now <= likely ? Volume.FromLiters(expected) : likely))
        {
            // What differs by less than is shown is not asked about; that nothing went over a hot fire is.
            return !hardlyFell ? null : new(
                $"{Shown(now)}? That is nothing gone from the tank {since}, and such a fire boils away {Amount.Shown(boil.Units.From(VolumeRate.FromLitersPerHour(boil.FiredLitersPerHour)))}.",
                "It would take a gauge that hangs, or a fire much weaker than the last hour's.");
        }

        return now <= likely
            ? new(
                $"{Shown(now)}? That is {Shown(Volume.FromLiters(gone))} gone {since}, from {Shown(Volume.FromLiters(expected))}.",
                $"It would take a leak, an open draw-off, or {Amount.Shown(boil.Units.From(VolumeRate.FromLitersPerHour(gone * 60 / minutes)))} of boiling.")
            : gone > 0 || Shown(now) == Shown(Volume.FromLiters(expected))
            ? new(
                $"{Shown(now)}? That is {(Shown(now) == Shown(Volume.FromLiters(expected)) ? "nothing" : $"only {Shown(Volume.FromLiters(gone))}")} gone from the tank {since}; {Shown(likely)} is reckoned.",
                "It would take a fire much weaker than the last hour's, or a refill that was not told.")
            : new(
                $"{Shown(now)}? That is {Shown(Volume.FromLiters(-gone))} more in the tank {since}, and no refill was said.",
                "It would take a refill that was not told; or the reading before was low.");
    }

    /// <summary>
    /// Before the fire, without a float, in an emergency and after a pan that was too low, it holds what a hand has poured in. Over
    /// a float it comes down to the float: a pan that was filled deeper than it is run says nothing of where that is. Once no more
    /// wood goes in, it may be filled up to the flood depth by hand; a pan that was read low, up to its run depth.
    /// </summary>
    private static Expectation DepthExpected(
        IBoil boil, ReadingName name, Length runDepth, Length least, Length flood, (double Mean, double Deviation) reckoned, bool isFallen)
    {
        var run = runDepth.Meters;
        var wasLow = boil.Last(name) is { } last && UnitSystem.Length(last.Value) < least;
        if (!IsLit(boil) || boil.Rig.Feed == Feed.ByHand || wasLow || boil.IsEmergency || Poured.IsUnmeasuredSince(boil.Last(DeedName.FillPan), boil.Last(name)?.At))
        {
            return new(1.2 * run, 0.35 * run);
        }

        var (mean, deviation) = reckoned;
        var isFlooded = boil.Last(DeedName.FloodPan) is not null;
        var fillsTo = boil.IsHeld ? flood.Meters : isFallen ? run : 0;
        var toFill = double.Max(fillsTo - mean, 0);
        return new(mean, With(deviation, Surface + (toFill / 3)))
        {
            Below = With(deviation, Surface + (isFlooded ? 0 : double.Max(mean - run, 0) / 3)),
        };
    }

    /// <summary>
    /// What was insisted on is not doubted again while it stands there: each yes would make the rig less known, until nothing is
    /// certain enough to let anybody go.
    /// </summary>
    private static Doubt? DepthDoubted(IBoil boil, Reading reading)
    {
        var depth = UnitSystem.Length(reading.Measure);
        var most = boil.Rig.FloodDepth * 2;
        var isInsisted = boil.Last(PanDepth) is { } last && UnitSystem.Length(last.Value) is var taken && taken > most && depth < taken + SameDepth;
        return RoseByNothing(boil, depth) is { } rose
            ? new($"{Amount.Plain(reading.Measure)}, and {Amount.Plain(rose.Value)} {Amount.Minutes(boil.MinutesSince(rose.At))} ago? No sap that was told of could raise it so.", "It would take sap or water that was not told: then say yes. Else read it again, at the shallow end.")
            : depth > most && !isInsisted
            ? new(
                $"{Amount.Plain(reading.Measure)} deep? This pan runs at {Amount.Shown(boil.Units.From(boil.Rig.RunDepth))} and floods at {Amount.Shown(boil.Units.From(boil.Rig.FloodDepth))}.",
                $"It would take {(boil.Rig.HasFloat ? "a float stuck open" : "many pails that were not told")}, or a reading in another unit.")
            : null;
    }

    /// <summary>
    /// The depth read before, where no more wood goes in, this one stands higher, and by more than the tank held and was told as poured: what
    /// reassures is doubted. A hand that feeds from pails tells not of each; a flood is told when it is done, and where the pan is low, or in
    /// an emergency, whoever was asked to pour need only say the depth.
    /// </summary>
    private static Noted<Measure>? RoseByNothing(IBoil boil, Length depth) =>
        boil.IsHeld && !boil.IsEmergency && !boil.IsPanFallen && boil.Rig.Feed != Feed.ByHand && !(boil.MayBeFlooding && depth <= boil.Rig.FloodDepth + SameDepth) && boil.Last(PanDepth) is { } before && UnitSystem.Length(before.Value) is var was && depth > was + SameDepth + SameDepth
        && boil.SapToComeSince(before.At) is { } most && (depth - was).Meters * boil.Rig.PanArea.SquareMeters * 1000 > most.Liters + PailLiters + (GaugeShare * boil.Rig.Tank.Liters)
            ? before : null;

    /// <summary>A small pail, in liters: what two readings of tank and ruler can be off by together. No source.</summary>
    private const double PailLiters = 6;

    /// <summary>
    /// What the members leave out of the draw-off's way grows with the time since it was read. A pan that is not seen to boil,
    /// or into which sap was poured, may be colder by any amount; while it is drawn, thinner liquid follows.
    /// </summary>
    private static Expectation DrawOffExpected(IBoil boil)
    {
        var (mean, deviation) = boil.ExpectedRise;
        var isBoilingKnown = boil.IsThermometerKnown || IsPressureRead(boil);
        var leftOut = boil.Last(DrawTemperature) is { } read ? 0.3 + (0.015 * int.Min(boil.MinutesSince(read.At), 60))
            : boil.Last(PanBrix) is not null ? 0.6 : 1.8;
        var own = With(With(deviation, leftOut), isBoilingKnown ? 0 : 0.4);
        var below = !boil.IsSeenBoiling ? 20 : boil.IsDrawShut ? double.Max(own, 0.5) : 2;
        return new(boil.Boiling.Celsius + mean, own) { Below = below };
    }

    private static Doubt? DrawOffDoubted(IBoil boil, Reading reading)
    {
        var read = UnitSystem.Temperature(reading.Measure);
        var low = boil.IsSeenBoiling && read < boil.Boiling - TemperatureRise.FromCelsius(6);
        if (!low && read <= boil.Boiling + TemperatureRise.FromCelsius(9))
        {
            return IsTooSoonForSyrup(boil, read)
                ? new(
                    $"{Amount.Plain(reading.Measure)} so soon after lighting? The pan has hardly boiled, and raw sap is no syrup.",
                    "It would take sweet liquid left from the last boil: then say yes. Else look at the thermometer again.")
                : null;
        }

        var point = Amount.Shown(boil.Units.From(boil.DrawPointToday, reading.Measure.Unit));
        var range = $"Water boils at {Amount.Shown(boil.Units.From(boil.Boiling, reading.Measure.Unit))} today and syrup is drawn at {point}.";
        return new(
            $"{Amount.Plain(reading.Measure)} at the draw-off? {range}{OtherDegree(reading.Measure, boil.Boiling, 9)}",
            low ? NotBoilingThere : "It would take sugar nearly candy there: if so, flood the pan now.");
    }

    /// <summary>
    /// Whether the draw point is read before the pan can well have boiled: minutes after lighting, with next to no water gone and nobody
    /// having told of sugar in the pan. A pan that was read low may scorch, and is believed.
    /// </summary>
    private static bool IsTooSoonForSyrup(IBoil boil, Temperature read) =>
        boil.Last(DeedName.LitFire) is { } lit && boil.MinutesSince(lit.At) < FirstMinutes && boil.Likely.Evaporated.Liters < FirstLiters
        && read >= boil.DrawPointToday - TemperatureRise.FromCelsius(0.8)
        && boil.Last(PanBrix) is null && boil.Last(DrawBrix) is null && !boil.IsPanFallen && !boil.IsSeenBoiling;

    /// <summary>So soon no cold pan is at the draw point; common practice, no source.</summary>
    private const int FirstMinutes = 12;

    private const double FirstLiters = 2;

    private static Doubt? BoilingWaterDoubted(IBoil boil, Reading reading)
    {
        var (read, expected) = (UnitSystem.Temperature(reading.Measure), boil.BoilingByWeather);
        if (double.Abs((read - expected).Celsius) > 2.2)
        {
            return new(
                $"{Amount.Plain(reading.Measure)} in boiling water? About {Amount.Shown(boil.Units.From(expected, reading.Measure.Unit))} is expected here.{OtherDegree(reading.Measure, expected, 2.2)}",
                "It would take a thermometer that is off, water not at a full boil, or another altitude than the rig file says.");
        }

        return boil.Last(BoilingWaterTemperature) is { } before && reading.At.Time - before.At.Time <= WeatherHolds
            && double.Abs((read - UnitSystem.Temperature(before.Value)).Celsius) > LooksApart
                ? new($"{Amount.Plain(reading.Measure)} in boiling water? It was {Amount.Plain(before.Value)} within the hour.", "It would take a slip at one of the two looks, or water not at a full boil.")
                : null;
    }

    /// <summary>Within so long the weather moves boiling water by no more than <see cref="LooksApart"/>, in K: that are 28 hPa. No source.</summary>
    private static readonly TimeSpan WeatherHolds = TimeSpan.FromHours(1);

    /// <summary>Two looks by whole degrees Fahrenheit may be one apart; the draw point goes by them, a Brix for each 0.2 K.</summary>
    private const double LooksApart = 0.75;

    private static bool IsPressureRead(IBoil boil) => boil.Last(StationPressure) is not null || boil.Last(Barometer) is not null;

    private static string OtherDegree(Measure measure, Temperature near, double within)
    {
        var other = measure.Unit == Unit.DegreeFahrenheit ? Unit.DegreeCelsius : Unit.DegreeFahrenheit;
        return Measure.Of(measure.Value, other) is { } swapped && double.Abs((UnitSystem.Temperature(swapped) - near).Celsius) <= within
            ? $" {Amount.Plain(swapped)} would fit: type it with its unit."
            : "";
    }
}
