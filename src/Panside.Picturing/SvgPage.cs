using System.Globalization;
using System.Text;
using System.Xml;

namespace Panside.Picturing;

/// <summary>
/// Writes a picture as SVG: text, lines and areas at places in pixels. Why no library draws it stands in
/// docs/decisions/0005-pictures-are-written-by-hand.md.
/// </summary>
public sealed class SvgPage : IDisposable
{
    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;

    /// <summary>Begins a picture.</summary>
    /// <param name="width">In pixels.</param>
    /// <param name="height">In pixels.</param>
    /// <param name="title">What it is, for those who do not see it.</param>
    /// <param name="description">What it shows, for those who do not see it.</param>
    /// <param name="name">Its own name where another picture stands in the same document; empty where none does.</param>
    public SvgPage(int width, int height, string title, string description, string name = "")
    {
        string Named(string id) => name.Length > 0 ? $"{name}-{id}" : id;
        _xml = XmlWriter.Create(_text, new() { OmitXmlDeclaration = true, Indent = true, NewLineChars = "\n" });
        _xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Say(("viewBox", Invariant($"0 0 {width} {height}")), ("width", Invariant($"{width}")), ("height", Invariant($"{height}")));
        Say(("role", "img"), ("aria-labelledby", $"{Named("title")} {Named("description")}"), ("font-family", "Helvetica, Arial, sans-serif"));
        Alternative("title", Named("title"), title);
        Alternative("desc", Named("description"), description);
        Element("rect", ("width", "100%"), ("height", "100%"), ("fill", Ink.Ground));
    }

    /// <summary>Ends the picture.</summary>
    /// <returns>Its text.</returns>
    public string End()
    {
        _xml.WriteEndElement();
        _xml.Flush();
        return _text.Append('\n').ToString();
    }

    /// <summary>A line through places.</summary>
    public void Line(Stroke stroke, params IEnumerable<Place> places) =>
        Element("polyline", ("points", Points(places)), ("fill", "none"), ("stroke", stroke.Color), ("stroke-width", Number(stroke.Width)),
            ("stroke-linejoin", "round"), ("stroke-dasharray", stroke.Dashes));

    /// <summary>An area that one can see through, within places.</summary>
    public void Area(string color, double opacity, params IEnumerable<Place> places) =>
        Element("polygon", ("points", Points(places)), ("fill", color), ("fill-opacity", opacity.ToString(CultureInfo.InvariantCulture)));

    /// <summary>A dot at a place.</summary>
    public void Dot(string color, Place at) =>
        Element("circle", ("cx", Number(at.X)), ("cy", Number(at.Y)), ("r", "2.5"), ("fill", color));

    /// <summary>A word at a place.</summary>
    public void Text(Place at, string text, Lettering lettering)
    {
        _xml.WriteStartElement("text");
        Say(("x", Number(at.X)), ("y", Number(at.Y)), ("font-size", Number(lettering.Size)), ("fill", Ink.Text),
            ("text-anchor", lettering.Anchor), ("font-weight", lettering.Bold ? "bold" : null),
            ("transform", lettering.Upward ? $"rotate(-90 {Number(at.X)} {Number(at.Y)})" : null));
        _xml.WriteString(text);
        _xml.WriteEndElement();
    }

    /// <inheritdoc/>
    public void Dispose() => _xml.Dispose();

    private static string Points(IEnumerable<Place> places) => string.Join(' ', places.Select(place => $"{Number(place.X)},{Number(place.Y)}"));

    /// <summary>A tenth of a pixel is as fine as an eye sees, and too coarse for a machine's last digits to show.</summary>
    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private void Alternative(string element, string id, string text)
    {
        _xml.WriteStartElement(element);
        Say(("id", id));
        _xml.WriteString(text);
        _xml.WriteEndElement();
    }

    private void Element(string name, params (string Name, string? Value)[] attributes)
    {
        _xml.WriteStartElement(name);
        Say(attributes);
        _xml.WriteEndElement();
    }

    private void Say(params (string Name, string? Value)[] attributes)
    {
        foreach (var (name, value) in attributes)
        {
            if (value is not null)
            {
                _xml.WriteAttributeString(name, value);
            }
        }
    }
}

/// <summary>A place on the page, in pixels from its upper left corner.</summary>
public readonly record struct Place(double X, double Y);

/// <summary>How a word is written.</summary>
public sealed record Lettering(double Size)
{
    /// <summary>Which part of the word stands at its place: start, middle, end.</summary>
    public string Anchor { get; init; } = "start";

    /// <summary>Whether it is bold.</summary>
    public bool Bold { get; init; }

    /// <summary>Whether it runs from bottom to top.</summary>
    public bool Upward { get; init; }

    /// <summary>About how wide a text becomes: fonts differ, so rather too wide.</summary>
    public double WidthOf(string text) => text.Length * Size * 0.57;
}
