using System.Text;
using System.Xml.Linq;
using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Vehicle;

/// <summary>The masses of a vehicle as a file by itself: side view, plan, loads, and the list that the numbers belong to.</summary>
public static class MassSvg
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    // Not the colours of verdicts: a mark says whose mass it is, not whether it is too much.
    private static readonly Ink s_part = Ink.OfCurve(1), s_aboard = Ink.OfCurve(0);

    /// <param name="said">What the drawing rests on.</param>
    public static byte[] Write(string title, string said, MassPicture picture, IReadOnlyList<DrawnMass> masses, IReadOnlyList<DrawnLoad> loads, DrawnCenter? center)
    {
        var height = picture.Height + 30 + (20 * Math.Ceiling(masses.Count / 2.0));
        var root = new XElement(s_svg + "svg", new XAttribute("viewBox", $"0 0 {Outline.Text(picture.Width)} {Outline.Text(height)}"), new XAttribute("style", "font-family:'DejaVu Sans',sans-serif"),
            new XElement(s_svg + "title", Plain.Text(title)), new XElement(s_svg + "desc", Plain.Text(said)),
            new XElement(s_svg + "rect", Outline.Number("width", picture.Width), Outline.Number("height", height), new XAttribute("fill", Ink.Ground.Light)),
            Words(4, 14, title, 12, Ink.Quiet.Light), picture.Drawn(ink => ink.Light));
        foreach (var mass in masses.OrderByDescending(m => m.Kilograms))
            root.Add(Mark(mass, picture.Side(mass.At), picture), Mark(mass, picture.Plan(mass.At), picture));
        foreach (var load in loads)
        {
            var (x, y) = picture.Label(load);
            var ink = load.Verdict is { } verdict ? MarkInk.Of(verdict).Light : Ink.Text.Light;
            root.Add(Middle(x, y, load.Sign + load.Load, ink), Middle(x, y + 14, load.Share, ink));
        }
        if (center is not null) root.Add(Center(center, picture));
        root.Add(masses.OrderBy(m => m.Number).Select((m, i) => Words(i % 2 == 0 ? 26 : picture.Width / 2, picture.Height + 20 + (20 * (i / 2)), $"{m.Number}  {m.Says}", 12, Ink.Text.Light)));
        return Encoding.UTF8.GetBytes(root.ToString(SaveOptions.DisableFormatting));
    }

    private static XElement Mark(DrawnMass mass, (double X, double Y) at, MassPicture picture)
    {
        var r = picture.Radius(mass.Kilograms);
        var style = new XAttribute("style", mass.Shape switch
        {
            MassShape.PutOn => $"fill:{s_part.Light};fill-opacity:.35;stroke:{s_part.Light}",
            MassShape.Aboard => $"fill:{s_aboard.Light};fill-opacity:.35;stroke:{s_aboard.Light}",
            MassShape.CameOff => $"fill:none;stroke:{Ink.Quiet.Light};stroke-dasharray:3 3",
            _ => $"fill:none;stroke:{Ink.Quiet.Light}",
        });
        var shape = mass.Shape == MassShape.Aboard
            ? new XElement(s_svg + "rect", Outline.Number("x", at.X - r), Outline.Number("y", at.Y - r), Outline.Number("width", 2 * r), Outline.Number("height", 2 * r), style)
            : new XElement(s_svg + "circle", Outline.Number("cx", at.X), Outline.Number("cy", at.Y), Outline.Number("r", r), style);
        return new(s_svg + "g", new XElement(s_svg + "title", Plain.Text(mass.Says)), shape, Middle(at.X, at.Y + 4, $"{mass.Number}", Ink.Text.Light));
    }

    private static IEnumerable<XElement> Center(DrawnCenter c, MassPicture picture)
    {
        if (c.X is not { } x) yield break;
        var ink = Ink.Text.Light;
        if (c.Z is { } z) yield return Cross(picture.Side(new(x, 0, z)), ink);
        if (c.Y is { } y) yield return Cross(picture.Plan(new(x, y, 0)), ink);
    }

    private static XElement Cross((double X, double Y) at, string ink) =>
        new(s_svg + "g", new XElement(s_svg + "title", "center of gravity"),
            new XElement(s_svg + "circle", Outline.Number("cx", at.X), Outline.Number("cy", at.Y), Outline.Number("r", 9), new XAttribute("style", $"fill:{Ink.Ground.Light};stroke:{ink};stroke-width:2")),
            new XElement(s_svg + "path", new XAttribute("d", Quarters(at.X, at.Y, 9)), new XAttribute("style", $"fill:{ink}")));

    /// <summary>Two opposite quarters of a disc: the usual sign of a center of gravity on drawings.</summary>
    public static string Quarters(double x, double y, double r)
    {
        string X(double by) => Outline.Text(x + by);
        string Y(double by) => Outline.Text(y + by);
        return $"M{X(0)} {Y(0)}V{Y(-r)}A{r} {r} 0 0 1 {X(r)} {Y(0)}ZM{X(0)} {Y(0)}V{Y(r)}A{r} {r} 0 0 1 {X(-r)} {Y(0)}Z";
    }

    private static XElement Middle(double x, double y, string text, string ink) =>
        new(s_svg + "text", Outline.Number("x", x), Outline.Number("y", y), new XAttribute("text-anchor", "middle"), Outline.Number("font-size", 12), new XAttribute("style", $"fill:{ink}"), Plain.Text(text));

    private static XElement Words(double x, double y, string text, double size, string ink) =>
        new(s_svg + "text", Outline.Number("x", x), Outline.Number("y", y), Outline.Number("font-size", size), new XAttribute("style", $"fill:{ink}"), Plain.Text(text));
}
