using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Calculations;
using CsCheck;

namespace Crossmember.Documents.Tests.Vehicle;

/// <summary>The drawing as whoever opens it reads it.</summary>
public sealed class VehicleSvgTests
{
    private static readonly VehicleShape s_shape = new(3.2, 0.84, 1.46, 0.53);

    private static readonly DrawnItem[] s_items =
    [
        new("winch", 1, "Winch", -0.7, 0, 0.1, Verdict.Caution, "watch"), new("engine", 2, "Engine <six>", 0.3, 0, 0.4, null, "no check"),
        new("axle.rear", 3, "Rear axle", 3.2, 0, 0, Verdict.Fail, "no"), new("tires", 4, "Tires", 3.2, -0.7, -0.1, Verdict.Unknown, "don't know"), new("gearbox", 5, "Gearbox", 1, 0, 0.2, Verdict.Pass, "good"),
    ];

    private static readonly DrawingLinks s_links = new(i => $"sheet?item={i}", n => $"sheet#place-{n}", "tires");

    private static XElement Page(double width = 820) => XElement.Parse(VehicleSvg.ForPage("on the vehicle", s_items, s_shape, width, s_links));

    private static IEnumerable<XElement> All(XElement root, string name) => root.Descendants().Where(e => e.Name.LocalName == name);

    [Fact]
    public void Both_views_lead_to_every_item_and_say_its_verdict_in_a_word()
    {
        var links = All(Page(), "a").Select(a => ((string?)a.Attribute("href"), (string?)a.Attribute("aria-label"))).ToList();
        foreach (var item in s_items) Assert.Equal(2, links.Count(l => l.Item1 == $"sheet?item={item.Id}" && l.Item2 == $"{item.Number} {item.Title}: {item.Says}"));
    }

    [Fact]
    public void The_picture_is_one_stop_of_Tab() => Assert.Single(All(Page(), "a"), a => (string?)a.Attribute("tabindex") == "0");

    [Fact]
    public void Each_verdict_has_a_shape_of_its_own()
    {
        string ShapeOf(string id) => string.Join(' ', All(Page(), "a").First(a => ((string?)a.Attribute("href"))!.EndsWith(id, StringComparison.Ordinal)).Elements()
            .Where(e => e.Name.LocalName is "rect" or "polygon" or "circle" && e.Attribute("stroke-width") is not null && e.Attribute("class") is null)
            .Select(e => $"{e.Name.LocalName} {((string?)e.Attribute("style"))!.StartsWith("fill:var(--card)", StringComparison.Ordinal)} {e.Attribute("stroke-dasharray") is not null}"));
        Assert.Equal(5, s_items.Select(i => ShapeOf(i.Id)).Distinct().Count());
    }

    [Fact]
    public void The_item_in_hand_is_ringed() => Assert.Equal(2, All(Page(), "circle").Count(c => (string?)c.Attribute("class") == "selected"));

    [Fact]
    public void The_page_takes_its_colours_from_the_tokens_and_the_file_brings_its_own()
    {
        Assert.DoesNotContain("#", Page().ToString().Replace("sheet#place", "", StringComparison.Ordinal), StringComparison.Ordinal);
        var file = Encoding.UTF8.GetString(VehicleSvg.Write("Flatbed", "drawn", s_items, s_shape, 1000));
        Assert.DoesNotContain("var(", file, StringComparison.Ordinal);
        Assert.DoesNotContain("href", file, StringComparison.Ordinal);
        Assert.Contains("Engine &lt;six&gt;: no check", file, StringComparison.Ordinal);
    }

    /// <summary>The scale of the picture is that of the vehicle: wheels stand a wheelbase apart, in both views alike.</summary>
    [Fact]
    public void Wheels_stand_a_wheelbase_apart_and_one_tire_high() => Gen.Select(Gen.Double[1.8, 4.5], Gen.Double[0.6, 1.1], Gen.Double[300, 1000]).Sample((wheelbase, tire, width) =>
    {
        var frame = new PictureFrame(new(wheelbase, tire, 1.4, 0.5), width);
        Assert.Equal(frame.Of(wheelbase), frame.X(wheelbase) - frame.X(0), 6);
        Assert.Equal(frame.Of(tire), frame.SideY(0) - frame.SideY(tire), 6);
    }, iter: 200);

    [Fact]
    public void Left_and_right_mirror_each_other_about_the_center_line() => Gen.Double[-2, 2].Sample(y =>
    {
        var frame = new PictureFrame(s_shape, 820);
        Assert.Equal(frame.PlanY(0) - frame.PlanY(y), frame.PlanY(-y) - frame.PlanY(0), 6);
        // Seen from above with the front at the left, the right side lies above.
        if (y > 0.001) Assert.True(frame.PlanY(y) < frame.PlanY(0));
    });

    [Fact]
    public void The_outline_in_plan_is_the_same_on_either_side()
    {
        var frame = new PictureFrame(s_shape, 820);
        var middle = frame.PlanY(0);
        double Of(XElement e, string name) => double.Parse((string)e.Attribute(name)!, CultureInfo.InvariantCulture);
        var boxes = All(new XElement("plan", new Outline(s_shape, frame, i => i.Light).Plan()), "rect").Select(r => (X: Math.Round(Of(r, "x")), Middle: Of(r, "y") + (Of(r, "height") / 2) - middle)).ToList();
        Assert.Equal(7, boxes.Count);
        Assert.All(boxes, b => Assert.Contains(boxes, o => o.X == b.X && Math.Abs(o.Middle + b.Middle) < 0.25));
    }

    [Theory]
    [InlineData(400)]
    [InlineData(820)]
    public void Everything_lies_within_the_picture(double width)
    {
        var root = Page(width);
        var box = ((string)root.Attribute("viewBox")!).Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        foreach (var circle in All(root, "circle"))
        {
            Assert.InRange((double)circle.Attribute("cx")!, 0, box[2]);
            Assert.InRange((double)circle.Attribute("cy")!, 0, box[3]);
        }
    }
}
