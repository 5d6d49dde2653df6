namespace Panside.Reckoning.Ensemble;

/// <summary>Many possible rigs in possible states: one array for each of their numbers, so that one instruction moves several members.</summary>
internal sealed class Members
{
    private readonly double[][] _fields;

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

    private Members(Members from, bool sharesTraits)
    {
        (Count, Cells) = (from.Count, from.Cells);
        _fields = new double[from._fields.Length][];
        for (var field = 0; field < _fields.Length; field++)
        {
            var isTrait = field is >= Field.FirstTrait and < Field.Sugar;
            _fields[field] = sharesTraits && isTrait ? from._fields[field] : (double[])from._fields[field].Clone();
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
    public Members Copy() => new(this, sharesTraits: false);

    /// <summary>A copy to run on: what stays through a boil is shared with it, and must not be changed there.</summary>
    public Members ToRun() => new(this, sharesTraits: true);

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
