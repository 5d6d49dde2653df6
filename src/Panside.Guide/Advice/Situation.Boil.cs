using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <content>What the row of a thing may ask.</content>
public sealed partial class Situation : IBoil
{
    Rig IBoil.Rig => Setting.Rig;

    RigState IBoil.Likely => State.Rig;

    ExpectedReadings IBoil.Expected => State.Rigs.Expected;

    bool IBoil.IsThermometerKnown => State.Rigs.IsThermometerKnown;

    Unit IBoil.Degree => Degree;

    Temperature IBoil.BoilingByWeather =>
        DrawPoint.BoilingToday(Setting, State with { Readings = State.Readings.Remove(ReadingName.BoilingWaterTemperature) });

    Temperature IBoil.Overdrawn => DrawPointToday + Setting.Flow.Values.Rise(FlowValue.DrawFarOver);

    (double Mean, double Deviation) IBoil.ExpectedRise => State.Rigs.Expected.Rise(DrawPoint.PressureAt(State.Rig.Boiling));

    bool IBoil.IsEmergency => Setting.Flow.PhaseOf(State.Step).IsEmergency;

    bool IBoil.IsSeenBoiling => State.Last(ObservationName.Boil) is { Value: "rolling" or "steady" } boil && State.Rig.IsBoiling
        && !(State.Last(DeedName.FloodPan)?.At.Time >= boil.At.Time) && !(State.Last(DeedName.FillPan)?.At.Time >= boil.At.Time);

    bool IBoil.IsDrawShut => State.ThisDraw.IsShut;

    double IBoil.FiredLitersPerHour => IsFiring && !IsHeld && State.Rig.IsBoiling ? FiredLitersPerHour : 0;

    Volume? IBoil.SapToComeSince(Moment moment)
    {
        if (!State.Readings.TryGetValue(ReadingName.TankVolume, out var tank) || State.Last(DeedName.FloodPan)?.At.Time >= moment.Time
            || Poured.IsUnmeasuredSince(State.Last(DeedName.FillPan), moment)
            || (State.Last(DeedName.RefillTank) is { } refill && refill.At.Time >= moment.Time) || (State.StillSince is not null && ClearToLeave.IsTooShallow(this)))
        {
            return null;
        }

        var before = int.Max(tank.FindLastIndex(read => read.At.Time <= moment.Time), 0);
        var most = tank.Skip(before).Max(read => Setting.Units.Volume(read.Value).Liters);
        return Volume.FromLiters(most + State.Pours.Where(pour => pour.At.Time >= moment.Time).Sum(pour => pour.Volume.Liters));
    }

    Noted<Measure>? IBoil.Last(ReadingName name) => State.Last(name);

    Noted<Measure?>? IBoil.Last(DeedName name) => State.Last(name);

    int IBoil.MinutesSince(Moment moment) => State.MinutesSince(moment);
}
