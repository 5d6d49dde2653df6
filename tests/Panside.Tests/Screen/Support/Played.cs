using System.Globalization;
using Microsoft.Extensions.Time.Testing;
using Panside.Screen;
using Panside.Screen.Painting;

namespace Panside.Tests.Screen.Support;

/// <summary>A conversation that was led so far without any screen.</summary>
internal sealed class Played
{
    private static readonly TimeSpan Step = TimeSpan.FromSeconds(15);

    public Played(IConversation? door = null, DateTimeOffset? start = null, TimeProvider? shown = null)
    {
        if (start is { } at)
        {
            Clock.AdjustTime(at);
        }

        Door = door ?? new SessionDoor(SessionDoor.BuiltIn());
        Talk = new(Door, shown ?? Clock);
        Talk.Start();
    }

    public FakeTimeProvider Clock { get; } = Evening.Clock();

    public IConversation Door { get; }

    public Talk Talk { get; }

    public ScreenPicture Picture => new(Talk.State, Talk.Setting, Talk.Said, Talk.Told);

    /// <summary>The conversation at one of the scenes.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="door">What the lines go through; null for a session without a record.</param>
    public static Played Scene(string name, IConversation? door = null)
    {
        var played = new Played(door);
        foreach (var line in Evening.Scenes[name])
        {
            if (line[0] != '@')
            {
                played.Talk.Say(line);
                continue;
            }

            played.Wait(double.Parse(line[1..], CultureInfo.InvariantCulture));
        }

        return played;
    }

    /// <summary>The same so many minutes later.</summary>
    public Played Wait(double minutes)
    {
        for (var until = Clock.GetUtcNow().AddMinutes(minutes); Clock.GetUtcNow() < until;)
        {
            Clock.Advance(Step);
            Talk.Check();
        }

        return this;
    }
}
