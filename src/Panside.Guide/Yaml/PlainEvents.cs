using Panside.Guide.Measures;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Panside.Guide.Yaml;

/// <summary>
/// What the library's parser finds in a file, one after the other, as long as it is plain: no part that stands for another, few levels. It is
/// looked at while the file is read, so that a knot is refused before it is tied, and no file is read twice.
/// </summary>
/// <param name="file">The name for faults.</param>
/// <param name="what">What the file is: <c>the rig</c>.</param>
internal sealed class PlainEvents(string file, string what)
{
    private const int DeepestNesting = 20;

    /// <summary>The parser's events.</summary>
    /// <param name="parser">The parser, at the beginning of the file.</param>
    public IParser Of(Parser parser) => new Watched(parser, this);

    private void Demand(ParsingEvent found, int depth)
    {
        // An anchor that nothing stands for yet is the same knot, half tied.
        var wrong = found switch
        {
            AnchorAlias alias => $"'*{alias.Value}' stands for another part",
            NodeEvent { Anchor: { IsEmpty: false } anchor } => $"'&{anchor.Value}' makes this part stand elsewhere too",
            _ => null,
        };
        if (wrong is not null || depth > DeepestNesting)
        {
            throw new FaultyFileException(
            [
                new(file, (int)found.Start.Line, (int)found.Start.Column, wrong ?? $"{what} is nested too deeply", wrong is null ? "a few levels" : "the part itself")
                {
                    Kind = FaultKind.Yaml,
                    Help = wrong is null ? "Something is indented further and further; look where it should have come back." : "Write out the part where it is wanted, so that it stands where it is read.",
                },
            ]);
        }
    }

    private sealed class Watched(Parser parser, PlainEvents plain) : IParser
    {
        private int _depth;

        public ParsingEvent? Current => parser.Current;

        public bool MoveNext()
        {
            if (!parser.MoveNext())
            {
                return false;
            }

            _depth += parser.Current!.NestingIncrease;
            plain.Demand(parser.Current, _depth);
            return true;
        }
    }
}
