using Bunit;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Tests.Decisions;

/// <summary>Up to four sides, each with what it does to the whole vehicle.</summary>
public sealed class SideBySideTests : BunitContext
{
    private static readonly Column[] s_columns =
    [
        new("As found", Bracken.With(), true),
        new("3.73 gears", Bracken.With(("final-drives", "tall")), false),
        new("4.88 gears", Bracken.With(("final-drives", "short")), false),
    ];

    private IRenderedComponent<SideBySide> Table(Column[] columns, bool choices = false) =>
        Render<SideBySide>(p => p.Add(t => t.Columns, columns).Add(t => t.ShowChoices, choices).Add(t => t.Measure, MeasureSystem.UsCustomary));

    [Fact]
    public void A_check_that_differs_stands_with_each_sides_word_and_number()
    {
        // By hand, 65 mph on 733.5 mm: 3102 rpm with 4.10, 2822 with 3.73, 3692 with 4.88; the redline is 3200.
        var row = Table(s_columns).FindAll("tr").Single(r => r.QuerySelector("th[title='driveline.cruise/redline']") is not null);
        Assert.Equal(["good 3102 rpm", "good 2822.1 rpm", "no 3692.2 rpm"], row.QuerySelectorAll("td").Select(c => string.Join(' ', c.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))));
    }

    [Fact]
    public void Checks_on_which_all_sides_agree_are_left_out_and_the_worst_stand_first()
    {
        var differing = Column.Differing(s_columns);
        Assert.All(differing, d => Assert.True(d.Sides.Select(f => f?.Verdict).Distinct().Count() > 1));
        var worst = differing.Select(d => d.Sides.Max(f => f?.Verdict)).ToList();
        Assert.Equal(worst.OrderByDescending(v => v), worst);
        Assert.Empty(Column.Differing([s_columns[0], s_columns[0]]));
    }

    [Fact]
    public void The_order_of_the_sides_changes_no_row()
    {
        static IEnumerable<(string, Verdict?)> Told(IReadOnlyList<Column> columns, int side) => Column.Differing(columns).Select(d => (d.Id, d.Sides[side]?.Verdict));
        Assert.Equal(Told(s_columns, 0), Told([.. s_columns.Reverse()], 2));
    }

    [Fact]
    public void What_ifs_are_told_apart_by_what_they_choose()
    {
        var table = Table(s_columns, choices: true);
        var row = table.FindAll("tr").Single(r => r.QuerySelector("th[title='final-drives']") is not null);
        Assert.Equal(["As found", "3.73 gears", "4.88 gears"], row.QuerySelectorAll("td").Select(c => c.TextContent));
        Assert.DoesNotContain(table.FindAll("th"), h => h.GetAttribute("title") == "heater");
    }

    [Fact]
    public void Sides_that_agree_say_so() => Assert.Contains("No check says anything else", Table([s_columns[0], s_columns[0]]).Markup, StringComparison.Ordinal);
}
