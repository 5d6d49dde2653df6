using System.CommandLine;

namespace Panside.Commands;

/// <summary><c>panside completion</c>: what a shell needs to complete the program's commands, options and names.</summary>
internal static class CompletionCommand
{
    /// <summary>The command's name.</summary>
    public const string Name = "completion";

    // Each asks the program itself what can follow, and shows options only where one is begun; where it knows nothing, the
    // shell offers files.
    private const string Bash =
        """
        _panside() {
          local words word=${COMP_WORDS[COMP_CWORD]}
          words=$("${COMP_WORDS[0]}" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null | grep -v '^/')
          [[ $word == -* ]] || words=$(grep -v '^-' <<<"$words")
          local IFS=$'\n'
          COMPREPLY=($(compgen -W "$words" -- "$word"))
        }
        complete -o default -F _panside panside
        """;

    private const string Zsh =
        """
        _panside() {
          local -a found
          found=(${(f)"$("${words[1]}" "[suggest:${#LBUFFER}]" "$LBUFFER" 2>/dev/null | grep -v '^/')"})
          [[ ${words[CURRENT]} == -* ]] || found=(${found:#-*})
          if (( ${#found} )); then compadd -a found; else _files; fi
        }
        compdef _panside panside
        """;

    private const string Fish =
        """
        function __panside_words
          set -l line (commandline -cp)
          set -l program (commandline -po)[1]
          set -l found ($program "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null | string match -v -r '^/')
          string match -q -- '-*' (commandline -ct); or set found (string match -v -- '-*' $found)
          string join \n -- $found
        end
        complete -c panside -a '(__panside_words)'
        """;

    private static readonly Dictionary<string, string> Shells = new() { ["bash"] = Bash, ["zsh"] = Zsh, ["fish"] = Fish };

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var shell = new Argument<string>("SHELL") { Description = string.Join(", ", Shells.Keys) + "." };
        shell.AcceptOnlyFromAmong([.. Shells.Keys]);
        var command = new Command(Name, "Prints what a shell needs to complete commands, options and names.") { shell };
        command.SetAction(parsed =>
        {
            Console.Out.Write(Shells[parsed.GetValue(shell)!] + "\n");
            return ExitStatus.Done;
        });
        return command;
    }
}
