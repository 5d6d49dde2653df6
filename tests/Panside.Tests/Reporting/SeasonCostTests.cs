using System.Diagnostics;
using System.Text.Json;
using System.Xml.Linq;
using Panside.Commands;
using Panside.Reporting;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Reporting;

/// <summary>What a season's book costs in time and memory: measured with nothing beside it.</summary>
[Collection(ProcessAlone.Name)]
public class SeasonCostTests
{
    /// <summary>The promise is 2 s on the machine of the measured figures; twice that here, beside whatever else the machine does.</summary>
    [Fact]
    public void A_thousand_sessions_are_summed_in_a_breath_and_kept_in_little_memory()
    {
        using var scratch = new Scratch();
        var record = File.ReadAllBytes(Story.Demo("long-boil"));
        Fill(0, 250);
        SeasonBook.Of(scratch.Folder, false);
        var few = Kept();
        Fill(250, 1000);
        var watch = Stopwatch.StartNew();
        var many = Kept();
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(4), $"{watch.Elapsed.TotalSeconds:F1} s");

        // 750 more records of 110 kB each: what is kept of one is its row of the book.
        Assert.InRange(many - few, 0, 750 * 1200);

        void Fill(int from, int to)
        {
            for (var number = from; number < to; number++)
            {
                File.WriteAllBytes(scratch[$"{number:0000}.jsonl"], record);
            }
        }

        long Kept()
        {
            var before = GC.GetTotalMemory(forceFullCollection: true);
            var book = SeasonBook.Of(scratch.Folder, false);
            var kept = GC.GetTotalMemory(forceFullCollection: true) - before;
            GC.KeepAlive(book);
            return kept;
        }
    }
}
