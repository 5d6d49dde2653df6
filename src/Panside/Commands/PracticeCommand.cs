using System.CommandLine;
using System.CommandLine.Completions;
using Panside.Faces;
using Panside.Journal;
using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Screen;

namespace Panside.Commands;

/// <summary><c>panside practice</c>: guides a boil on a simulated rig.</summary>
internal static class PracticeCommand
{
    /// <summary>An unattended practice is always on this evening: no machine clock comes into it.</summary>
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    private const double RefresherSpeed = 10;

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var speed = new Option<double>("--speed") { Description = "Times real time, 1 to 60.", DefaultValueFactory = _ => 1, HelpName = "N" };
        var scenario = new Option<string>("--scenario") { Description = "A built-in scenario, as --list shows them, or a scenario file.", DefaultValueFactory = _ => Scenario.ColdStart.Name, HelpName = "NAME|FILE" };
        scenario.CompletionSources.Add(_ => ScenarioLibrary.All.Select(one => new CompletionItem(one.Name)));
        var list = new Option<bool>("--list") { Description = "Shows the built-in scenarios." };
        var refresher = new Option<bool>(RefresherOffer.RefresherOption) { Description = "Ten minutes before the season: from shortly before the last charge to leaving, with the few checks that matter; 10 times real time unless said." };
        var paused = new Option<bool>("--paused") { Description = "Time stands still at first; 'go' lets it run." };
        var at = new Option<DateTime?>("--at") { Description = "When the practised boil begins, in local time, like '2031-03-08 16:00'; now unless said.", HelpName = "TIME" };
        var count = new Option<int?>("--count") { Description = "With --unattended: so many boils, all scenarios in turn unless one is named, as a table.", HelpName = "N" };
        var json = new Option<bool>("--json") { Description = "With --count: one JSON object, for programs." };
        var seed = new Option<long>("--seed") { Description = "Another seed is another rig of the same size; the same seed is the same rig.", DefaultValueFactory = _ => 1, HelpName = "N" };
        var unattended = new Option<bool>("--unattended") { Description = "A simulated operator follows the advice to the end; prints the outcome." };
        var plain = new Option<bool>("--plain") { Description = "The conversation as lines of text; chosen by itself without a terminal." };
        var stream = new Option<bool>("--stream") { Description = "Not with a simulated rig." };
        var say = SayOption.Create();
        var command = new Command("practice", "Guides a boil on a simulated rig.") { list, scenario, refresher, seed, speed, paused, at, unattended, count, json, plain, stream, say };
        var looks = new LookOptions().AddTo(command);
        var guided = new GuidedOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(stream))
            {
                throw new UnusableException(
                    "practice has no --stream: there, time and readings are what the lines in say, and a simulated rig would have to make up its own. Use --unattended, whose record is the same lines, or --plain.");
            }

            if (parsed.GetValue(speed) is not (>= 1 and <= PracticeClock.Fastest) and var wanted)
            {
                throw new UnusableException(FormattableString.Invariant($"--speed {wanted}: expected 1 to {PracticeClock.Fastest} times real time."));
            }

            var look = looks.Read(parsed);
            Option[] ofPerson = [refresher, paused, at, say];
            if (parsed.GetResult(unattended) is { Implicit: false } && ofPerson.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false }) is { } own)
            {
                throw new UnusableException($"{own.Name}: is for a person, and {unattended.Name} needs none. Leave one of them out.");
            }

            foreach (var (option, needs) in new (Option, Option)[] { (count, unattended), (json, count) })
            {
                if (parsed.GetResult(option) is { Implicit: false } && parsed.GetResult(needs) is not { Implicit: false })
                {
                    throw new UnusableException($"{option.Name}: goes with {needs.Name}. Add it.");
                }
            }

            if (parsed.GetValue(list))
            {
                foreach (var row in ScenarioLibrary.List())
                {
                    Console.Out.WriteLine(row);
                }

                return ExitStatus.Done;
            }

            var arguments = guided.Read(parsed);
            if (parsed.GetValue(count) is { } many)
            {
                var one = parsed.GetResult(scenario) is { Implicit: false } ? parsed.GetValue(scenario) : null;
                return Assured(arguments, one, many, parsed.GetValue(seed), parsed.GetValue(json));
            }

            var isRefresher = parsed.GetValue(refresher);
            if (isRefresher && parsed.GetResult(scenario) is { Implicit: false })
            {
                throw new UnusableException("--refresher: is a scenario of its own. Leave --scenario out.");
            }

            var where = ScenarioLibrary.Of(isRefresher ? ScenarioLibrary.Refresher : parsed.GetValue(scenario)!);
            if (arguments.Journal is { } path && File.Exists(path) && new FileInfo(path).Length > 0)
            {
                throw new UnusableException($"{path}: exists. A simulated rig is not gone on with; name a new file, or leave --journal out.");
            }

            if (!parsed.GetValue(unattended))
            {
                var isOwnSpeed = parsed.GetResult(speed) is { Implicit: false };
                var clock = new PracticeClock(TimeProvider.System, isRefresher && !isOwnSpeed ? RefresherSpeed : parsed.GetValue(speed));
                if (parsed.GetValue(at) is { } begin)
                {
                    if (begin.Year is < 1901 or > 2998)
                    {
                        throw new UnusableException($"--at {begin:yyyy-MM-dd}: expected a year from 1901 to 2998.");
                    }

                    clock.Set(new DateTimeOffset(DateTime.SpecifyKind(begin, DateTimeKind.Local)));
                }

                return Attend(arguments, where, parsed.GetValue(seed), clock, parsed.GetValue(paused), parsed.GetValue(plain), parsed.GetValue(say), look);
            }

            using var session = Opening.Open(arguments, practice: true, ScenarioLibrary.RigOf(where));
            return Unattended(session, new(session.Setting.Rig, where, parsed.GetValue(seed)));
        });
        return command;
    }

    private static int Assured(GuidedArguments arguments, string? scenario, int boils, long seed, bool isJson)
    {
        if (boils < 1)
        {
            throw new UnusableException($"--count {boils}: expected how many boils, 1 or more.");
        }

        var scenarios = scenario is null ? ScenarioLibrary.WithoutPerson : [ScenarioLibrary.Of(scenario)];
        var settings = new ManySettings(Product.Name, arguments.Rig, arguments.Flow, arguments.Home);
        var judged = new ManyBoils(scenarios, settings.For, Environment.ProcessorCount).Of(boils, seed, Evening);
        Console.Out.Write(isJson ? AssuranceJson.Of(judged, scenarios.Count, seed) : AssuranceTable.Of(judged, scenarios.Count));
        return judged.All(one => one.Outcome is { IsScorched: false, IsPromiseKept: true }) ? ExitStatus.Done : ExitStatus.Wrong;
    }

    private static int Unattended(RecordedSession session, PracticeRig rig)
    {
        var setting = session.Setting;
        var person = new PracticeOperator(rig, setting.Units, rig.Seed);
        void Say(IEnumerable<string> lines)
        {
            foreach (var line in lines)
            {
                Console.Out.WriteLine($"{PracticeReport.Mark} {line}");
            }
        }

        Say([$"{setting.Rig.Name}; scenario {rig.Scenario.Name}; seed {rig.Seed}; guidance {setting.Header.Guidance}"]);
        var outcome = new Unattended(new PracticeDoor(session), rig, person, Evening)
        {
            Overheard = (line, answers) => Say(PracticeReport.Of(line, answers)),
        }.Run();
        Say(PracticeReport.Said(outcome));
        Say(PracticeReport.Truth(outcome, setting));
        Say(session.Debriefed);
        Say(session.Path is { } path ? [$"Record: {path}"] : []);
        if (session.Trouble is { } trouble)
        {
            Console.Error.WriteLine(trouble);
        }

        return outcome.IsGood ? ExitStatus.Done : ExitStatus.Wrong;
    }

    private static int Attend(GuidedArguments arguments, Scenario scenario, long seed, PracticeClock clock, bool paused, bool plain, string? say, ScreenLook look)
    {
        var start = clock.GetLocalNow();
        (RecordedSession, PracticeRig) Begin()
        {
            var session = Opening.Open(arguments, practice: true, ScenarioLibrary.RigOf(scenario));
            var rig = new PracticeRig(session.Setting.Rig, scenario, seed);
            if (!Lead.Run(new PracticeDoor(session), rig, start))
            {
                var record = session.Path is { } path ? $" What was practised up to there stands in {path}." : "";
                session.Dispose();
                throw new UnusableException($"--scenario {scenario.Name}: on '{session.Setting.Rig.Name}' the boil was over before it came to that. Expected a scenario that this rig comes to, like --scenario cold-start.{record}");
            }

            return (session, rig);
        }

        var (session, rig) = Begin();
        clock.Set(start.AddSeconds(rig.Second));
        if (paused)
        {
            clock.Stop();
        }

        using var conversation = new PracticeConversation(session, rig, start, clock, arguments.Journal is null ? Begin : null);
        return SayOption.Spoken(say, conversation, shown =>
        {
            if (!plain && FullScreenFace.IsThere)
            {
                GuardedConsole.Lifted(() => FullScreen.Run(shown, clock, ExitStatus.Interrupted, look));
            }
            else
            {
                using var interrupt = new Interrupt();
                new PlainFace(shown, Console.In, Console.Out, Console.Error, clock) { LookEvery = TimeSpan.FromSeconds(1) }.Run(interrupt.Token);
            }

            return PracticeEnd.Tell(conversation, Console.Out);
        });
    }
}
