namespace Panside.Tests.Door;

/// <summary>Everything that the program would keep in the user's own folders goes to a test's, while it is there.</summary>
internal sealed class Aside : IDisposable
{
    private static readonly string[] Variables = ["XDG_DATA_HOME", "XDG_STATE_HOME"];

    private readonly string?[] _before = [.. Variables.Select(Environment.GetEnvironmentVariable)];

    public Aside(string folder)
    {
        foreach (var variable in Variables)
        {
            Environment.SetEnvironmentVariable(variable, folder);
        }
    }

    public void Dispose()
    {
        foreach (var (variable, before) in Variables.Zip(_before))
        {
            Environment.SetEnvironmentVariable(variable, before);
        }
    }
}
