using Panside.Guide.Asking;

namespace Panside.Faces;

/// <summary>Questions away from the fire, as lines of text.</summary>
internal sealed class PlainAsking(IAsking asking, TextReader input, TextWriter output)
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(5);

    /// <summary>Asks until all is said, the input ends or <paramref name="stop"/> is asked for.</summary>
    public void Run(CancellationToken stop)
    {
        var typed = new TypedLines(input);
        Write(asking.Opening);
        Ask();
        while (!asking.IsOver && typed.Wait(LookEvery, stop))
        {
            if (typed.Next() is not { } words)
            {
                continue;
            }

            var before = asking.Page;
            Write(asking.Hear(words));
            if (!asking.IsOver)
            {
                Ask(before);
            }
        }
    }

    /// <summary>The picture stands before its question once: a slip in an answer does not bring it again.</summary>
    private void Ask(Page? before = null)
    {
        var page = asking.Page;
        if (before is null || !page.Picture.SequenceEqual(before.Picture))
        {
            Write(page.Picture.Select(row => ("  " + row).TrimEnd()));
        }

        Write([$"> {page.Ask}", page.Hint]);
        output.Flush();
    }

    private void Write(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            output.WriteLine(line);
        }
    }
}
