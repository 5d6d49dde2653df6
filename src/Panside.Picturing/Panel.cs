namespace Panside.Picturing;

/// <summary>A rectangle of the page with two axes, and what is drawn in it.</summary>
public sealed record Panel(Place Corner, double Width, double Height, Axis Clock, Axis Values)
{
    private const double TickLength = 4;

    private static readonly Lettering TickText = new(11) { Anchor = "end" };

    private static readonly Lettering ClockText = new(11) { Anchor = "middle" };

    private static readonly Lettering AxisText = new(12) { Anchor = "middle", Upward = true };

    /// <summary>The lower edge.</summary>
    public double Bottom => Corner.Y + Height;

    /// <summary>Where a minute and a value stand.</summary>
    public Place At(double minute, double value) => new(Across(minute), Bottom - (Height * Values.Share(value)));

    /// <summary>How far to the right a minute stands.</summary>
    public double Across(double minute) => Corner.X + (Width * Clock.Share(minute));

    /// <summary>Grid, frame and numbers.</summary>
    /// <param name="page">Where.</param>
    /// <param name="label">What the values are, with their unit.</param>
    public void Frame(SvgPage page, string label)
    {
        foreach (var tick in Values.Ticks)
        {
            page.Line(Ink.Grid, At(Clock.From, tick), At(Clock.To, tick));
            page.Text(new(Corner.X - 6, At(Clock.From, tick).Y + 4), Axis.Number(tick), TickText);
        }

        foreach (var tick in Clock.Ticks)
        {
            page.Line(Ink.Grid, At(tick, Values.From), At(tick, Values.To));
        }

        page.Line(
            Ink.Border, Corner, new(Corner.X + Width, Corner.Y), new(Corner.X + Width, Bottom), new(Corner.X, Bottom), Corner);
        page.Text(new(Corner.X - 40, Corner.Y + (Height / 2)), label, AxisText);
    }

    /// <summary>Clock times under the panel.</summary>
    public void Times(SvgPage page)
    {
        foreach (var tick in Clock.Ticks)
        {
            page.Line(Ink.Border, new(Across(tick), Bottom), new(Across(tick), Bottom + TickLength));
            page.Text(new(Across(tick), Bottom + 17), Axis.Time(tick), ClockText);
        }

        page.Text(new(Corner.X + (Width / 2), Bottom + 36), "clock time", new(12) { Anchor = "middle" });
    }
}
