namespace Panside.Reckoning.Properties;

/// <summary>The woods of the firewood table.</summary>
public enum FirewoodSpecies
{
    /// <summary>Sugar maple.</summary>
    SugarMaple,

    /// <summary>Red oak.</summary>
    RedOak,

    /// <summary>White oak.</summary>
    WhiteOak,

    /// <summary>Shagbark hickory.</summary>
    ShagbarkHickory,

    /// <summary>Ash.</summary>
    Ash,

    /// <summary>Silver maple.</summary>
    SilverMaple,

    /// <summary>American elm.</summary>
    AmericanElm,

    /// <summary>Black locust.</summary>
    BlackLocust,

    /// <summary>Box elder.</summary>
    BoxElder,

    /// <summary>Basswood, also called linden.</summary>
    Basswood,

    /// <summary>Cottonwood.</summary>
    Cottonwood,

    /// <summary>Shortleaf pine, the one resinous wood of the table.</summary>
    ShortleafPine,
}
