namespace Panside.Reckoning.Ensemble;

/// <summary>Many possible rigs in possible states: one array for each of their numbers, so that one instruction moves several members.</summary>
internal sealed class Members
{
    private readonly double[][] _fields;
    private SharedTerms? _terms;

    /// <summary>Members with all numbers 0.</summary>
    /// <param name="count">How many; a multiple of 8, so that vectors of any width fit.</param>
    /// <param name="cells">Cells along the pan's path.</param>
    /// <exception cref="ArgumentOutOfRangeException">No multiple of 8.</exception>
    public Members(int count, int cells)
    {
        if (count <= 0 || count % 8 != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(count), count, "A multiple of 8 is expected.");
        }

        (Count, Cells) = (count, cells);
        _fields = new double[Field.Sugar + cells][];
        for (var field = 0; field < _fields.Length; field++)
        {
            _fields[field] = new double[count];
        }
    }

    private Members(Members from, int firstShared, int endShared)
    {
        (Count, Cells) = (from.Count, from.Cells);
        _fields = new double[from._fields.Length][];
        for (var field = 0; field < _fields.Length; field++)
        {
            _fields[field] = field >= firstShared && field < endShared ? from._fields[field] : (double[])from._fields[field].Clone();
        }
    }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>Cells along the pan's path.</summary>
    public int Cells { get; }

    /// <summary>How many numbers a member has.</summary>
    public int Fields => _fields.Length;

    /// <summary>One number of all members.</summary>
    public double[] this[int field] => _fields[field];

    /// <summary>The last cell's sugar: that at the draw-off.</summary>
    public double[] LastSugar => _fields[^1];

    /// <summary>A copy to change.</summary>
    public Members Copy() => new(this, 0, 0);

    /// <summary>A copy to run on: what stays through a boil is shared with it, and must not be changed there.</summary>
    /// <param name="withoutSugar">Whether the run leaves the sugar where it is: then that is shared too.</param>
    public Members ToRun(bool withoutSugar = false) =>
        new(this, Field.FirstTrait, withoutSugar ? Fields : Field.Sugar) { _terms = _terms ??= new() };

    /// <summary>What their traits come to: kept where they are shared and so do not change any more, else reckoned for this once.</summary>
    /// <param name="stepMinutes">Minutes of a step.</param>
    public TraitTerms Terms(double stepMinutes) => _terms?.Of(this, stepMinutes) ?? TraitTerms.Of(this, stepMinutes);

    /// <summary>The members at these places, in this order.</summary>
    public Members Picked(ReadOnlySpan<int> places)
    {
        var picked = new Members(Count, Cells);
        for (var field = 0; field < _fields.Length; field++)
        {
            var (from, to) = (_fields[field], picked._fields[field]);
            for (var member = 0; member < places.Length; member++)
            {
                to[member] = from[places[member]];
            }
        }

        return picked;
    }

    /// <summary>All sugar in a member's pan, in kg.</summary>
    public double SugarOf(int member)
    {
        var sum = 0.0;
        for (var cell = 0; cell < Cells; cell++)
        {
            sum += _fields[Field.Sugar + cell][member];
        }

        return sum;
    }
}
