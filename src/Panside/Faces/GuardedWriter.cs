using System.Text;
using Panside.Guide.Words;

namespace Panside.Faces;

/// <summary>
/// The one way by which text reaches a terminal: nothing in it can be a control. It stands before standard output and standard
/// error, so that every command, the library's own errors included, writes through it.
/// </summary>
/// <param name="inner">Where the text goes.</param>
/// <param name="isQuiet">
/// Whether a text that cannot be written is let go: a warning is not worth the guidance. Else <see cref="OutputGoneException"/> tells.
/// </param>
internal sealed class GuardedWriter(TextWriter inner, bool isQuiet) : TextWriter
{
    private char _half;

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        if (char.IsHighSurrogate(value))
        {
            _half = value;
            return;
        }

        var text = _half == default ? value.ToString() : new string([_half, value]);
        _half = default;
        Write(text);
    }

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(new string(buffer));

    /// <summary>Text of any number of lines.</summary>
    public override void Write(string? value) => Try(() => inner.Write(Visible.Lines(value ?? "")));

    /// <summary>One line: a line feed in it is shown, and makes no other.</summary>
    public override void WriteLine(string? value) => Try(() => inner.WriteLine(Visible.Line(value ?? "")));

    /// <inheritdoc/>
    public override void WriteLine() => Try(inner.WriteLine);

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (IOException fault)
        {
            if (!isQuiet)
            {
                throw new OutputGoneException(fault);
            }
        }
        catch (ObjectDisposedException) when (isQuiet)
        {
            // Standard error was closed; what it would have said is lost, and nothing else.
        }
    }
}
