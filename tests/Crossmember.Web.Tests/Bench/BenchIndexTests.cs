using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Bench;

namespace Crossmember.Web.Tests.Bench;

/// <summary>The two lists of cards: all there are, and those of a build with trouble first.</summary>
public sealed class BenchIndexTests : BenchShop
{
    [Fact]
    public void Every_living_instance_is_listed_once_and_every_other_calculation_as_not_used()
    {
        var sheet = Bracken.With();
        var index = BenchIndex.Of(sheet, MeasureSystem.UsCustomary);
        Assert.Equal(sheet.Instances.OfType<InstanceState>().Select(i => i.Instance.Id).Order(StringComparer.Ordinal), index.Groups.SelectMany(g => g.Lines).Select(l => l.Id).Order(StringComparer.Ordinal));
        Assert.Equal(CalculationList.All.Select(c => c.Id), index.Groups.Select(g => g.Calculation.Id).Concat(index.Unused.Select(u => u.Calculation.Id)).Order(StringComparer.Ordinal));
        Assert.All(index.Unused, u => Assert.NotEmpty(u.Why));
    }

    [Fact]
    public void Trouble_comes_first_in_the_list_and_in_each_group()
    {
        var index = BenchIndex.Of(Bracken.With(("final-drives", "short")), MeasureSystem.UsCustomary);
        Assert.Equal(Verdict.Fail, index.Groups[0].Worst);
        Assert.Contains(index.Groups, g => g.Calculation.Id == "driveline.cruise" && g.Worst == Verdict.Fail);
        var ranks = index.Groups.Select(g => g.Worst is { } v ? (int)v : -1).ToList();
        Assert.Equal(ranks.OrderDescending(), ranks);
        Assert.All(index.Groups, g => Assert.Equal(g.Worst, g.Lines[0].Worst));
        Assert.Null(index.Groups.Single(g => g.Calculation.Id == "driveline.engine-speed").Worst); // it raises no check in a sheet
    }

    [Fact]
    public void A_set_without_members_says_which_one_is_lacking()
    {
        var json = Bracken.Json.Replace("\"gear\":[\"1\",\"2\",\"3\",\"4\"]", "\"gear\":[]", StringComparison.Ordinal);
        json = System.Text.RegularExpressions.Regex.Replace(json, "\"gearbox\\.\\d\\.ratio\":\\{[^}]*\\},?", "");
        var faults = new Faults();
        var file = BuildFile.Read(System.Text.Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join("; ", faults.List));
        var build = file.Sheet!.Build;
        var sheet = new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, file.Sheet.Shop, (Scenario?)null);
        Assert.Equal("there is no gear in this what-if", BenchIndex.Of(sheet, MeasureSystem.UsCustomary).Unused.Single(u => u.Calculation.Id == "driveline.engine-speed").Why);
    }

    [Fact]
    public void The_bench_of_a_build_finds_leads_and_says_what_is_not_used()
    {
        Nav.NavigateTo("builds/bracken/bench?in=working");
        var page = Render<BuildBenchPage>(p => p.Add(b => b.Id, "bracken").AddCascadingValue(Ana));
        var all = page.FindAll("[data-calculation]").Count;
        page.Find("#bench-q").Input("crawl");
        Assert.InRange(page.FindAll("[data-calculation]").Count, 1, all - 1);
        Assert.Equal("builds/bracken/bench/driveline.crawl-ratio?in=working", page.Find("[data-calculation='driveline.crawl-ratio'] a").GetAttribute("href"));
        page.Find("#bench-q").Input("no such zyx thing");
        Assert.Contains("No calculation of this build", page.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bench_of_the_shop_lists_all_by_area_and_finds_by_what_goes_in_and_comes_out()
    {
        var page = Render<BenchPage>(p => p.AddCascadingValue(Ana));
        Assert.Equal(CalculationList.All.Select(c => c.Id).Order(StringComparer.Ordinal), page.FindAll("[data-calculation]").Select(c => c.GetAttribute("data-calculation")).Order(StringComparer.Ordinal));
        Assert.Equal(["Brakes", "Driveline", "Lift", "Mass", "Recovery", "Springs", "Stability", "Steering", "Tires"], page.FindAll(".area > h2").Select(h => h.TextContent));
        Assert.All(CalculationList.All, c => Assert.Contains(c.About.Purpose, page.Find($"[data-calculation='{c.Id}']").TextContent, StringComparison.Ordinal));
        page.Find("#bench-q").Input("rpm road");
        Assert.Contains("driveline.engine-speed", page.FindAll("[data-calculation]").Select(c => c.GetAttribute("data-calculation")));
        Assert.DoesNotContain("tires.load", page.FindAll("[data-calculation]").Select(c => c.GetAttribute("data-calculation")));
    }

    [Theory]
    [InlineData("driveline.cruise/redline", "builds/bracken/bench/driveline.cruise?in=working")]
    [InlineData("mass.axle-load[axle=rear,condition=empty]/rating", "builds/bracken/bench/mass.axle-load%5Baxle%3Drear%2Ccondition%3Dempty%5D?in=working")]
    [InlineData("model/mass", null)]
    public void A_finding_leads_to_the_card_it_was_worked_on(string finding, string? address) => Assert.Equal(address, BenchAddress.OfFinding("bracken", "working", finding));

    [Theory]
    [InlineData(0.14, "14 % left to the limit")]
    [InlineData(0.032, "3.2 % left to the limit")]
    [InlineData(-0.2, "20 % beyond the limit")]
    [InlineData(0, "right at the limit")]
    public void A_margin_is_told_as_what_is_left(double margin, string told) => Assert.Equal(told, Web.Words.Margin(margin));
}
