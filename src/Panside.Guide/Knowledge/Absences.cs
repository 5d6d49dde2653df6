namespace Panside.Guide.Knowledge;

/// <summary>How an operator who has gone for a while is known.</summary>
internal static class Absences
{
    /// <summary>Set from when somebody goes until anything is told again.</summary>
    public const string Mark = "away";
}
