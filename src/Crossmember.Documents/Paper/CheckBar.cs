using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper;

/// <summary>The bar that shows whether a printer kept the size.</summary>
public static class CheckBar
{
    /// <summary>Length in millimetres.</summary>
    public const double Length = 100;

    public const string Words = "Print at 100 %, without fitting to the page. This bar must measure 100 mm.";

    /// <summary>The bar with a tick every 10 mm, from the left edge of its drawing.</summary>
    public static Drawing Drawing { get; } = new(Length, 4, Words,
    [
        Shape.Line(0, 2, Length, 2, Ink.Text, 0.3),
        .. Enumerable.Range(0, 11).Select(i => Shape.Line(i * Length / 10, i % 10 == 0 ? 0 : 1, i * Length / 10, i % 10 == 0 ? 4 : 3, Ink.Text, 0.2)),
    ]);
}
