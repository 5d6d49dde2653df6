using System.Text;
using System.Text.Json;
using Panside.Practice.Assurance;

namespace Panside.Commands;

/// <summary>Many boils for programs: one JSON object.</summary>
internal static class AssuranceJson
{
    /// <summary>The object, in one line. Volumes in US gallons, times in minutes, sugar in Brix, coverage as a share of 1; docs/assurance.schema.json.</summary>
    public static string Of(IReadOnlyList<AssuredBoil> boils, int scenarios, long seed)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteNumber("boils", boils.Count);
            json.WriteNumber("seed", seed);
            json.WriteString("operator", "advice");
            json.WriteNumber("scenarios-taken-in-turn", scenarios);
            json.WriteStartArray("scenarios");
            foreach (var one in Assured.By(boils))
            {
                Write(json, one);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Assured one)
    {
        json.WriteStartObject();
        json.WriteString("scenario", one.Scenario);
        json.WriteNumber("boils", one.Boils.Count);
        json.WriteNumber("scorched", one.Scorched);
        json.WriteNumber("near-misses", one.NearMisses);
        json.WriteNumber("clear-too-early", one.ClearTooEarly);
        json.WriteNumber("not-ended", one.Unended);
        Write(json, "sap-left", one.LeftGallons);
        Write(json, "minutes-waited", one.WaitedMinutes);
        Write(json, "syrup-error", one.SyrupErrorBrix);
        Write(json, "alarms-per-ten-minutes", one.AlarmsPerTenMinutes);
        json.WriteNumber("alarms-peak", one.AlarmPeak);
        Write(json, "residual-coverage", one.ResidualCoverage);
        Write(json, "still-coverage", one.StillCoverage);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(name, Math.Round(known, 3));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
