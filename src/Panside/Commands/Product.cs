using System.Reflection;

namespace Panside.Commands;

/// <summary>The program's name and version.</summary>
internal static class Product
{
    /// <summary>The version, as built.</summary>
    public static string Version { get; } =
        typeof(Product).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";

    /// <summary>As the record says it.</summary>
    public static string Name { get; } = "panside " + Version;
}
