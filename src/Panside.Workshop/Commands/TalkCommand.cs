using System.CommandLine;
using Panside.Guide.Hearing.Talk;
using Panside.Workshop.Hearing;

namespace Panside.Workshop.Commands;

/// <summary><c>panside-workshop talk</c>: what the ear makes of facts, deeds and questions, and its weights fitted anew.</summary>
internal static class TalkCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Lines: meanings, habit and sentence, a tab between.", Arity = ArgumentArity.OneOrMore };
        var language = new Option<string>("--language") { Description = "The language that they are in.", HelpName = "CODE", DefaultValueFactory = _ => "en" };
        var cries = new Option<string[]>("--cries") { Description = "Cries of dangers, which mean nothing here.", HelpName = "FILE", DefaultValueFactory = _ => [] };
        var fit = new Option<string>("--fit") { Description = "Fits the weights to these lines and writes them to this file, instead of hearing them.", HelpName = "WEIGHTS" };
        var misheard = new Option<bool>("--misheard") { Description = "Names each line that was not heard as it was meant." };
        var command = new Command("talk", "Tells how well facts, deeds and questions are understood, as a table; or fits the ear to lines.") { files, language, cries, fit, misheard };
        command.SetAction(parsed =>
        {
            var code = parsed.GetValue(language)!;
            var sentences = TalkSentence.Read(parsed.GetValue(files)!);
            var ear = KnownTalk.Ear(code) ?? throw new UnusableException($"--language {code}: there are no words of it in flows/words/talk.yaml.");
            if (parsed.GetValue(fit) is { } written)
            {
                // One cry in sixteen is enough to know that it is none of these.
                var some = SaidSentence.Read(parsed.GetValue(cries)!).Where(cry => cry.Hazard is not null).Where((_, place) => place % 16 == 0);
                File.WriteAllText(written, TalkFit.Of(ear, sentences, some));
                return ExitStatus.Done;
            }

            var said = new SteadyBoilEar();
            return Rows.Tell(parsed.GetValue(misheard) ? TalkTable.Misheard(said, sentences) : TalkTable.Of(said, sentences));
        });
        return command;
    }
}
