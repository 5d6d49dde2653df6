using Panside.Guide.Advice;
using Panside.Guide.Flows;

namespace Panside.Guide;

/// <summary>The names that this program offers to flows.</summary>
public static class Vocabularies
{
    /// <summary>Facts, figures, forecasts and counts.</summary>
    public static FlowVocabulary Flow { get; } = new(
        Facts.Names.ToHashSet(StringComparer.Ordinal), Figures.Names.ToHashSet(StringComparer.Ordinal), Forecasts.Names)
    {
        Counts = Counts.Names,
    };
}
