using System.Globalization;
using Panside.Fuzz;
using Panside.Fuzz.Targets;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (Asked.Read(args) is not { } asked)
{
    Console.Error.WriteLine($"panside-fuzz [--target NAME] [--seconds N] [--seed N] [--runs N] [--case N] [--findings FOLDER]; targets: {string.Join(", ", Target.All.Select(one => one.Name))}");
    return 2;
}

var isGood = true;
foreach (var target in asked.Targets)
{
    var run = new FuzzRun(target, asked);
    run.Go();
    Console.Out.WriteLine(run.Told);
    isGood &= run.Findings == 0;
}

return isGood ? 0 : 1;
