using System.CommandLine;
using Panside.Faces;
using Panside.Screen;

namespace Panside.Commands;

/// <summary>The option of every command that guides a person: each new advice is also spoken.</summary>
internal static class SayOption
{
    /// <summary>The option.</summary>
    public static Option<string?> Create() => new("--say")
    {
        Description = "Also hands each new advice to this command, as a line on its standard input; no shell is between.",
        HelpName = "COMMAND",
    };

    /// <summary>Leads a conversation whose advice is spoken; what went wrong with that is told at the end, once.</summary>
    /// <param name="say">The command; null where nothing is spoken.</param>
    /// <param name="conversation">The conversation.</param>
    /// <param name="lead">Leads it, and gives the exit status.</param>
    public static int Spoken(string? say, IConversation conversation, Func<IConversation, int> lead)
    {
        if (say is null)
        {
            return lead(conversation);
        }

        using var speaker = new Speaker(say);
        var status = lead(new SpokenConversation(conversation, speaker.Say));
        if (speaker.Fault is { } fault)
        {
            Console.Error.WriteLine(fault);
        }

        return status;
    }
}
