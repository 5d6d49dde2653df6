using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Reckoning.Quantities;

namespace Panside.Reporting;

/// <summary>One boil of the book, in SI units; null where a record does not say.</summary>
internal sealed record BookedBoil
{
    /// <summary>The record's file name.</summary>
    public required string File { get; init; }

    /// <summary>When it began.</summary>
    public required Moment Begin { get; init; }

    /// <summary>The rig's name.</summary>
    public required string Rig { get; init; }

    /// <summary>Whether the boil came to its end.</summary>
    public required bool HasEnded { get; init; }

    /// <summary>Whether it ended safe.</summary>
    public bool IsSafe { get; init; }

    /// <summary>Whether that could be judged: of a boil brought in from a table it could not.</summary>
    public bool IsJudged { get; init; }

    /// <summary>Sap used.</summary>
    public Volume? Sap { get; init; }

    /// <summary>Its sugar, in Brix.</summary>
    public double? SapBrix { get; init; }

    /// <summary>Syrup drawn.</summary>
    public Volume? Syrup { get; init; }

    /// <summary>Its density, in Brix.</summary>
    public double? SyrupBrix { get; init; }

    /// <summary>What the sap would give by a balance of sugar.</summary>
    public Volume? Balance { get; init; }

    /// <summary>Wood.</summary>
    public Mass? Wood { get; init; }

    /// <summary>From the first line to the last.</summary>
    public double? Hours { get; init; }

    /// <summary>From lighting to the last wood.</summary>
    public double? FiredHours { get; init; }

    /// <summary>Water boiled away, as reckoned.</summary>
    public Volume? Water { get; init; }

    /// <summary>What was told ahead beside what came; empty where that was not read.</summary>
    public IReadOnlyList<ToldAhead> Told { get; init; } = [];

    /// <summary>Wood for each liter of syrup drawn, in kilograms; null where hardly any was.</summary>
    public double? KilogramsPerSyrup => Syrup is { Liters: > 0.1 } syrup ? Wood?.Kilograms / syrup.Liters : null;

    /// <summary>Water for each hour of fire, in liters an hour; what boils after the last wood is counted too.</summary>
    public double? LitersPerHour => FiredHours > 0 ? Water?.Liters / FiredHours : null;

    /// <summary>Wood for each liter of water, in kilograms.</summary>
    public double? KilogramsPerLiter => Water is { Liters: > 1 } water ? Wood?.Kilograms / water.Liters : null;
}

/// <summary>All boils of a folder, in order of time.</summary>
/// <param name="Boils">The boils.</param>
/// <param name="Units">The units of the newest boil's rig.</param>
/// <param name="Learned">What its past boils had taught of each rig when its newest boil here began, by the rig's name.</param>
/// <param name="LeftOut">Records of the other kind: practice where boils are asked for.</param>
/// <param name="Unreadable">Files that are no record, or cannot be read now, each with why.</param>
internal sealed record SeasonBook(IReadOnlyList<BookedBoil> Boils, UnitSystem Units, IReadOnlyList<(string Rig, LearnedRig Learned)> Learned, int LeftOut, IReadOnlyList<string> Unreadable)
{
    /// <summary>Opens the book of a folder.</summary>
    /// <param name="folder">The folder with records.</param>
    /// <param name="practice">Whether practice is asked for instead of boils: one never counts among the other.</param>
    public static SeasonBook Of(string folder, bool practice)
    {
        var boils = new List<BookedBoil>();
        var unreadable = new List<string>();
        var learned = new SortedDictionary<string, (DateTimeOffset At, string? Text, string File)>(StringComparer.Ordinal);
        var rigs = new Dictionary<string, Rig>(StringComparer.Ordinal);
        var (leftOut, newest, units) = (0, DateTimeOffset.MinValue, UnitSystem.Us);
        foreach (var path in Directory.EnumerateFiles(folder, "*.jsonl").Order(StringComparer.Ordinal))
        {
            try
            {
                if (RecordEnds.Read(path) is not { } ends)
                {
                    unreadable.Add($"{path}: no session line in its first lines; left out.");
                    continue;
                }

                if (ends.Header.Practice != practice)
                {
                    leftOut++;
                    continue;
                }

                var text = ends.Header.RigText;
                var rig = rigs.TryGetValue(text, out var known) ? known : rigs[text] = RigFile.Read(path, text);
                boils.Add(Booked(Path.GetFileName(path), ends, rig));
                learned[rig.Name] = learned.TryGetValue(rig.Name, out var other) && other.At > ends.Begin.Time ? other : (ends.Begin.Time, ends.Header.LearnedText, path);
                (newest, units) = ends.Begin.Time >= newest ? (ends.Begin.Time, rig.Units) : (newest, units);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FaultyFileException)
            {
                unreadable.Add($"{path}: left out ({fault.Message.Split('\n')[0].TrimEnd('.')}).");
            }
        }

        return new([.. boils.OrderBy(boil => boil.Begin.Time)], units, [.. Taught(learned, unreadable)], leftOut, unreadable);
    }

