using System.Globalization;
using Bunit;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.VehicleMass;
using Crossmember.Web.Tests.MasterSheet;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>What makes up the mass, as a table and as a file.</summary>
public sealed class LedgerTests : VehiclePages
{
    private static IReadOnlyList<string> Titles(IRenderedComponent<VehiclePage> page) => [.. page.FindAll(".ledger tbody th > :first-child").Select(Text)];

    /// <summary>The weighing moves 2000 lb of the front axle, the winch 80.</summary>
    [Fact]
    public void What_moves_the_axles_most_stands_first_and_the_foot_is_what_the_axles_carry()
    {
        var page = Page();
        Assert.Equal(["On the scale, 2026-04-02", "Winch: drum"], Titles(page));
        Assert.Equal(["+64 lb", "-25, 0, 5", "+80 lb", "−16 lb", "-1 %", "vendor"], page.FindAll(".ledger tbody tr")[1].Children.Skip(1).Select(Plain));
        Assert.Equal(["3564 lb", "2080 lb", "1484 lb", "100 %"], page.FindAll(".ledger tfoot .whole td").Select(Plain).Where(t => t.Length > 0 && !t.Contains(',', StringComparison.Ordinal)));
    }

    [Fact]
    public void A_line_leads_to_its_mark()
    {
        var page = Page();
        page.Find(".ledger tbody a").Click();
        Assert.Contains("drum", page.Find("#place-title").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_find_lines_and_the_foot_adds_up_those_that_are_shown()
    {
        var page = Page();
        page.Find("#ledger-find").Input("put vendor");
        Assert.Equal(["Winch: drum"], Titles(page));
        Assert.Equal("1 of 2 lines", page.Find(".ledger-tools [role=status]").TextContent);
        Assert.Equal(["The lines shown", "+64 lb", "", "+80 lb", "−16 lb", "-1 %", ""], page.FindAll(".ledger tfoot tr")[0].Children.Select(Plain));
        page.Find("#ledger-find").Input("nothing like it");
        Assert.Empty(Titles(page));
    }

    [Fact]
    public void While_a_mass_is_moved_its_line_tells_the_new_place()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        page.Find("#place-x").Input("75 in");
        Assert.Equal("75, 0, 5", Text(page.FindAll(".ledger tbody tr")[1].Children[2]));
    }

    [Fact]
    public void An_unplaced_line_says_so_and_the_moment_of_the_whole_is_not_known()
    {
        var page = Page("?in=working&load=loaded&against=nothing");
        var tools = page.FindAll(".ledger tbody tr").Single(r => Text(r.Children[0]).StartsWith("tools", StringComparison.Ordinal));
        Assert.Equal(["+100 lb", "no place yet", "don't know", "don't know", "", "assumed"], tools.Children.Skip(1).Select(Plain));
    }

    /// <summary>The four invented vehicles in every what-if and condition: lines, sheet and file agree.</summary>
    [Theory]
    [MemberData(nameof(DemoShop.Sheets), MemberType = typeof(DemoShop))]
    public void Lines_of_the_demo_add_up_to_its_sheets(string build, string scenario)
    {
        var sheet = DemoShop.Sheet(build, scenario);
        foreach (var condition in MassView.Conditions(sheet.Build))
        {
            var view = new MassView(sheet, condition);
            foreach (var (what, sum) in new[] { ("total", view.Ledger.Kilograms), ("moment-x", view.Ledger.MomentX), ("moment-y", view.Ledger.MomentY), ("moment-z", view.Ledger.MomentZ) })
            {
                var told = sheet.Key($"mass.{condition}.{what}")!.Value.Value;
                Assert.Equal(told.IsAbsent, double.IsNaN(sum));
                if (!told.IsAbsent) Assert.Equal(told.Number, sum, 1e-9 * Math.Max(1, Math.Abs(told.Number)));
            }
            Assert.Equal(view.Ledger.All.Count, LedgerRow.Of(view).Count);
        }
    }

    [Fact]
    public void The_file_adds_up_to_its_own_last_line()
    {
        var lines = System.Text.Encoding.UTF8.GetString(LedgerCsv.Write(new(DemoShop.Sheet("packhorse", "working"), "touring"), MeasureSystem.UsCustomary)).TrimStart('\uFEFF').TrimEnd().Split("\r\n");
        Assert.StartsWith("what,kind,mass lb,plus or minus lb,behind front axle in", lines[0], StringComparison.Ordinal);
        double Mass(string line) => double.Parse(Fields(line)[2], CultureInfo.InvariantCulture);
        Assert.Equal(6900, Mass(lines[^1]), 0.5); // the demo's own figure, docs of the shop
        Assert.Equal(Mass(lines[^1]), lines[1..^1].Sum(Mass), 0.01);
        double Rear(string line) => double.Parse(Fields(line)[8], CultureInfo.InvariantCulture);
        Assert.Equal(Rear(lines[^1]), lines[1..^1].Sum(Rear), 0.01);
    }

    /// <summary>Fields of one line; a comma within quotation marks is none between fields (RFC 4180, 2.6).</summary>
    private static List<string> Fields(string line)
    {
        var (fields, quoted) = (new List<string> { "" }, false);
        foreach (var c in line)
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) fields.Add("");
            else fields[^1] += c;
        return fields;
    }
}
