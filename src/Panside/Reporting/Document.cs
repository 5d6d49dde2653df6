namespace Panside.Reporting;

/// <summary>A document, before it is written in one form or another.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Parts">In order.</param>
internal sealed record Document(string Title, IReadOnlyList<Part> Parts);

/// <summary>A part of a document.</summary>
internal abstract record Part;

/// <summary>A heading under the title.</summary>
internal sealed record Heading(string Text) : Part;

/// <summary>A sentence or a few.</summary>
internal sealed record Paragraph(string Text) : Part;

/// <summary>Rows under column names. A row has as many cells as there are columns.</summary>
/// <param name="Columns">Names with units.</param>
/// <param name="Rows">The cells.</param>
/// <param name="Numbers">Columns from this one on hold numbers, and stand to the right.</param>
internal sealed record Table(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, int Numbers = int.MaxValue) : Part;

/// <summary>A picture.</summary>
/// <param name="Svg">Its SVG; the form that has no pictures tells its words instead.</param>
/// <param name="Words">What it shows.</param>
internal sealed record Picture(string Svg, string Words) : Part;
