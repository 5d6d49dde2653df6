using System.CommandLine;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Cries;
using Panside.Workshop.Hearing;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop ear</c>: what the ear makes of sentences, and its weights fitted anew.</summary>
internal static class EarCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Sentences: kind (cry, everyday), hazard, habit and sentence, a tab between.", Arity = ArgumentArity.OneOrMore };
        var language = new Option<string>("--language") { Description = "The language that they are in.", HelpName = "CODE", DefaultValueFactory = _ => "en" };
        var fit = new Option<string>("--fit") { Description = "Fits the weights to these sentences and writes them to this file, instead of hearing them.", HelpName = "WEIGHTS" };
        var misheard = new Option<bool>("--misheard") { Description = "Names each sentence that was not heard as it was meant." };
        var alone = new Option<bool>("--alone") { Description = "Hears for cries alone, and not for what is surely a fact, a deed or a question." };
        var command = new Command("ear", "Tells how well cries are heard among everyday talk, as a table by habit of speech; or fits the ear to sentences.") { files, language, fit, misheard, alone };
        command.SetAction(parsed =>
        {
            var code = parsed.GetValue(language)!;
            var sentences = SaidSentence.Read(parsed.GetValue(files)!);
            if (!KnownCries.Words.Languages.Contains(code))
            {
                throw new UnusableException($"--language {code}: expected one of {string.Join(", ", KnownCries.Words.Languages)}.");
            }

            if (parsed.GetValue(fit) is { } weights)
            {
                File.WriteAllText(weights, EarFit.Of(new CryEar(KnownCries.Words, code, []), sentences));
                return ExitStatus.Done;
            }

            var hear = parsed.GetValue(alone) ? new CryEar(KnownCries.Words, code, [], KnownCries.Fitted(code)).Hear : WholeEar();
            return Rows.Tell(parsed.GetValue(misheard) ? EarTable.Misheard(hear, sentences) : EarTable.Of(hear, sentences));
        });
        return command;
    }

    /// <summary>What a session makes of a sentence said in a steady boil: which danger it opens.</summary>
    private static Func<string, Cry?> WholeEar()
    {
        var ear = new SteadyBoilEar();
        return ear.Opened;
    }
}