    private static IEnumerable<(string Rig, LearnedRig Learned)> Taught(
        SortedDictionary<string, (DateTimeOffset At, string? Text, string File)> learned, List<string> unreadable)
    {
        foreach (var (rig, (_, text, file)) in learned)
        {
            LearnedRig? read = null;
            try
            {
                read = text is null ? null : LearnedFile.Read($"{file} (learned-file)", text);
            }
            catch (FaultyFileException fault)
            {
                unreadable.Add($"{fault.Faults[0]}; what was learned is not told.");
            }

            if (read is not null)
            {
                yield return (rig, read);
            }
        }
    }

    /// <summary>The book with what each boil was told ahead, beside what came. Each record is gone through for it; one that cannot be read now tells nothing.</summary>
    /// <param name="folder">The folder of the book.</param>
    public SeasonBook WithTold(string folder) => this with { Boils = [.. Boils.Select(boil => boil with { Told = ToldOf(Path.Combine(folder, boil.File), boil) })] };

    private static IReadOnlyList<ToldAhead> ToldOf(string path, BookedBoil boil)
    {
        try
        {
            return boil.HasEnded ? [.. ToldAhead.Of(RecordGlance.Read(path), boil.FiredHours)] : [];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The sum of all boils that say it; null where none does.</summary>
    public double? Sum(Func<BookedBoil, double?> amount) => Boils.Any(boil => amount(boil) is not null) ? Boils.Sum(boil => amount(boil) ?? 0) : null;

    /// <summary>One amount for each of another, over the boils that say both; null where none does.</summary>
    public double? Ratio(Func<BookedBoil, double?> amount, Func<BookedBoil, double?> of)
    {
        var both = Boils.Where(boil => amount(boil) is not null && of(boil) is > 0).ToList();
        return both.Count == 0 ? null : both.Sum(boil => amount(boil)!.Value) / both.Sum(boil => of(boil)!.Value);
    }

    private static BookedBoil Booked(string file, RecordEnds ends, Rig rig)
    {
        var (outcome, units) = (ends.Outcome, rig.Units);
        return new()
        {
            File = file,
            Begin = ends.Begin,
            Rig = rig.Name,
            HasEnded = outcome is not null,
            IsSafe = outcome?.Safe ?? false,
            IsJudged = outcome?.Judged ?? true,
            Sap = outcome?.SapUsed is { } sap ? units.Volume(sap) : null,
            SapBrix = outcome?.SapBrix?.Value,
            Syrup = outcome?.SyrupMade is { } syrup ? units.Volume(syrup) : null,
            SyrupBrix = outcome?.SyrupBrix?.Value,
            Balance = MassBalance.Syrup(outcome, units, rig.Target),
            Wood = outcome?.Wood is { } wood ? UnitSystem.Mass(wood) : null,
            Hours = outcome?.Minutes?.Value / 60,
            FiredHours = outcome?.FiredMinutes?.Value / 60,
            Water = outcome?.WaterBoiled is { } water ? units.Volume(water) : null,
        };
    }
}
