namespace Panside.Guide.Yaml;

/// <summary>What can stand behind a key.</summary>
public enum Shaped
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>A number with its unit.</summary>
    Measure,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A text, or a list of them.</summary>
    Texts,

    /// <summary>A mapping.</summary>
    Map,

    /// <summary>A list of mappings.</summary>
    Maps,
}
