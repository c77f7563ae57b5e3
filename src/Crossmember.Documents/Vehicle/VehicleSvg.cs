using System.Text;
using System.Xml.Linq;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Vehicle;

/// <summary>What a page adds to the drawing.</summary>
/// <param name="Address">Where an item is opened.</param>
/// <param name="Near">Where a mark of several items leads: their first row in the list, by its number.</param>
/// <param name="Selected">The item in hand.</param>
public sealed record DrawingLinks(Func<string, string> Address, Func<int, string> Near, string? Selected);

/// <summary>A vehicle from the side and from above, with its items marked and numbered.</summary>
public sealed class VehicleSvg
{
    /// <summary>Room for a finger in a glove.</summary>
    public const double MarkSize = 44;

    private const double Radius = 17;

    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    private readonly IReadOnlyList<DrawnItem> _items;
    private readonly VehicleShape _shape;
    private readonly PictureFrame _frame;
    private readonly Func<Ink, string> _colour;
    private readonly DrawingLinks? _links;
    private bool _stopped;

    private VehicleSvg(IReadOnlyList<DrawnItem> items, VehicleShape shape, double width, Func<Ink, string> colour, DrawingLinks? links) =>
        (_items, _shape, _frame, _colour, _links) = (items, shape, new(shape, width), colour, links);

    /// <summary>A file by itself, in the light colours on white, with its list of items.</summary>
    public static byte[] Write(string title, string said, IReadOnlyList<DrawnItem> items, VehicleShape shape, double width)
    {
        var drawing = new VehicleSvg(items, shape, width, ink => ink.Light, null);
        var root = drawing.Draw();
        var height = drawing._frame.Height + 30 + (20 * Math.Ceiling(items.Count / 2.0));
        root.SetAttributeValue("viewBox", $"0 0 {Outline.Text(width)} {Outline.Text(height)}");
        root.Add(items.Select((item, i) => drawing.Words(i % 2 == 0 ? 26 : width / 2, drawing._frame.Height + 30 + (20 * (i / 2)), $"{item.Number}  {item.Title}: {item.Says}", 12, Ink.Text)));
        root.AddFirst(new XElement(s_svg + "title", Plain.Text(title)), new XElement(s_svg + "desc", Plain.Text(said)),
            new XElement(s_svg + "rect", Outline.Number("width", width), Outline.Number("height", height), new XAttribute("fill", Ink.Ground.Light)));
        root.SetAttributeValue("style", "font-family:'DejaVu Sans',sans-serif");
        return Encoding.UTF8.GetBytes(root.ToString(SaveOptions.DisableFormatting));
    }

    /// <summary>Markup to stand within a page, in the colours of the page's tokens; each mark leads to its item, and arrow keys go through them.</summary>
    public static string ForPage(string label, IReadOnlyList<DrawnItem> items, VehicleShape shape, double width, DrawingLinks links)
    {
        var root = new VehicleSvg(items, shape, width, ink => $"var(--{ink.Token})", links).Draw();
        root.Add(new XAttribute("role", "group"), new XAttribute("aria-label", Plain.Text(label)), new XAttribute("data-arrows", "all"));
        root.SetAttributeValue("style", "font-family:var(--text-face)");
        return root.ToString(SaveOptions.DisableFormatting);
    }

    private XElement Draw()
    {
        var outline = new Outline(_shape, _frame, _colour);
        return new(s_svg + "svg", new XAttribute("viewBox", $"0 0 {Outline.Text(_frame.Width)} {Outline.Text(_frame.Height)}"),
            Words(4, _frame.Side.Top + 14, "from the left side", 12, Ink.Quiet), new XElement(s_svg + "g", new XAttribute("aria-hidden", "true"), outline.Side()),
            Marks(_frame.Side, i => _frame.SideY(i.Z), "side"),
            Words(4, _frame.Plan.Top - 4, "from above: right side", 12, Ink.Quiet), Words(4, _frame.Height - 6, "left side", 12, Ink.Quiet),
            new XElement(s_svg + "g", new XAttribute("aria-hidden", "true"), outline.Plan()), Marks(_frame.Plan, i => _frame.PlanY(i.Y), "plan"));
    }

    private XElement Marks(Area area, Func<DrawnItem, double> down, string name)
    {
        var places = _items.Select(i => (X: _frame.X(i.X), Y: down(i))).ToList();
        var marks = MarkLayout.Of(places, area, MarkSize);
        var group = new XElement(s_svg + "g", new XAttribute("class", name));
        // Threads first, so that no mark is crossed by another's.
        foreach (var mark in marks)
            foreach (var place in mark.Members.Select(m => places[m]).Where(p => Math.Pow(p.X - mark.X, 2) + Math.Pow(p.Y - mark.Y, 2) > 4))
                group.Add(Thread(mark, place, area));
        group.Add(marks.Select(Mark));
        return group;
    }

