using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>
/// The world that nothing is fitted on. Wood burns by batches whose rate rises and falls with what of them has burnt
/// (<see cref="UnseenFire"/>); char by reaction and diffusion under ash; the stack draws by its own gas; heat reaches the pan as
/// radiation of flame, bed and brick and from the gas along its way, brick (face and back), steel sides and stack metal store it
/// (<see cref="UnseenArch"/>); three pools a channel are mixed by bubbles and lose by correlations of free convection
/// (<see cref="UnseenPan"/>). A bulb of 15 s, a gauge in marks of a gallon, an operator somewhat late. Sources stand at the parts,
/// from memory; what has none is calibrated to what common practice reports of both two-by-four rigs. Left out: the door, gusts,
/// uneven charges of one evening, condensation in the stack, sap that wets the brick. A burner is the practised world's.
/// </summary>
internal sealed class UnseenWorld : World
{
    /// <inheritdoc/>
    public override string Name => "unseen";

    /// <inheritdoc/>
    public override string Summary => "batches that rise and fall, coals under ash, heat along the way of the gas, a pan stirred by bubbles: nothing is fitted on it";

    /// <inheritdoc/>
    public override double Slowness => 1.5;

    /// <inheritdoc/>
    public override double Skips => 0.04;

    /// <inheritdoc/>
    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        if (makeup.Rig.IsBurner)
        {
            return makeup;
        }

        var (own, pools) = (UnseenRig.Of(makeup, random), UnseenPan.InChannel * makeup.Rig.Channels);
        var cell = makeup.Area / pools;
        return makeup with
        {
            Own = own,
            CellArea = cell,
            HeatShares = UnseenPan.Shares(makeup.Rig.Channels, random),
            Passage = double.Min(20 * makeup.Area / Makeup.SmallPan, 200 * cell),
            CharShare = own.CharShare,
            UsualCoals = (makeup.Forced ? 0.5 : 1.4) * makeup.UsualFire * makeup.Rig.Interval.TotalSeconds,
        };
    }

    /// <inheritdoc/>
    public override Truth Begun(Makeup makeup, Truth truth)
    {
        var air = makeup.AirCelsius;
        return makeup.Rig.IsBurner ? truth : truth with
        {
            BrickCelsius = air,
            Own = new UnseenState(air, air, air, air, 0, 0.5, truth.Pan[^1].Celsius(makeup.Materials)).Kept(),
        };
    }

    /// <inheritdoc/>
    public override Truth Charged(Makeup makeup, Truth truth, double kilograms)
    {
        var heat = kilograms * makeup.WoodHeat;
        var flame = heat * (1 - makeup.CharShare);
        return heat <= 0 ? truth : truth with
        {
            Charges = truth.Charges.Add(new(flame, flame, makeup.CharShare / (1 - makeup.CharShare), 0)),
            CoalsLevel = false,
            Ledger = truth.Ledger with { Wood = truth.Ledger.Wood + heat },
        };
    }

    /// <inheritdoc/>
    public override Given Burned(Makeup makeup, Truth truth) =>
        makeup.Rig.IsBurner ? Fire.Step(makeup, truth) : UnseenArch.Burned(makeup, truth);

    /// <inheritdoc/>
    public override Truth Boiled(Makeup makeup, Truth truth, double heat) =>
        makeup.Rig.IsBurner ? Pan.Step(makeup, truth, heat) : UnseenPan.Step(makeup, truth, heat);

    /// <inheritdoc/>
    public override double Fuel(Truth truth) => truth.Coals + truth.Charges.Sum(charge => charge.Left + UnseenFire.CharLeft(charge));

    /// <inheritdoc/>
    public override double Stored(Makeup makeup, Truth truth) =>
        makeup.Rig.IsBurner ? base.Stored(makeup, truth) : UnseenArch.Stored((UnseenRig)makeup.Own!, truth);

    /// <inheritdoc/>
    public override double GaugedLiters(Makeup makeup, Truth truth, double liters) =>
        makeup.Own is UnseenRig rig ? liters * rig.Gauge : liters;

    /// <inheritdoc/>
    public override double DrawCelsius(Makeup makeup, Truth truth) =>
        makeup.Rig.IsBurner ? base.DrawCelsius(makeup, truth) : UnseenState.Of(truth).BulbCelsius;

    /// <inheritdoc/>
    public override (double Step, double Eye)? Scale(ReadingName name, Unit unit) => (name.Code, unit) switch
    {
        ("tank-volume", Unit.Gallon) => (1, 0.3),
        ("tank-volume", _) => (5, 1.2),
        ("draw-temperature" or "boiling-water-temperature", Unit.DegreeFahrenheit) => (0.5, 0.2),
        ("draw-temperature" or "boiling-water-temperature", _) => (0.5, 0.1),
        _ => null,
    };
}
