using System.Diagnostics;
using System.Globalization;
using Panside.Fuzz.Targets;

namespace Panside.Fuzz;

/// <summary>Tries a target with changed inputs until the time is over, and keeps what it finds.</summary>
internal sealed class FuzzRun(Target target, Asked asked)
{
    /// <summary>After the first cases, memory that is held may grow by so much and no more.</summary>
    private const long GrowthAtMost = 64 << 20;

    private const int Warm = 200;

    private readonly Mutator _mutator = new(target.Corpus());
    private TimeSpan _took;
    private long _held;
    private long _grown;

    /// <summary>How many cases were tried.</summary>
    public long Cases { get; private set; }

    /// <summary>How many inputs (lines, files) they held.</summary>
    public long Inputs { get; private set; }

    /// <summary>How many found something.</summary>
    public int Findings { get; private set; }

    /// <summary>The longest that one input took of the processor's time.</summary>
    public TimeSpan Longest { get; private set; }

    /// <summary>The counts, in a line.</summary>
    public string Told => string.Create(
        CultureInfo.InvariantCulture,
        $"{target.Name,-13} {Cases,9} cases {Inputs,10} inputs in {_took.TotalSeconds,5:0.0} s of the processor, longest {Longest.TotalMilliseconds,5:0} ms, memory {_grown / 1048576.0,5:0.0} MB, {Findings} findings");

    /// <summary>Tries.</summary>
    public void Go()
    {
        // What is made once (the states that sessions begin at, the machine's own code) is made before anything is measured.
        using (var trial = target.Begin(asked.Seed, 0))
        {
            foreach (var one in _mutator.Make(asked.Seed, 0, target.Parts))
            {
                try
                {
                    trial.Try(one);
                }
                catch (Exception fault) when (fault is not OutOfMemoryException)
                {
                    // It comes again as the first case.
                }
            }
        }

        var begun = Environment.CpuUsage.TotalTime;
        var clock = Stopwatch.StartNew();
        for (var number = asked.Only ?? 0; Cases < (asked.Only is null ? asked.Runs : 1) && clock.Elapsed < asked.Time; number++)
        {
            Try(number);
            Cases++;
            if (Cases == Warm)
            {
                _held = GC.GetTotalMemory(forceFullCollection: true);
            }
        }

        _took = Environment.CpuUsage.TotalTime - begun;
        _grown = _held > 0 ? GC.GetTotalMemory(forceFullCollection: true) - _held : 0;
        if (_grown > GrowthAtMost)
        {
            Find(-1, [], new InvalidOperationException($"{_grown >> 20} MB more are held after {Cases} cases than after {Warm}."));
        }
    }

    private void Try(long number)
    {
        var input = _mutator.Make(asked.Seed, number, target.Parts);
        try
        {
            using var trial = target.Begin(asked.Seed, number);
            foreach (var one in input)
            {
                var began = Environment.CpuUsage.TotalTime;
                trial.Try(one);
                Inputs++;
                var took = Environment.CpuUsage.TotalTime - began;
                Longest = took > Longest ? took : Longest;
                if (took > target.Patience)
                {
                    throw new TimeoutException($"One input took {took.TotalSeconds:0.0} s.");
                }
            }
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            Find(number, input, fault);
        }
    }

    private void Find(long number, IReadOnlyList<byte[]> input, Exception fault)
    {
        Findings++;
        if (Findings > 20)
        {
            return;
        }

        Directory.CreateDirectory(asked.Findings);
        var path = Path.Combine(asked.Findings, $"{target.Name}-{asked.Seed}-{number}.txt");
        File.WriteAllBytes(path, [.. input.SelectMany(one => one.Append((byte)'\n'))]);
        Console.Error.WriteLine($"{target.Name}: seed {asked.Seed}, case {number}: {fault.GetType().Name}: {fault.Message.Split('\n')[0]}");
        Console.Error.WriteLine($"  input in {path}; again with --target {target.Name} --seed {asked.Seed} --case {number}");
        Console.Error.WriteLine(string.Join('\n', (fault.StackTrace ?? "").Split('\n').Take(4)));
    }
}
