namespace Panside.Reckoning.Ensemble;

/// <summary>Many possible rigs in possible states: one array for each of their numbers, so that one instruction moves several members.</summary>
internal sealed class Members
{
    /// <summary>Numbers of a member of two pans behind its sugar: the liquid in the pan where the draw-off is, and what its float is off by.</summary>
    private const int OfTwoPans = 2;

    private readonly double[][] _fields;
    private SharedTerms? _terms;

    /// <summary>Members with all numbers 0.</summary>
    /// <param name="count">How many; a multiple of 8, so that vectors of any width fit.</param>
    /// <param name="cells">Cells along the pan's path.</param>
    /// <param name="backCells">Those of the pan behind, which are the first ones; 0 where there is one pan.</param>
    /// <exception cref="ArgumentOutOfRangeException">No multiple of 8.</exception>
    public Members(int count, int cells, int backCells = 0)
    {
        if (count <= 0 || count % 8 != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(count), count, "A multiple of 8 is expected.");
        }

        (Count, Cells, BackCells) = (count, cells, backCells);
        _fields = new double[Field.Sugar + cells + (backCells > 0 ? OfTwoPans : 0)][];
        for (var field = 0; field < _fields.Length; field++)
        {
            _fields[field] = new double[count];
        }
    }

    private Members(Members from, int firstShared, int endShared)
    {
        (Count, Cells, BackCells) = (from.Count, from.Cells, from.BackCells);
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

    /// <summary>Those of the pan behind, which are the first ones; 0 where there is one pan.</summary>
    public int BackCells { get; }

    /// <summary>The place of the liquid in the pan where the draw-off is: of one pan, <see cref="Field.Pan"/>; of two, that holds both together.</summary>
    public int DrawPan => BackCells > 0 ? Field.Sugar + Cells : Field.Pan;

    /// <summary>The place of what its float holds beside what is said: of one pan, <see cref="Field.FloatOff"/>; of two, that is of the pan behind.</summary>
    public int DrawPanOff => BackCells > 0 ? Field.Sugar + Cells + 1 : Field.FloatOff;

    /// <summary>The cells of the pan where the draw-off is.</summary>
    public Stretch Front => new(BackCells, Cells - BackCells, IsBack: false);

    /// <summary>The cells of the pan behind; none where there is one pan.</summary>
    public Stretch Back => new(0, BackCells, IsBack: true);

    /// <summary>The pan that the tank feeds.</summary>
    public Stretch Fed => BackCells > 0 ? Back : Front;

    /// <summary>How many numbers a member has.</summary>
    public int Fields => _fields.Length;

    /// <summary>One number of all members.</summary>
    public double[] this[int field] => _fields[field];

    /// <summary>The last cell's sugar: that at the draw-off.</summary>
    public double[] LastSugar => _fields[Field.Sugar + Cells - 1];

    /// <summary>The sugar content of the last cell, as a mass fraction.</summary>
    public double LastFraction(int member) => RigConstants.FractionOf(LastSugar[member], _fields[DrawPan][member] / Front.Count);

    /// <summary>A copy to change.</summary>
    public Members Copy() => new(this, 0, 0);

    /// <summary>A copy to run on: what stays through a boil is shared with it, and must not be changed there.</summary>
    /// <param name="withoutSugar">Whether the run leaves the sugar where it is: then that is shared too.</param>
    public Members ToRun(bool withoutSugar = false) =>
        new(this, Field.FirstTrait, withoutSugar ? Field.Sugar + Cells : Field.Sugar) { _terms = _terms ??= new() };

    /// <summary>What their traits come to: kept where they are shared and so do not change any more, else reckoned for this once.</summary>
    /// <param name="stepMinutes">Minutes of a step.</param>
    public TraitTerms Terms(double stepMinutes) => _terms?.Of(this, stepMinutes) ?? TraitTerms.Of(this, stepMinutes);

    /// <summary>The members at these places, in this order.</summary>
    public Members Picked(ReadOnlySpan<int> places)
    {
        var picked = new Members(Count, Cells, BackCells);
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

    /// <summary>Whether a number is the sugar of a cell.</summary>
    public bool IsSugar(int field) => field >= Field.Sugar && field < Field.Sugar + Cells;

    /// <summary>Liquid in a pan, in liters.</summary>
    public double Liters(Stretch pan, int member) =>
        pan.IsBack ? _fields[Field.Pan][member] - _fields[DrawPan][member] : _fields[DrawPan][member];

    /// <summary>A pan holds so many liters from now on; the other one stays as it is.</summary>
    public void SetLiters(Stretch pan, int member, double liters)
    {
        if (BackCells > 0)
        {
            var other = pan.IsBack ? _fields[DrawPan][member] : _fields[Field.Pan][member] - _fields[DrawPan][member];
            _fields[DrawPan][member] = pan.IsBack ? other : liters;
            _fields[Field.Pan][member] = liters + other;
        }
        else
        {
            _fields[Field.Pan][member] = liters;
        }
    }

    /// <summary>All sugar in a member's pan, of two in both, in kg.</summary>
    public double SugarOf(int member) => SugarOf(new Stretch(0, Cells, IsBack: false), member);

    /// <summary>The sugar in a pan, in kg.</summary>
    public double SugarOf(Stretch pan, int member)
    {
        var sum = 0.0;
        for (var cell = pan.First; cell < pan.First + pan.Count; cell++)
        {
            sum += _fields[Field.Sugar + cell][member];
        }

        return sum;
    }
}
