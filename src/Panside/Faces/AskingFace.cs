using Panside.Commands;
using Panside.Guide.Asking;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>Questions away from the fire, on the face that is there and wanted.</summary>
internal static class AskingFace
{
    /// <summary>Asks until all is said, or it is left in the midst.</summary>
    /// <param name="asking">The conversation.</param>
    /// <param name="plain">Whether lines of text are wanted.</param>
    /// <param name="look">How the full screen looks.</param>
    public static void Run(IAsking asking, bool plain, ScreenLook look)
    {
        if (!plain && FullScreenFace.IsThere)
        {
            GuardedConsole.Lifted(() =>
            {
                FullScreen.Ask(asking, ExitStatus.Interrupted, look);
                return ExitStatus.Done;
            });
            return;
        }

        using var interrupt = new Interrupt();
        new PlainAsking(asking, Console.In, Console.Out).Run(interrupt.Token);
    }
}
