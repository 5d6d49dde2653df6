namespace Panside.Tests;

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class Scratch : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("panside-test-").FullName;

    public string this[string name] => Path.Combine(Folder, name);

    /// <summary>A program whose terminal was closed may still write its last file here: tried again then, and left to the system in the end.</summary>
    public void Dispose()
    {
        for (var tries = 0; tries < 40 && Directory.Exists(Folder); tries++)
        {
            try
            {
                Directory.Delete(Folder, recursive: true);
            }
            catch (Exception caught) when (caught is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(50);
            }
        }
    }
}
