using System.Globalization;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Panside.Faces;

/// <summary>
/// Standard input, output and error as the program was given them. One that was closed is not asked: its number belongs to the
/// first file that is opened after, and reading that as the operator's words, or writing into it, must not be.
/// </summary>
internal static class StandardStreams
{
    private const int CloseOnExecute = 0x80000;
    private static Stream? _input;
    private static Stream? _output;

    /// <summary>The bytes that come in; none where standard input was closed.</summary>
    public static Stream Input => _input ??= Console.OpenStandardInput();

    /// <summary>Where bytes go out.</summary>
    public static Stream Output => _output ??= Console.OpenStandardOutput();

    /// <summary>Looks at what was given, once, before anything is opened.</summary>
    public static void Settle()
    {
        var (hasInput, hasOutput, hasError) = (IsGiven(0), IsGiven(1), IsGiven(2));
        if (!hasInput)
        {
            _input = Stream.Null;
            Console.SetIn(TextReader.Null);
        }
        else if (Console.IsInputRedirected)
        {
            Console.SetIn(new BoundedLines(Input));
        }

        if (!hasOutput)
        {
            _output = new GoneStream();
        }
        else if (Console.IsOutputRedirected && PipeOut() is { } pipe)
        {
            // The runtime's own stream does not tell that nobody reads any more.
            _output = pipe;
        }

        if (_output is { } output)
        {
            Console.SetOut(new StreamWriter(output, new UTF8Encoding(false)) { AutoFlush = true });
        }

        if (!hasError)
        {
            Console.SetError(TextWriter.Null);
        }
    }

    /// <summary>
    /// Whether a number was open when the program began. What is handed from one program to the next is never marked to be closed
    /// on the way; all that this one opens is. Where the system does not tell, it is taken as given.
    /// </summary>
    private static bool IsGiven(int number)
    {
        if (!Directory.Exists("/proc/self/fdinfo"))
        {
            return true;
        }

        try
        {
            var flags = File.ReadLines($"/proc/self/fdinfo/{number.ToString(CultureInfo.InvariantCulture)}")
                .First(line => line.StartsWith("flags:", StringComparison.Ordinal))["flags:".Length..].Trim();
            return (Convert.ToInt32(flags, 8) & CloseOnExecute) == 0;
        }
        catch (FileNotFoundException)
        {
            return false;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidOperationException or FormatException)
        {
            return true;
        }
    }

    private static FileStream? PipeOut()
    {
        try
        {
            var pipe = new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write, bufferSize: 0);
            return pipe.CanSeek ? null : pipe;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Standard output that was closed before the program began.</summary>
    private sealed class GoneStream : Stream
    {
        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) =>
            throw new IOException("Standard output was closed.", OutputGoneException.BrokenPipe);
    }
}
