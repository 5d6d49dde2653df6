using BenchmarkDotNet.Attributes;
using Panside.Reporting;

namespace Panside.Benchmarks;

/// <summary>The season's book over a thousand records of a long boil, 110 kB each.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class SeasonOfBoils
{
    private const int Boils = 1000;

    private string _folder = "";

    [GlobalSetup]
    public void Fill()
    {
        _folder = Directory.CreateTempSubdirectory("panside-season-").FullName;
        var record = Known.Text("long-boil.jsonl");
        for (var number = 0; number < Boils; number++)
        {
            File.WriteAllText(Path.Combine(_folder, $"{number:0000}.jsonl"), record);
        }
    }

    [GlobalCleanup]
    public void Clear() => Directory.Delete(_folder, recursive: true);

    /// <summary>Read and summed.</summary>
    [Benchmark]
    public int Summed() => SeasonBook.Of(_folder, practice: false).Boils.Count;

    /// <summary>Read, summed and written as HTML with charts.</summary>
    [Benchmark]
    public int Shown() => HtmlPages.Of(SeasonReport.Of(SeasonBook.Of(_folder, practice: false), practice: false)).Length;
}
