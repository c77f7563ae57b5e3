using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Today;

namespace Crossmember.Web.Tests.Today;

/// <summary>Which vehicles the morning page troubles somebody with, and about what.</summary>
public sealed class VehicleDayTests
{
    private static readonly DateOnly s_today = new(2026, 3, 2);

    private static readonly BuildGlance s_quiet = new("b", "Hauler", "deciding", null, null, "working", "working", new("x/y", Verdict.Pass, "", "", "", null, 0), 0, 0, 0, 9,
        "Ask the customer for the yes.", null, [], [], [], new("the customer", 0), []);

    private static VehicleDay Day(BuildGlance glance, int held = 0) => new(new(glance, false, held), s_today);

    [Fact]
    public void A_vehicle_that_is_decided_approved_and_in_no_trouble_needs_nobody() => Assert.False(Day(s_quiet).NeedsSomebody);

    [Fact]
    public void Trouble_a_stop_something_unknown_something_open_and_a_held_entry_each_need_somebody()
    {
        Assert.True(Day(s_quiet with { Fails = 1 }).NeedsSomebody);
        Assert.True(Day(s_quiet with { Unknowns = 1 }).NeedsSomebody);
        Assert.True(Day(s_quiet with { Stopped = "waits for the title" }).NeedsSomebody);
        Assert.True(Day(s_quiet with { Undecided = [new("tires", "Tires", "")] }).NeedsSomebody);
        Assert.True(Day(s_quiet, held: 1).NeedsSomebody);
    }

    [Fact]
    public void A_delivered_vehicle_is_left_alone_until_something_on_it_says_no()
    {
        var delivered = s_quiet with { Phase = "delivered", Unknowns = 4, Undecided = [new("tires", "Tires", "")], Consent = new(null, 0) };
        Assert.False(Day(delivered).NeedsSomebody);
        Assert.Null(Day(delivered).AsksForYes);
        Assert.True(Day(delivered with { Fails = 1 }).NeedsSomebody);
    }

    [Theory]
    [InlineData("2026-03-01", true)]
    [InlineData("2026-03-02", false)] // the last day still counts
    [InlineData("2026-12-31", false)]
    [InlineData("03/01/2026", false)] // the first of March, or the third of January: nobody knows
    [InlineData("end of spring", false)]
    public void A_price_has_run_out_on_the_day_after_its_last(string until, bool isOut) =>
        Assert.Equal(isOut, Day(s_quiet with { Prices = [new("tires", "Tires", "set of five", until)] }).OutOfDate.Count == 1);

    [Fact]
    public void The_customer_is_asked_when_all_is_decided_and_again_when_something_differs()
    {
        Assert.Null(Day(s_quiet).AsksForYes);
        Assert.Contains("ask for the yes", Day(s_quiet with { Consent = new(null, 0) }).AsksForYes, StringComparison.Ordinal);
        Assert.Null(Day(s_quiet with { Consent = new(null, 0), Unknowns = 1 }).AsksForYes);
        Assert.Equal("2 items differ from what the customer said yes to: ask again before the work.", Day(s_quiet with { Consent = new("the customer", 2) }).AsksForYes);
        Assert.True(Day(s_quiet with { Consent = new("", 1) }).NeedsSomebody);
    }
}
