namespace Panside.Guide.Rigs.Making;

/// <summary>An answer to a question about a rig.</summary>
/// <param name="Value">As it is to stand in the rig's file; null where the usual is taken and the file leaves it open.</param>
/// <param name="Told">In words, for a person.</param>
/// <param name="Note">What the file says beside it; empty for nothing.</param>
internal sealed record RigAnswer(string? Value, string Told, string Note = "");

/// <summary>An answer, or why there is none.</summary>
/// <param name="Answer">The answer; null where it could not be understood.</param>
/// <param name="Fault">What is wrong and what was expected; empty where it was understood.</param>
internal sealed record RigReply(RigAnswer? Answer, string Fault)
{
    /// <summary>What was understood.</summary>
    public static RigReply Of(string value, string told, string note = "") => new(new(value, told, note), "");

    /// <summary>What was not.</summary>
    public static RigReply Not(string fault) => new(null, fault);
}
