using System.Diagnostics;
using CsCheck;
using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Yaml;
using Panside.Laws;
using Panside.Tests.Checks;
using Panside.Tests.Reckon;

namespace Panside.Tests.Door;

/// <summary>The exit statuses that are promised, whatever stands on the command line.</summary>
public class ExitStatusTests
{
    private static readonly string[] Commands =
    [
        "check", "check --graph", "replay --plain", "replay --verify", "replay --moments", "replay", "report", "report --format csv", "report --format html", "season", "season --csv",
        "season --json", "import", "plan", "plan --sap 60gal", "reckon", "reckon draw-point", "rig", "boil --plain", "boil --forget", "practice --list", "completion bash",
        "completion", "--version", "--help", "--plain", "nonsense", "",
    ];

    private static readonly string[] Options =
    [
        "--rig", "--flow", "--journal", "--home", "--guidance", "--plain", "--from", "--to", "--speed", "--format", "--json", "--units", "--lit", "--end", "--say", "--theme", "--ascii",
        "--learn", "--", "-", "--sap", "--at", "--scenario", "--help",
    ];

    [Fact]
    public void Whatever_stands_on_the_command_line_the_status_is_one_that_is_promised_and_no_trace_is_shown()
    {
        using var scratch = new Scratch();
        Fill(scratch);
        string[] values =
        [
            "", " ", "\0", "x\0y", scratch["nothing"], scratch.Folder, "/dev/null", "/dev/full", "/dev/zero", "/proc/self/mem", "/", "//", ".", "..", "@nothing", "@",
            "[suggest]", "\u001b[31m", "\u202e", "٣", "-1", "1e400", "NaN", "9999-12-31", "0001-01-01", "17:05", "24:61", new string('x', 5000), new string('/', 5000), "true", "us", "md",
            scratch["rig.yaml"], scratch["flow.yaml"], scratch["boil.jsonl"], scratch["torn.jsonl"], scratch["table.csv"], scratch["zeros"], scratch["loop"], "cold-start",
        ];
        var token = Gen.Frequency((3, Gen.OneOf(values)), (2, Gen.OneOf(Options)), (1, Gen.OneOf(Options).Select(Gen.OneOf(values), (option, value) => $"{option}={value}")));
        var home = scratch["home"];
        Gen.OneOf(Commands).Select(token.Array[0, 4], (command, tokens) => (string[])[.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), .. tokens])
            .Where(words => !words.Contains("practice") || words.Contains("--list")).Holds(
                words =>
                {
                    using var aside = new Aside(home);
                    var ran = Typed.Into(["yes", "stop"], words);
                    var told = $"{string.Join(' ', words.Select(word => word.Length > 40 ? word[..40] : word))} gave {ran.Status}: {ran.Errors}";
                    Assert.True(ran.Status is ExitStatus.Done or ExitStatus.Wrong or ExitStatus.Unusable or ExitStatus.Interrupted, told);
                    Assert.DoesNotContain("   at Panside", ran.Errors, StringComparison.Ordinal);
                    Assert.DoesNotContain('\u001b', ran.Out + ran.Errors);
                    Assert.DoesNotContain('\u202e', ran.Out + ran.Errors);
                },
                cases: 250);
    }

    [Theory]
    [InlineData("check", "")]
    [InlineData("replay", "")]
    [InlineData("report", "")]
    [InlineData("import", "")]
    [InlineData("season", "")]
    [InlineData("rig", "")]
    [InlineData("boil", "--plain", "--rig", "")]
    [InlineData("boil", "--plain", "--flow", "")]
    [InlineData("boil", "--plain", "--journal", "")]
    [InlineData("boil", "--plain", "--home", "")]
    [InlineData("boil", "--plain", "--rig", "/dev/zero")]
    [InlineData("boil", "--plain", "--rig", "/")]
    [InlineData("boil", "--plain", "--journal", "/")]
    [InlineData("boil", "--plain", "--journal", "/dev/full")]
    [InlineData("boil", "--plain", "--journal", "/dev/null")]
    [InlineData("check", "/dev/zero")]
    [InlineData("check", "x\0y")]
    [InlineData("check", "@nothing")]
    [InlineData("practice", "--plain", "--at", "0001-01-01")]
    [InlineData("practice", "--plain", "--at", "9999-12-31")]
    public void An_argument_that_cannot_be_used_is_status_2_with_a_sentence(params string[] words)
    {
        using var scratch = new Scratch();
        using var aside = new Aside(scratch.Folder);
        var ran = Typed.Into(["tank 22"], words);
        Assert.Equal((ExitStatus.Unusable, ""), (ran.Status, ran.Out));
        Assert.Single(ran.Errors.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void A_pipe_is_no_record()
    {
        using var scratch = new Scratch();
        Fill(scratch);
        var ran = Typed.Into(["tank 22"], "boil", "--plain", "--home", scratch.Folder, "--journal", scratch["fifo"]);
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Contains("is a pipe or a device", ran.Errors, StringComparison.Ordinal);
    }

    /// <summary>The check that a record is a file must not cost what stands in it.</summary>
    [Fact]
    public void An_empty_file_and_a_record_are_files_and_stay_as_they_are()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["empty.jsonl"], "");
        File.WriteAllText(scratch["record.jsonl"], "{}\n");
        GivenFile.DemandToWrite(scratch["empty.jsonl"]);
        GivenFile.DemandToWrite(scratch["record.jsonl"]);
        GivenFile.DemandToWrite(scratch["new.jsonl"]);
        Assert.Equal(("", "{}\n", false), (File.ReadAllText(scratch["empty.jsonl"]), File.ReadAllText(scratch["record.jsonl"]), File.Exists(scratch["new.jsonl"])));
    }

    public static TheoryData<Exception, int> Faults => new()
    {
        { new UnusableException("x"), ExitStatus.Unusable },
        { new FaultyFileException([new("x", 1, 1, "a", "b")]), ExitStatus.Unusable },
        { new IOException("x"), ExitStatus.Unusable },
        { new UnauthorizedAccessException("x"), ExitStatus.Unusable },
        { new AggregateException(new IOException("x")), ExitStatus.Unusable },
        { new OutputGoneException(new("x")), ExitStatus.Interrupted },
        { new OutputGoneException(new("x", OutputGoneException.BrokenPipe)), ExitStatus.Interrupted },
        { new InvalidOperationException("x"), ExitStatus.OurFault },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Each_fault_has_its_status_in_one_place(Exception fault, int status)
    {
        using var scratch = new Scratch();
        using var aside = new Aside(scratch.Folder);
        using var errors = new StringWriter();
        Assert.Equal(status, Ending.Of(fault, errors));
        Assert.Equal(fault is OutputGoneException { IsClosed: true }, errors.ToString().Length == 0);
    }

    private static void Fill(Scratch scratch)
    {
        foreach (var name in new[] { "rig.yaml", "flow.yaml" })
        {
            File.WriteAllText(scratch[name], Library.BuiltIn(name == "rig.yaml" ? "rigs/" + Library.BuiltInRig : "flows/" + Library.BuiltInFlow));
        }

        var record = RepositoryFiles.Read("demo-sessions", "first-shutdown.jsonl").Split('\n')[..40];
        File.WriteAllText(scratch["boil.jsonl"], string.Join('\n', record) + "\n");
        File.WriteAllText(scratch["torn.jsonl"], string.Join('\n', record)[..^20]);
        File.WriteAllText(scratch["table.csv"], "at,what,name,value,unit\n2031-03-08T17:00:00-05:00,reading,tank-volume,20,gal\n");
        File.WriteAllBytes(scratch["zeros"], new byte[5000]);
        File.CreateSymbolicLink(scratch["loop"], scratch["loop"]);
        using var made = Process.Start("mkfifo", [scratch["fifo"]]);
        made.WaitForExit();
    }
}
