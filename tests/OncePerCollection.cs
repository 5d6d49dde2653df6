using System.Collections.Concurrent;

namespace Panside.Tests;

/// <summary>
/// What the tests of a collection reckon alike, reckoned once. Not once for all: tests of two collections run at the same time, and what a
/// state keeps of the figures that were asked of it is made for one thread. What it holds, no test changes.
/// </summary>
internal sealed class OncePerCollection<TKey, TValue>
    where TKey : notnull
{
    /// <summary>Collections that are remembered: more than run at the same time, and few, since what is kept is large.</summary>
    private const int Remembered = 4;

    private readonly Lock _alone = new();
    private readonly LinkedList<(string Collection, ConcurrentDictionary<TKey, Lazy<TValue>> Known)> _newest = new();

    public TValue Of(TKey key, Func<TValue> reckon) =>
        TestContext.Current.TestCollection?.UniqueID is { } collection ? Known(collection).GetOrAdd(key, _ => new(reckon)).Value : reckon();

    private ConcurrentDictionary<TKey, Lazy<TValue>> Known(string collection)
    {
        lock (_alone)
        {
            var node = _newest.First;
            while (node is not null && node.Value.Collection != collection)
            {
                node = node.Next;
            }

            if (node is null)
            {
                node = new((collection, new()));
            }
            else
            {
                _newest.Remove(node);
            }

            _newest.AddFirst(node);
            if (_newest.Count > Remembered)
            {
                _newest.RemoveLast();
            }

            return node.Value.Known;
        }
    }
}
