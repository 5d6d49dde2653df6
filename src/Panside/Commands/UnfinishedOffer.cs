using System.Globalization;
using Panside.Guide.Words;

namespace Panside.Commands;

/// <summary>The question before everything else where a boil was left in the middle: to go on with it, or to begin another.</summary>
internal static class UnfinishedOffer
{
    /// <summary>Tells what was left, and how long ago.</summary>
    /// <param name="path">The record.</param>
    /// <param name="now">What time it is.</param>
    public static string Told(string path, DateTimeOffset now)
    {
        var ago = now - File.GetLastWriteTimeUtc(path);
        var span = ago < TimeSpan.FromDays(2)
            ? Amount.Minutes(double.Max(ago.TotalMinutes, 0))
            : string.Create(CultureInfo.InvariantCulture, $"{ago.TotalDays:0} days");
        return $"An unfinished boil was left {span} ago: {path}";
    }

    /// <summary>Asks until it is answered; the end of the input answers no.</summary>
    /// <returns>Whether to go on with it.</returns>
    public static bool IsTaken(string path, DateTimeOffset now, TextReader input, TextWriter output)
    {
        output.WriteLine($"> {Told(path, now)}. Go on with it?");
        while (true)
        {
            output.WriteLine("  [yes goes on, no begins another boil; the record stays either way]");
            output.Flush();
            switch (input.ReadLine()?.Trim().ToLowerInvariant())
            {
                case "yes" or "y" or "":
                    return true;
                case "no" or "n" or null:
                    return false;
            }
        }
    }
}
