using System.Runtime.InteropServices;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Ensemble;

/// <summary>Ensembles as bytes and back, to the last bit: so that a session can be gone on with without hearing all of it again.</summary>
public static class EnsembleBytes
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
            Write(to, one, before?.Members);
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
            all.Add(Read(from, like, all.Count > 0 ? all[^1].Members : null));
        }

        return all;
    }

    private static void Write(BinaryWriter to, RigEnsemble one, Members? before)
    {
        var (common, members) = (one.Common, one.Members);
        to.Write(one.Boiling.Celsius);
        to.Write(one.Minute);
        to.Write(one.Told);
        to.Write(common.HeldDepth.Meters);
        to.Write(common.IsTankKnown);
        to.Write(common.IsThermometerKnown);
        to.Write(common.IsLearned);
        to.Write(common.AreCoalsLevel);
        to.Write(common.ChargesPaced);
        to.Write(common.PaceMegajoules);
        to.Write(common.PaceMinutes);
        to.Write(common.IsBurning);
        to.Write(common.IsFloodUnread);
        foreach (var minute in new[] { common.ChargedAt, common.LitAt, common.ChilledAt })
        {
            to.Write(minute ?? -1);
        }

        to.Write(common.HeldBackDepth.Meters);
        to.Write(common.IsBackFloodUnread);
        to.Write(members.Count);
        to.Write(members.Cells);
        to.Write(members.BackCells);
        for (var field = 0; field < members.Fields; field++)
        {
            var bytes = MemoryMarshal.AsBytes(members[field].AsSpan());
            var isShared = before is not null && bytes.SequenceEqual(MemoryMarshal.AsBytes(before[field].AsSpan()));
            to.Write(isShared);
            if (!isShared)
            {
                to.Write(bytes);
            }
        }
    }

    private static RigEnsemble Read(BinaryReader from, RigEnsemble like, Members? before)
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
        if (from.ReadInt32() != like.Members.Count || from.ReadInt32() != like.Members.Cells || from.ReadInt32() != like.Members.BackCells)
        {
            throw new InvalidDataException("The ensemble is of another rig.");
        }

        var members = new Members(like.Members.Count, like.Members.Cells, like.Members.BackCells);
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

        return new(like.Rig, like.Prior, boiling, members, common) { Minute = minute, Told = told };
    }
}
