using System.Text;

namespace Panside.Tests.Reckon;

/// <summary>
/// A console for one test and all that it starts; other tests run beside it with consoles of their own, or with the process's. Whoever
/// writes is known by the context that flows with tasks and threads.
/// </summary>
internal sealed class OwnConsole : IDisposable
{
    private static readonly AsyncLocal<OwnConsole?> Now = new();
    private static readonly Lazy<bool> Installed = new(Install);

    private readonly OwnConsole? _before = Now.Value;
    private readonly StringWriter _out = new();
    private readonly StringWriter _errors = new();
    private readonly TextReader _in;

    /// <summary>Takes the console over until it is disposed of.</summary>
    /// <param name="input">What is read from it.</param>
    public OwnConsole(TextReader input)
    {
        _in = input;
        Now.Value = Installed.Value ? this : null;
    }

    /// <summary>What was written so far.</summary>
    public string Out => _out.ToString();

    /// <summary>What was complained of so far.</summary>
    public string Errors => _errors.ToString();

    public void Dispose() => Now.Value = _before;

    private static bool Install()
    {
        Console.SetOut(new Writer(Console.Out, own => own._out));
        Console.SetError(new Writer(Console.Error, own => own._errors));
        Console.SetIn(new Reader());
        return true;
    }

    /// <remarks>The framework lets one thread at a time write to it.</remarks>
    private sealed class Writer(TextWriter process, Func<OwnConsole, TextWriter> of) : TextWriter
    {
        public override Encoding Encoding => process.Encoding;

        private TextWriter Mine => Now.Value is { } own ? of(own) : process;

        public override void Write(char value) => Mine.Write(value);

        public override void Write(char[] buffer, int index, int count) => Mine.Write(buffer, index, count);

        public override void Write(string? value) => Mine.Write(value);

        public override void WriteLine() => Mine.WriteLine();

        public override void WriteLine(string? value) => Mine.WriteLine(value);

        public override void Flush() => Mine.Flush();
    }

    /// <summary>What no test has given has nothing in it.</summary>
    private sealed class Reader : TextReader
    {
        private static TextReader Mine => Now.Value?._in ?? Null;

        public override int Peek() => Mine.Peek();

        public override int Read() => Mine.Read();

        public override int Read(char[] buffer, int index, int count) => Mine.Read(buffer, index, count);

        public override string? ReadLine() => Mine.ReadLine();

        public override string ReadToEnd() => Mine.ReadToEnd();
    }
}
