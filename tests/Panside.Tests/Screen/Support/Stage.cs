using System.Globalization;
using Microsoft.Extensions.Time.Testing;
using Panside.Screen;
using Panside.Screen.Talking;
using Panside.Screen.Waiting;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace Panside.Tests.Screen.Support;

/// <summary>The screen in memory: types, lets time pass, and reads what stands on it.</summary>
internal sealed class Stage : IDisposable
{
    private static readonly TimeSpan Step = TimeSpan.FromSeconds(15);

    private readonly IApplication _app;
    private readonly ScreenWindow _window;
    private readonly SessionToken _token;

    public Stage(int width = 80, int height = 24, Played? played = null, ITalk? talk = null, bool ascii = false)
    {
        Played = played ?? new Played();
        _app = Application.Create(new MonotonicTime(Clock)).Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(width, height);
        _window = new(talk ?? Talk, new(Theme.Terminal)) { IsAscii = ascii };
        _token = _app.Begin(_window)!;
        Pump();
    }

    /// <summary>The screen at one of the scenes.</summary>
    public static Stage At(string scene, int width = 80, int height = 24) => new(width, height, Played.Scene(scene));

    public Played Played { get; }

    public IConversation Door => Played.Door;

    public Talk Talk => Played.Talk;

    public FakeTimeProvider Clock => Played.Clock;

    public bool IsLeft => !_window.IsRunning || _window.IsFinished;

    /// <summary>What stands on the screen, without the spaces at the ends of rows.</summary>
    public string Text => string.Join('\n', _app.Driver!.ToString()!.Split('\n').Select(row => row.TrimEnd())).TrimEnd('\n');

    /// <summary>With its colors.</summary>
    public string Ansi => _app.Driver!.ToAnsi();

    /// <summary>Plays lines typed: one that begins with @ lets so many minutes pass.</summary>
    public Stage Play(IEnumerable<string> script)
    {
        foreach (var line in script)
        {
            if (line[0] == '@')
            {
                Wait(double.Parse(line[1..], CultureInfo.InvariantCulture));
            }
            else
            {
                Type(line);
            }
        }

        return this;
    }

    public void Type(string words)
    {
        Letters(words);
        Press(Key.Enter);
    }

    public void Letters(string words)
    {
        foreach (var rune in words.EnumerateRunes())
        {
            _app.InjectKey((Key)rune.Value);
        }

        Pump();
    }

    public void Press(Key key)
    {
        _app.InjectKey(key);
        Pump();
    }

    /// <summary>How many rows the library will draw anew for a key.</summary>
    public int RowsDrawnFor(Key key)
    {
        _app.InjectKey(key);
        var drawn = _window.SubViews.Count(row => row.NeedsDraw);
        Pump();
        return drawn;
    }

    public void Resize(int width, int height)
    {
        _app.Driver!.SetScreenSize(width, height);
        Pump();
    }

    public void Wait(double minutes)
    {
        for (var until = Clock.GetUtcNow().AddMinutes(minutes); Clock.GetUtcNow() < until;)
        {
            Clock.Advance(Step);
            _app.TimedEvents!.RunTimers();
        }

        Pump();
    }

    public void Dispose()
    {
        _app.End(_token);
        _window.Dispose();
        _app.Dispose();
    }

    private void Pump()
    {
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }
}
