using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>A conversation whose advice is also handed on to be spoken. Nothing in it is changed by that.</summary>
internal sealed class SpokenConversation(IConversation conversation, Action<string, bool> say) : IConversation
{
    /// <inheritdoc/>
    public SessionState State => conversation.State;

    /// <inheritdoc/>
    public Setting Setting => conversation.Setting;

    /// <inheritdoc/>
    public string? Trouble => conversation.Trouble;

    /// <inheritdoc/>
    public string? RecordPath => conversation.RecordPath;

    /// <inheritdoc/>
    public string? Notice => conversation.Notice;

    /// <inheritdoc/>
    public string? First => conversation.First;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        var answer = conversation.Hear(line);
        foreach (var advice in answer.OfType<AdviceLine>())
        {
            // Who hears a warning from another room must know that no pan burns.
            say((Setting.Header.Practice ? "Practice. " : "") + advice.Advice.Text, advice.Advice.Urgency == "danger");
        }

        return answer;
    }

    /// <inheritdoc/>
    public bool IsDue(Moment at) => conversation.IsDue(at);

    /// <inheritdoc/>
    public SessionState At(Moment moment) => conversation.At(moment);
}
