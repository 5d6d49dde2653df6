using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers;
using Panside.Guide.Hearing.Cries;

namespace Panside.Workshop.Hearing;

/// <summary>Fits the weights of an ear to sentences: a multinomial logistic regression by limited-memory BFGS, held small by the squares of its weights.</summary>
internal static class EarFit
{
    /// <summary>How dear the squares of the weights are. Tried from 1 to 3, each writer left out in turn: what is heard differs by less than a part of a hundred.</summary>
    private const float Dearness = 1.5f;

    /// <summary>A trait of one sentence alone teaches nothing, a piece of a word of two sentences neither.</summary>
    private const int FewestSentences = 2;
    private const int FewestOfAPiece = 3;

    /// <summary>The text of the weights of an ear for cries.</summary>
    /// <param name="ear">The ear whose traits are weighed.</param>
    /// <param name="sentences">What it is fitted to.</param>
    public static string Of(CryEar ear, IReadOnlyList<SaidSentence> sentences) =>
        Of([.. sentences.Select(sentence => new Heard(sentence.Hazard ?? FittedWeights.None, ear.TraitsOf(sentence.Text)))], Dearness, least: 0.015);

    /// <summary>The text of a file of weights.</summary>
    /// <param name="heard">What each sentence means, and its traits.</param>
    /// <param name="dearness">How dear the squares of the weights are.</param>
    /// <param name="least">What is smaller is left out.</param>
    public static string Of(IReadOnlyList<Heard> heard, float dearness, double least)
    {
        var kinds = heard.Select(one => one.Kind).Where(kind => kind != FittedWeights.None).Distinct().Order(StringComparer.Ordinal).Prepend(FittedWeights.None).ToList();
        var traits = heard.SelectMany(one => one.Traits).CountBy(trait => trait)
            .Where(count => count.Value >= (count.Key.StartsWith("piece ", StringComparison.Ordinal) ? FewestOfAPiece : FewestSentences))
            .Select(count => count.Key).Order(StringComparer.Ordinal).ToList();
        var places = traits.Index().ToDictionary(trait => trait.Item, trait => trait.Index, StringComparer.Ordinal);
        var examples = heard.Select(one => new Example { Traits = Vector(one.Traits, places), Hazard = (uint)kinds.IndexOf(one.Kind) });
        var (biases, weights) = Fit(examples, traits.Count, kinds.Count, dearness);
        var comment = $"Weights of traits, in hundredths, fitted to {heard.Count} sentences by 'panside-workshop ear'. Made, not written: see docs/hearing.md.";
        return FittedWeights.Write(comment, kinds, biases, traits.Select((trait, place) => (trait, (IReadOnlyList<double>)[.. weights.Select(row => (double)row[place])])), least);
    }

    private static VBuffer<float> Vector(IEnumerable<string> traits, Dictionary<string, int> places)
    {
        var there = traits.Where(places.ContainsKey).Select(trait => places[trait]).Order().ToArray();
        return new(places.Count, there.Length, [.. Enumerable.Repeat(1f, there.Length)], there);
    }

    private static (IReadOnlyList<double> Biases, IReadOnlyList<float[]> Weights) Fit(
        IEnumerable<Example> examples, int traits, int hazards, float dearness)
    {
        var context = new MLContext(seed: 1);
        var schema = SchemaDefinition.Create(typeof(Example));
        schema[nameof(Example.Traits)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, traits);
        schema[nameof(Example.Hazard)].ColumnType = new KeyDataViewType(typeof(uint), hazards);
        var options = new LbfgsMaximumEntropyMulticlassTrainer.Options
        {
            FeatureColumnName = nameof(Example.Traits),
            LabelColumnName = nameof(Example.Hazard),
            L1Regularization = 0,
            L2Regularization = dearness,
            NumberOfThreads = 1,
            OptimizationTolerance = 1e-5f,
            MaximumNumberOfIterations = 400,
        };
        var model = context.MulticlassClassification.Trainers.LbfgsMaximumEntropy(options).Fit(context.Data.LoadFromEnumerable(examples, schema)).Model;
        VBuffer<float>[] weights = [];
        model.GetWeights(ref weights, out _);
        return ([.. model.GetBiases().Select(bias => (double)bias)], [.. weights.Select(row => row.DenseValues().ToArray())]);
    }

    private sealed class Example
    {
        public VBuffer<float> Traits { get; init; }

        public uint Hazard { get; init; }
    }
}

/// <summary>A sentence that is fitted to.</summary>
/// <param name="Kind">What it means.</param>
/// <param name="Traits">What it has.</param>
internal sealed record Heard(string Kind, IReadOnlyCollection<string> Traits);
