using Panside.Journal;

namespace Panside.Faces;

internal static class FullScreenFace
{
    public static int Run(RecordedSession session, TimeProvider clock) => throw new NotSupportedException();
}
