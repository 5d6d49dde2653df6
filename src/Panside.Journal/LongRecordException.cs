namespace Panside.Journal;

/// <summary>A record so long that hearing it again would take longer than a person waits: no boil makes one.</summary>
/// <param name="bytes">How many bytes would be heard again.</param>
public sealed class LongRecordException(long bytes) : Exception($"{bytes >> 20} MB of it would have to be heard again")
{
    /// <summary>More is not heard again: ten boils of a week each.</summary>
    public const long Most = 64 << 20;

    /// <summary>Throws where it is too much.</summary>
    /// <param name="bytes">How many bytes would be heard again.</param>
    /// <exception cref="LongRecordException">They are too many.</exception>
    public static void Demand(long bytes)
    {
        if (bytes > Most)
        {
            throw new LongRecordException(bytes);
        }
    }
}
