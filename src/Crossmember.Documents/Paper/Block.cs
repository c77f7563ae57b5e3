namespace Crossmember.Documents.Paper;

/// <summary>A part of a document that stands on a line of its own. A closed set: every writer knows all of them.</summary>
public abstract record Block
{
    private Block() { }

    /// <summary>A title of what follows, with which it stays; 1 is the document's own.</summary>
    public sealed record Heading(int Level, string Words) : Block;

    public sealed record Paragraph(Text Text) : Block;

    public sealed record Bullets(IReadOnlyList<Text> Items) : Block;

    /// <summary>What must not be overlooked.</summary>
    public sealed record Notice(string Title, IReadOnlyList<Text> Items) : Block;

    /// <summary>A few names with their values, side by side.</summary>
    public sealed record Facts(IReadOnlyList<Named> Items) : Block;

    /// <summary>Rows under a head that stands again on every page they go on to.</summary>
    public sealed record Table(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) : Block;

    public sealed record Figure(string Caption, Picture Picture) : Block;

    /// <summary>A drawing at its true size, with a bar to see by that the printer kept it.</summary>
    public sealed record TrueScale(string Title, Drawing Drawing) : Block;

    /// <summary>Blocks that a page does not part, unless they are longer than one.</summary>
    public sealed record Together(params IReadOnlyList<Block> Blocks) : Block;

    /// <summary>What follows begins on a page of its own.</summary>
    public sealed record NewPage : Block;
}

/// <summary>A name with its value.</summary>
public sealed record Named(string Name, Text Value);

/// <summary>A column of a table.</summary>
/// <param name="Figures">Numbers: to the right, one under the other.</param>
/// <param name="Share">How much of the room it may take where not everything fits on one line, beside the others' 1.</param>
public sealed record Column(string Title, bool Figures = false, double Share = 1);

/// <summary>A row of a table. The first cell names it.</summary>
/// <param name="Depth">How far beneath the row that it belongs to.</param>
/// <param name="Group">Its one cell stands over the rows that follow.</param>
public sealed record Row(IReadOnlyList<Text> Cells, int Depth = 0, bool Group = false)
{
    public static Row Over(string words) => new([Run.Strong(words)], Group: true);
}
