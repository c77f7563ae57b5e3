using System.Text;
using System.Xml.Linq;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Calculations;
using CsCheck;

namespace Crossmember.Documents.Tests.Vehicle;

/// <summary>Masses on the drawing: to scale, by area, and told in words beside it.</summary>
public sealed class MassPictureTests
{
    private static readonly VehicleShape s_shape = new(3.2, 0.84, 1.46, 0.53);

    private static readonly DrawnMass[] s_masses =
    [
        new("winch", 1, 64, new(-0.7, 0, 0.1), MassShape.PutOn, "Winch <drum>, 64 kg"), new("driver", 2, 86, new(1.57, -0.4, 0.86), MassShape.Aboard, "driver, 86 kg"),
        new("tank", 3, 50, new(1.7, 0, 0.6), MassShape.CameOff, "tank, 50 kg"), new("axle", 4, null, new(3.2, 0, 0), MassShape.Standing, "axle, don't know"),
    ];

    private static readonly DrawnLoad[] s_loads =
    [
        new("front", null, "1065 kg", "71 % of axle", Verdict.Pass), new("rear", null, "1085 kg", "102 % of axle", Verdict.Fail), new("rear", "left", "543 kg", "", null), new("rear", "right", "don't know", "", Verdict.Unknown),
    ];

    private static XElement File(DrawnCenter? center = null) => XElement.Parse(Encoding.UTF8.GetString(MassSvg.Write("Bracken, loaded", "drawn from nothing", new(s_shape, 1000), s_masses, s_loads, center)));

    private static IEnumerable<XElement> All(XElement root, string name) => root.Descendants().Where(e => e.Name.LocalName == name);

    /// <summary>A place is where the scale puts it, in both views, whatever the width: what the script of the page turns back into meters.</summary>
    [Fact]
    public void A_place_is_found_again_from_its_pixels() => Gen.Select(Gen.Double[-0.7, 4.2], Gen.Double[-0.8, 0.8], Gen.Double[-0.4, 1.6], Gen.Double[320, 1200]).Sample((x, y, z, width) =>
    {
        var picture = new MassPicture(s_shape, width);
        var (side, plan) = (picture.Side(new(x, y, z)), picture.Plan(new(x, y, z)));
        Assert.Equal(x, (side.X - picture.X0) / picture.Scale, 9);
        Assert.Equal(z, (picture.Side0 - side.Y) / picture.Scale, 9);
        Assert.Equal(y, (picture.Plan0 - plan.Y) / picture.Scale, 9);
        Assert.True(side.Y < picture.Split && plan.Y > picture.Split);
    });

    [Fact]
    public void What_lies_far_outside_stays_in_the_picture()
    {
        var picture = new MassPicture(s_shape, 820);
        foreach (var at in new[] { new Place(-9, 9, 9), new Place(99, -9, -9) })
            foreach (var (x, y) in new[] { picture.Side(at), picture.Plan(at) }) Assert.True(x is >= 0 and <= 820 && y >= 0 && y <= picture.Height);
    }

    [Fact]
    public void The_area_of_a_mark_is_as_its_mass()
    {
        var picture = new MassPicture(s_shape, 820);
        Assert.Equal(4, Math.Pow(picture.Radius(400) / picture.Radius(100), 2), 9);
        Assert.Equal(picture.Radius(null), picture.Radius(0.1));
        Assert.True(picture.Radius(null) > 2);
    }

    [Fact]
    public void Labels_of_loads_keep_clear_of_each_other_in_wide_and_narrow()
    {
        foreach (var width in new[] { 820.0, 340 })
        {
            var picture = new MassPicture(s_shape, width);
            var at = s_loads.Select(picture.Label).Concat([picture.Label(new("front", "left", "", "", null)), picture.Label(new("front", "right", "", "", null))]).ToList();
            for (var i = 0; i < at.Count; i++)
                for (var j = 0; j < i; j++) Assert.True(Math.Abs(at[i].X - at[j].X) > 90 || Math.Abs(at[i].Y - at[j].Y) > 2 * picture.FontSize, $"{i} and {j} at {width}");
            Assert.All(at, a => Assert.InRange(a.Y + (2 * picture.FontSize), 0, picture.Height));
        }
    }

    [Fact]
    public void The_file_draws_each_mass_twice_and_lists_it_by_number()
    {
        var svg = File();
        Assert.Equal(2 * s_masses.Count(m => m.Shape != MassShape.Aboard), All(svg, "g").Count(g => g.Elements().Any(e => e.Name.LocalName == "circle" && e.Attribute("r") is not null) && g.Elements().Any(e => e.Name.LocalName == "title")));
        var words = All(svg, "text").Select(t => t.Value).ToList();
        foreach (var mass in s_masses) Assert.Contains($"{mass.Number}  {mass.Says}", words);
        Assert.Equal("Bracken, loaded", All(svg, "title").First().Value);
    }

    [Fact]
    public void Loads_bear_the_shape_of_their_verdict_beside_its_colour()
    {
        var words = All(File(), "text").Select(t => t.Value).ToList();
        Assert.Contains("● 1065 kg", words);
        Assert.Contains("■ 1085 kg", words);
        Assert.Contains("○ don't know", words);
        Assert.Contains("543 kg", words);
        Assert.Equal("▲ 1 kg", new DrawnLoad("front", null, "1 kg", "", Verdict.Caution) is var l ? l.Sign + l.Load : "");
    }

    [Theory]
    [InlineData(1.5, 0.1, 0.3, 2)]
    [InlineData(1.5, null, 0.3, 1)]
    [InlineData(1.5, null, null, 0)]
    [InlineData(null, 0.1, 0.3, 0)]
    public void The_center_of_gravity_is_drawn_as_far_as_it_is_known(double? x, double? y, double? z, int crosses) =>
        Assert.Equal(crosses, All(File(new(x, y, z, null, null, null)), "title").Count(t => t.Value == "center of gravity"));

    [Fact]
    public void Outlines_for_a_page_stand_in_the_colours_of_its_tokens_and_in_its_own_namespace()
    {
        var outlines = new MassPicture(s_shape, 820).Outlines();
        Assert.DoesNotContain("xmlns", outlines, StringComparison.Ordinal);
        Assert.DoesNotContain("#", outlines, StringComparison.Ordinal);
        Assert.Contains("var(--ink)", outlines, StringComparison.Ordinal);
        Assert.NotEmpty(XElement.Parse($"<g>{outlines}</g>").Elements());
    }
}
