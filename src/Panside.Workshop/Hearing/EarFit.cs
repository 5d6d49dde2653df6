using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers;
using Panside.Guide.Hearing.Cries;

namespace Panside.Workshop.Hearing;

/// <summary>Fits the weights of an ear to sentences: a multinomial logistic regression by limited-memory BFGS, held small by the squares of its weights.</summary>
internal static class EarFit
{
    /// <summary>How dear the squares of the weights are. Tried from 0.5 to 4, a sixth of the writers left out: what is heard differs by less than a part of a hundred.</summary>
    private const float Dearness = 1;

    /// <summary>A trait of one sentence alone teaches nothing, a piece of a word of two sentences neither.</summary>
    private const int FewestSentences = 2;
    private const int FewestOfAPiece = 3;

    /// <summary>
    /// How large a trait may grow that tells nothing of danger by itself, and how much larger than that one that tells all. Tried with a sixth of the
    /// writers left out: with as many cries opened a fifth less talk opens falsely than with all traits alike.
    /// </summary>
    private const float LeastTelling = 0.8f;
    private const float MostTelling = 2;

    /// <summary>The text of the weights of an ear for cries.</summary>
    /// <param name="ear">The ear whose traits are weighed.</param>
    /// <param name="sentences">What it is fitted to.</param>
    public static string Of(CryEar ear, IReadOnlyList<SaidSentence> sentences) =>
        Of([.. sentences.Select(sentence => new Heard(sentence.Hazard ?? FittedWeights.None, ear.TraitsOf(sentence.Text)))], Dearness, least: 0.015, Telling);

    /// <summary>The text of a file of weights.</summary>
    /// <param name="heard">What each sentence means, and its traits.</param>
    /// <param name="dearness">How dear the squares of the weights are.</param>
    /// <param name="least">What is smaller is left out.</param>
    /// <param name="scale">How large each trait counts in a sentence that has it, so that its weight is dear or cheap; null where all count 1.</param>
    public static string Of(IReadOnlyList<Heard> heard, float dearness, double least, Func<IReadOnlyList<Heard>, Dictionary<string, int>, float[]>? scale = null)
    {
        var kinds = heard.Select(one => one.Kind).Where(kind => kind != FittedWeights.None).Distinct().Order(StringComparer.Ordinal).Prepend(FittedWeights.None).ToList();
        var traits = heard.SelectMany(one => one.Traits).CountBy(trait => trait)
            .Where(count => count.Value >= (count.Key.StartsWith("piece ", StringComparison.Ordinal) ? FewestOfAPiece : FewestSentences))
            .Select(count => count.Key).Order(StringComparer.Ordinal).ToList();
        var places = traits.Index().ToDictionary(trait => trait.Item, trait => trait.Index, StringComparer.Ordinal);
        var sizes = scale?.Invoke(heard, places) ?? [.. Enumerable.Repeat(1f, traits.Count)];
        var examples = heard.Select(one => new Example { Traits = Vector(one.Traits, places, sizes), Hazard = (uint)kinds.IndexOf(one.Kind) });
        var (biases, weights) = Fit(examples, traits.Count, kinds.Count, dearness);
        var comment = $"Weights of traits, in hundredths, fitted to {heard.Count} sentences by 'panside-workshop ear'. Made, not written: see docs/hearing.md.";
        return FittedWeights.Write(comment, kinds, biases, traits.Select((trait, place) => (trait, (IReadOnlyList<double>)[.. weights.Select(row => (double)row[place] * sizes[place])])), least);
    }

    private static VBuffer<float> Vector(IEnumerable<string> traits, Dictionary<string, int> places, float[] sizes)
    {
        var there = traits.Where(places.ContainsKey).Select(trait => places[trait]).Order().ToArray();
        return new(places.Count, there.Length, [.. there.Select(place => sizes[place])], there);
    }

    /// <summary>
    /// How far each trait tells cries from talk by itself: the logarithm of how much oftener it stands in the one than in the other, one sentence more
    /// counted for each (Wang and Manning, Baselines and Bigrams, 2012).
    /// </summary>
    private static float[] Telling(IReadOnlyList<Heard> heard, Dictionary<string, int> places)
    {
        var counts = new[] { new double[places.Count], new double[places.Count] };
        Array.ForEach(counts, count => Array.Fill(count, 1));
        foreach (var one in heard)
        {
            foreach (var trait in one.Traits.Where(places.ContainsKey))
            {
                counts[one.Kind == FittedWeights.None ? 0 : 1][places[trait]]++;
            }
        }

        var (talk, cries) = (counts[0].Sum(), counts[1].Sum());
        return [.. counts[0].Zip(counts[1], (inTalk, inCries) => LeastTelling + (float)double.Min(MostTelling, double.Abs(double.Log(inCries / cries / (inTalk / talk)))))];
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
