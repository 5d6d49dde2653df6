using System.Runtime.InteropServices;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>Ensembles as bytes and back, to the last bit: so that a session can be gone on with without hearing all of it again.</summary>
public sealed partial class RigEnsemble
{
    /// <summary>Writes ensembles of one rig; what one shares with the one before it is written once.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="ensembles">The ensembles.</param>
    public static void Write(BinaryWriter to, IReadOnlyList<RigEnsemble> ensembles)
    {
        to.Write(ensembles.Count);
        RigEnsemble? before = null;
        foreach (var one in ensembles)
        {
            one.Write(to, before?.Members);
            before = one;
        }
    }

    /// <summary>Reads what <see cref="Write(BinaryWriter, IReadOnlyList{RigEnsemble})"/> has written.</summary>
    /// <param name="from">Where from.</param>
    /// <param name="like">Any ensemble of the same rig.</param>
    /// <exception cref="InvalidDataException">They are of another rig.</exception>
    public static IReadOnlyList<RigEnsemble> Read(BinaryReader from, RigEnsemble like)
    {
        var all = new List<RigEnsemble>();
        for (var left = from.ReadInt32(); left > 0; left--)
        {
            all.Add(like.Read(from, all.Count > 0 ? all[^1].Members : null));
        }

        return all;
    }

    private void Write(BinaryWriter to, Members? before)
    {
        to.Write(Boiling.Celsius);
        to.Write(Minute);
        to.Write(Told);
        to.Write(Common.HeldDepth.Meters);
        to.Write(Common.IsTankKnown);
        to.Write(Common.IsThermometerKnown);
        to.Write(Common.IsLearned);
        to.Write(Common.AreCoalsLevel);
        to.Write(Common.ChargesPaced);
        to.Write(Common.PaceMegajoules);
        to.Write(Common.PaceMinutes);
        to.Write(Common.IsBurning);
        to.Write(Common.IsFloodUnread);
        foreach (var minute in new[] { Common.ChargedAt, Common.LitAt, Common.ChilledAt })
        {
            to.Write(minute ?? -1);
        }

        to.Write(Common.HeldBackDepth.Meters);
        to.Write(Common.IsBackFloodUnread);
        to.Write(Members.Count);
        to.Write(Members.Cells);
        to.Write(Members.BackCells);
        for (var field = 0; field < Members.Fields; field++)
        {
            var bytes = MemoryMarshal.AsBytes(Members[field].AsSpan());
            var isShared = before is not null && bytes.SequenceEqual(MemoryMarshal.AsBytes(before[field].AsSpan()));
            to.Write(isShared);
            if (!isShared)
            {
                to.Write(bytes);
            }
        }
    }

    private RigEnsemble Read(BinaryReader from, Members? before)
    {
        var (boiling, minute, told) = (Temperature.FromCelsius(from.ReadDouble()), from.ReadInt32(), from.ReadInt32());
        int? Minutes() => from.ReadInt32() is >= 0 and var known ? known : null;
        var common = new Common
        {
            HeldDepth = Length.FromMeters(from.ReadDouble()),
            IsTankKnown = from.ReadBoolean(),
            IsThermometerKnown = from.ReadBoolean(),
            IsLearned = from.ReadBoolean(),
            AreCoalsLevel = from.ReadBoolean(),
            ChargesPaced = from.ReadInt32(),
            PaceMegajoules = from.ReadDouble(),
            PaceMinutes = from.ReadDouble(),
            IsBurning = from.ReadBoolean(),
            IsFloodUnread = from.ReadBoolean(),
            ChargedAt = Minutes(),
            LitAt = Minutes(),
            ChilledAt = Minutes(),
            HeldBackDepth = Length.FromMeters(from.ReadDouble()),
            IsBackFloodUnread = from.ReadBoolean(),
        };
        if (from.ReadInt32() != Members.Count || from.ReadInt32() != Members.Cells || from.ReadInt32() != Members.BackCells)
        {
            throw new InvalidDataException("The ensemble is of another rig.");
        }

        var members = new Members(Members.Count, Members.Cells, Members.BackCells);
        for (var field = 0; field < members.Fields; field++)
        {
            if (from.ReadBoolean())
            {
                before![field].CopyTo(members[field], 0);
            }
            else
            {
                from.BaseStream.ReadExactly(MemoryMarshal.AsBytes(members[field].AsSpan()));
            }
        }

        return new(Rig, Prior, boiling, members, common) { Minute = minute, Told = told };
    }
}