    private XElement Thread(PlacedMark mark, (double X, double Y) place, Area area)
    {
        var (x, y) = (Math.Clamp(place.X, area.Left, area.Left + area.Width), Math.Clamp(place.Y, area.Top, area.Top + area.Height));
        return new(s_svg + "g", new XAttribute("aria-hidden", "true"),
            new XElement(s_svg + "line", Outline.Number("x1", mark.X), Outline.Number("y1", mark.Y), Outline.Number("x2", x), Outline.Number("y2", y), new XAttribute("style", $"stroke:{_colour(Ink.Quiet)}")),
            new XElement(s_svg + "circle", Outline.Number("cx", x), Outline.Number("cy", y), Outline.Number("r", 2.5), new XAttribute("style", $"fill:{_colour(Ink.Quiet)}")));
    }

    private XElement Mark(PlacedMark mark)
    {
        var items = mark.Members.Select(m => _items[m]).OrderBy(i => i.Number).ToList();
        var worst = items.Max(i => i.Verdict);
        var told = Plain.Text(string.Join("; ", items.Select(i => $"{i.Number} {i.Title}: {i.Says}")));
        var shown = items.Count == 1 ? $"{items[0].Number}" : $"{items[0].Number} +{items.Count - 1}";
        var ink = _colour(MarkInk.IsFilled(worst) ? Ink.Ground : MarkInk.Of(worst));
        var drawn = new List<object>
        {
            new XElement(s_svg + "title", told), new XElement(s_svg + "rect", Outline.Number("x", mark.X - (MarkSize / 2)), Outline.Number("y", mark.Y - (MarkSize / 2)), Outline.Number("width", MarkSize), Outline.Number("height", MarkSize), new XAttribute("fill", "transparent")),
            Shape(worst, mark.X, mark.Y),
            Number(shown, mark.X, mark.Y + (worst == Verdict.Caution ? 9 : 4.5), shown.Length > 2 ? 11 : 13, ink),
        };
        if (_links is not { } links) return new(s_svg + "g", drawn);
        if (items.Exists(i => i.Id == links.Selected)) drawn.Insert(1, new XElement(s_svg + "circle", Outline.Number("cx", mark.X), Outline.Number("cy", mark.Y), Outline.Number("r", Radius + 4), new XAttribute("class", "selected"), new XAttribute("style", "fill:none;stroke:var(--action)"), new XAttribute("stroke-width", 3)));
        var link = new XElement(s_svg + "a", new XAttribute("href", items.Count == 1 ? links.Address(items[0].Id) : links.Near(items[0].Number)), new XAttribute("aria-label", items.Count == 1 ? told : $"{shown}: {told}"), new XAttribute("tabindex", _stopped ? "-1" : "0"), drawn);
        _stopped = true;
        return link;
    }

    private XElement Shape(Verdict? verdict, double x, double y)
    {
        var colour = _colour(MarkInk.Of(verdict));
        var style = new XAttribute("style", MarkInk.IsFilled(verdict) ? $"fill:{colour};stroke:{_colour(Ink.Ground)}" : $"fill:{_colour(Ink.Ground)};stroke:{colour}");
        var width = Outline.Number("stroke-width", MarkInk.IsFilled(verdict) ? 1.5 : 2.5);
        return verdict switch
        {
            Verdict.Fail => new(s_svg + "rect", Outline.Number("x", x - Radius + 2), Outline.Number("y", y - Radius + 2), Outline.Number("width", (2 * Radius) - 4), Outline.Number("height", (2 * Radius) - 4), style, width),
            Verdict.Caution => new(s_svg + "polygon", new XAttribute("points", $"{Outline.Text(x)},{Outline.Text(y - Radius - 2)} {Outline.Text(x + Radius + 3)},{Outline.Text(y + Radius - 2)} {Outline.Text(x - Radius - 3)},{Outline.Text(y + Radius - 2)}"), style, width),
            // No check has anything to do with it: dotted, so that it is not taken for "don't know".
            null => new(s_svg + "circle", Outline.Number("cx", x), Outline.Number("cy", y), Outline.Number("r", Radius - 2), style, Outline.Number("stroke-width", 1.5), new XAttribute("stroke-dasharray", "2 3")),
            _ => new(s_svg + "circle", Outline.Number("cx", x), Outline.Number("cy", y), Outline.Number("r", Radius - 1), style, width),
        };
    }

    private static XElement Number(string text, double x, double y, double size, string colour) =>
        new(s_svg + "text", Outline.Number("x", x), Outline.Number("y", y), new XAttribute("text-anchor", "middle"), Outline.Number("font-size", size), new XAttribute("font-weight", 650), new XAttribute("style", $"fill:{colour}"), text);

    private XElement Words(double x, double y, string text, double size, Ink ink) =>
        new(s_svg + "text", Outline.Number("x", x), Outline.Number("y", y), Outline.Number("font-size", size), new XAttribute("style", $"fill:{_colour(ink)}"), Plain.Text(text));
}
