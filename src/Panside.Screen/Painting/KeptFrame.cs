namespace Panside.Screen.Painting;

/// <summary>
/// Keeps the frame that was painted last. A letter typed changes one line; all above it, with what had to be reckoned and wrapped for it, is
/// painted anew only where something was said, time came on, or another size or page is asked for.
/// </summary>
internal sealed class KeptFrame
{
    private (ScreenPicture Picture, int Said, int Width, int Height)? _of;
    private Frame? _frame;

    /// <summary>The frame, the same as <see cref="Painter"/> would paint.</summary>
    /// <param name="picture">What is painted.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    public Frame Paint(ScreenPicture picture, int width, int height)
    {
        if (_frame is not { } kept || _of is not { } of || of.Width != width || of.Height != height || of.Said != picture.Said.Count
            || !IsSameButForTyping(of.Picture, picture))
        {
            (_of, kept) = ((picture, picture.Said.Count, width, height), Painter.Paint(picture, width, height));
        }
        else if (of.Picture.Typed != picture.Typed || of.Picture.Caret != picture.Caret)
        {
            (_of, kept) = (of with { Picture = picture }, Painter.Typed(kept, picture, width));
        }

        return _frame = kept;
    }

    private static bool IsSameButForTyping(ScreenPicture one, ScreenPicture other) =>
        ReferenceEquals(one.State, other.State) && ReferenceEquals(one.Setting, other.Setting) && ReferenceEquals(one.Said, other.Said)
        && ReferenceEquals(one.Told, other.Told) && one.Scroll == other.Scroll && one.Mode == other.Mode && one.Replay == other.Replay;
}
