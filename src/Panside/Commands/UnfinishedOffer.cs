using System.Globalization;
using Panside.Guide.Measures;

namespace Panside.Commands;

/// <summary>The question before everything else where a boil was left in the middle: to go on with it, or to begin another.</summary>
internal static class UnfinishedOffer
{
    /// <summary>Tells what was left, and how long ago.</summary>
    public static string Told(UnfinishedBoil boil) => $"An unfinished boil was left {Ago(boil)} ago: {boil.Path}";

    /// <summary>How long ago it was left.</summary>
    public static string Ago(UnfinishedBoil boil) => boil.Ago < TimeSpan.FromDays(2)
        ? Amount.Minutes(double.Max(boil.Ago.TotalMinutes, 0))
        : string.Create(CultureInfo.InvariantCulture, $"{boil.Ago.TotalDays:0} days");

    /// <summary>Asks until it is answered; the end of the input answers no.</summary>
    /// <returns>Whether to go on with it.</returns>
    public static bool IsTaken(UnfinishedBoil boil, TextReader input, TextWriter output)
    {
        output.WriteLine($"> {Told(boil)}. Go on with it?");
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
