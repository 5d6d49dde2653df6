using Panside.Guide.Knowledge;

namespace Panside.Guide.Answering;

/// <summary>The terms of the trade that stand in what is asked now, for who would rather look than ask.</summary>
public static class TermsOfStep
{
    /// <summary>The terms in the open prompt and its reason, in their order, as this rig has them; none where nothing is asked.</summary>
    /// <param name="setting">What the session runs on.</param>
    /// <param name="state">Where it stands.</param>
    public static IReadOnlyList<Term> Of(Setting setting, SessionState state)
    {
        if (state.Open is not { } open)
        {
            return [];
        }

        var because = setting.Flow.Steps.TryGetValue(open.Step, out var step) ? step.Because
            : setting.Flow.Watches.FirstOrDefault(watch => watch.Id == open.Step)?.Because;
        return [.. KnownAnswers.TermsOf(setting.Flow.Language).AllIn($"{open.Text} . {because}").Where(term => term.IsOf(setting.Rig)).Select(term => term.On(setting.Rig))];
    }
}
