using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Practice.Operator;

namespace Panside.Tests.Practice;

/// <summary>
/// The simulated operator pours into the pan behind where the words of an advice name it, so the built-in flow must name it where, and only
/// where, it is the pan that lacks sap: by what the step asks, and by what an advice is given for.
/// </summary>
public class BackPanWordsTests
{
    private static readonly Flow BuiltIn =
        FlowFile.Read("divided-pan.yaml", RepositoryFiles.Read("flows", "divided-pan.yaml"), Vocabularies.Flow);

    [Fact]
    public void Every_step_that_pours_names_the_back_pan_just_where_it_asks_its_depth()
    {
        var steps = BuiltIn.Steps.Values.Where(step => step.Advise is "raise-level" or "cool-pan").ToList();
        Assert.Contains(steps, step => step.Ask == "back-pan-depth");
        Assert.All(steps, step => AllName(step.Ask == "back-pan-depth", step.Text, step.Instead));
    }

    [Fact]
    public void Every_advice_to_pour_names_the_back_pan_just_where_it_is_given_because_that_is_low()
    {
        var advices = BuiltIn.Advices.Where(advice => advice.Action is "raise-level" or "cool-pan").ToList();
        Assert.Contains(advices, advice => advice.When.Contains("back-low"));
        Assert.All(advices, advice => AllName(advice.When.Contains("back-low"), advice.Text, advice.Instead));
    }

    private static void AllName(bool names, string text, IEnumerable<Reworded> instead) =>
        Assert.All(instead.Select(other => other.Text ?? text).Prepend(text), said => Assert.Equal(names, Hands.NamesBackPan(said)));
}
