using System.Globalization;
using System.Xml.Linq;
using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Vehicle;

/// <summary>The lines of a body-on-frame vehicle from its few lengths: frame, axles, wheels, and a body that is only hinted at. Nobody's vehicle.</summary>
internal sealed class Outline(VehicleShape shape, PictureFrame at, Func<Ink, string> colour)
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    public IEnumerable<XElement> Side()
    {
        var radius = shape.TireDiameter / 2;
        var axle = shape.Ground + radius;
        double w = shape.Wheelbase, rail = 0.035 * w;
        yield return Line(at.X(shape.Front - (0.02 * w)), at.SideY(shape.Ground), at.X(shape.Rear + (0.02 * w)), at.SideY(shape.Ground), Ink.Quiet, 1.5);
        // Hood, cab and what is behind: a hint, so dashed.
        yield return Path(Ink.Quiet, "6 5", Corner(shape.Front, 0.02 * w), Corner(shape.Front, 0.27 * w), Corner(0.22 * w, 0.3 * w), Corner(0.31 * w, shape.Roof - (0.02 * w)), Corner(0.62 * w, shape.Roof - (0.02 * w)),
            Corner(0.66 * w, 0.3 * w), Corner(shape.Rear - (0.03 * w), 0.3 * w), Corner(shape.Rear - (0.03 * w), 0.02 * w));
        yield return Box(at.X(shape.Front), at.SideY(rail / 2), at.Of(shape.Rear - shape.Front), at.Of(rail), Ink.Text);
        foreach (var x in new[] { 0, w })
        {
            yield return Circle(at.X(x), at.SideY(axle), at.Of(radius), Ink.Text, 2);
            yield return Circle(at.X(x), at.SideY(axle), at.Of(radius * 0.55), Ink.Rule, 1.5);
            yield return Circle(at.X(x), at.SideY(axle), 3, Ink.Text, 2);
        }
    }

    public IEnumerable<XElement> Plan()
    {
        double w = shape.Wheelbase, rail = 0.03 * w, half = shape.HalfWidth;
        yield return Box(at.X(shape.Front), at.PlanY(half), at.Of(shape.Rear - shape.Front), at.Of(2 * half), Ink.Quiet, "6 5", 10);
        yield return Line(at.X(shape.Front - (0.02 * w)), at.PlanY(0), at.X(shape.Rear + (0.02 * w)), at.PlanY(0), Ink.Rule, 1, "10 4 2 4");
        foreach (var side in new[] { -1, 1 })
        {
            yield return Box(at.X(shape.Front + (0.02 * w)), at.PlanY((side * shape.RailApart) + (rail / 2)), at.Of(shape.Rear - shape.Front - (0.05 * w)), at.Of(rail), Ink.Text);
            foreach (var x in new[] { 0, w })
                yield return Box(at.X(x - (shape.TireDiameter / 2)), at.PlanY((side * shape.Track / 2) + (shape.TireWidth / 2)), at.Of(shape.TireDiameter), at.Of(shape.TireWidth), Ink.Text, null, 5);
        }
        foreach (var x in new[] { 0, w }) yield return Line(at.X(x), at.PlanY(-shape.Track / 2), at.X(x), at.PlanY(shape.Track / 2), Ink.Text, 2.5);
        // Ladder: five cross members.
        foreach (var share in new[] { -0.2, 0.25, 0.55, 0.85, 1.3 }) yield return Line(at.X(share * w), at.PlanY(-shape.RailApart), at.X(share * w), at.PlanY(shape.RailApart), Ink.Rule, 2.5);
    }

    private (double X, double Y) Corner(double x, double z) => (at.X(x), at.SideY(z));

    private XElement Line(double x1, double y1, double x2, double y2, Ink ink, double width, string? dashes = null) =>
        Stroked(new(s_svg + "line", Number("x1", x1), Number("y1", y1), Number("x2", x2), Number("y2", y2)), ink, width, dashes);

    private XElement Circle(double x, double y, double radius, Ink ink, double width) => Stroked(new(s_svg + "circle", Number("cx", x), Number("cy", y), Number("r", radius)), ink, width, null);

    private XElement Box(double x, double y, double width, double height, Ink ink, string? dashes = null, double round = 1) =>
        Stroked(new(s_svg + "rect", Number("x", x), Number("y", y), Number("width", width), Number("height", height), Number("rx", round)), ink, 1.5, dashes);

    private XElement Path(Ink ink, string? dashes, params (double X, double Y)[] corners) =>
        Stroked(new(s_svg + "polyline", new XAttribute("points", string.Join(' ', corners.Select(c => $"{Text(c.X)},{Text(c.Y)}")))), ink, 1.5, dashes);

    private XElement Stroked(XElement e, Ink ink, double width, string? dashes)
    {
        e.Add(new XAttribute("style", $"fill:none;stroke:{colour(ink)}"), new XAttribute("stroke-width", Text(width)));
        if (dashes is not null) e.Add(new XAttribute("stroke-dasharray", dashes));
        return e;
    }

    internal static XAttribute Number(string name, double value) => new(name, Text(value));

    internal static string Text(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
