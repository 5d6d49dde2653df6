namespace Panside.Screen.Typing;

/// <summary>Completes what was begun: Tab gives the shortest word that begins so, Tab again the next one.</summary>
internal sealed class Completion(IReadOnlyList<string> words)
{
    private string _begun = "";
    private string _given = "";
    private int _next;

    /// <summary>The line with its word completed; the line as it is where nothing begins so.</summary>
    public string Of(string line)
    {
        if (line != _given || _given.Length == 0)
        {
            (_begun, _next) = (line, 0);
        }

        var matching = _begun.Trim().Length == 0
            ? []
            : words.Where(word => word.Length > _begun.Length && word.StartsWith(_begun, StringComparison.OrdinalIgnoreCase)).ToList();
        if (matching.Count == 0)
        {
            return line;
        }

        _given = matching[_next % matching.Count];
        _next++;
        return _given;
    }
}
