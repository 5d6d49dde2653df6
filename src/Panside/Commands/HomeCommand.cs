namespace Panside.Commands;

internal static class HomeCommand
{
    public static int Run() => 0;
}
