using Bunit;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Decisions;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Tests.Decisions;

/// <summary>What is wrong stands beside the field, and what was typed stays in it.</summary>
public sealed class FormTests : BunitContext
{
    public FormTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new RendererInfo("Server", true));
    }

    private IRenderedComponent<TryValue> Field(List<(string, string?)> tried, Fault? refused = null) => Render<TryValue>(p => p
        .Add(t => t.Sheet, Bracken.With()).Add(t => t.Item, "final-drives").Add(t => t.OnTry, tried.Add).Add(t => t.Refused, refused)
        .Add(t => t.Tried, [("duty.cruise-speed", "70 mph")]));

    [Theory]
    [InlineData("duty.cruise-speed", "65", "unit")]
    [InlineData("duty.cruise-speed", "quick", "not a number")]
    [InlineData("axle.front.ratio", "4,10", "write 4.10")]
    [InlineData("vehicle.wheelbase", "", "nothing is written")]
    public void A_value_that_is_not_understood_is_answered_beside_the_field(string key, string typed, string wrong)
    {
        List<(string, string?)> tried = [];
        var field = Field(tried);
        field.Find("#try-key").Change(key);
        field.Find("#try-value").Input(typed);
        field.Find("form").Submit();
        var input = field.Find("#try-value");
        Assert.Contains(wrong, field.Find("#" + input.GetAttribute("aria-describedby")).TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        Assert.Equal(typed, input.GetAttribute("value") ?? "");
        Assert.Empty(tried);
    }

    [Fact]
    public void A_value_in_shop_notation_is_handed_on_as_typed()
    {
        List<(string, string?)> tried = [];
        var field = Field(tried);
        field.Find("#try-key").Change("vehicle.wheelbase");
        field.Find("#try-value").Input("8' 3-1/2\"");
        field.Find("form").Submit();
        Assert.Equal([("vehicle.wheelbase", "8' 3-1/2\"")], tried);
        Assert.Equal("", field.Find("#try-value").GetAttribute("value") ?? "");
    }

    [Fact]
    public void What_the_rules_refuse_stays_in_the_field_with_the_reason()
    {
        var field = Field([], new("", "the build is open for reading only", "use the program that wrote it"));
        field.Find("#try-value").Input("3.9");
        field.Find("form").Submit();
        Assert.Contains("reading only", field.Find("#try-error").TextContent, StringComparison.Ordinal);
        Assert.Equal("3.9", field.Find("#try-value").GetAttribute("value"));
    }

    [Fact]
    public void The_values_of_the_item_looked_at_come_first() => Assert.Equal("axle.front.ratio", Field([]).Find("#try-key").GetAttribute("value"));

    [Fact]
    public void A_tried_value_can_be_dropped()
    {
        List<(string, string?)> tried = [];
        Field(tried).Find(".tried button").Click();
        Assert.Equal([("duty.cruise-speed", null)], tried);
    }

    [Fact]
    public void An_obstacle_stands_where_the_yes_would_be()
    {
        var form = Render<Approve>(p => p.Add(a => a.Build, "b").Add(a => a.Name, "working").Add(a => a.Obstacle, "a tried value is still in it."));
        Assert.Contains("a tried value is still in it.", form.Markup, StringComparison.Ordinal);
        Assert.Empty(form.FindAll("button"));
    }

    [Fact]
    public void A_yes_needs_somebody_who_said_it()
    {
        List<(string By, string How)> yes = [];
        var form = Render<Approve>(p => p.Add(a => a.Build, "b").Add(a => a.Name, "working").Add(a => a.Fails, 2).Add(a => a.OnApprove, yes.Add));
        Assert.Contains("2 checks say no", form.Markup, StringComparison.Ordinal);
        form.Find("form").Submit();
        Assert.Contains("who said yes", form.Find("#approve-error").TextContent, StringComparison.Ordinal);
        form.Find("#approve-by").Input(" the owner ");
        form.Find("#approve-how").Change("by phone");
        form.Find("form").Submit();
        Assert.Equal([("the owner", "by phone")], yes);
    }

    [Fact]
    public void A_new_what_if_starts_from_the_one_looked_at()
    {
        List<(string, string, string?)> made = [];
        var form = Render<NewWhatIf>(p => p.Add(n => n.Build, Bracken.Build).Add(n => n.Base, "working").Add(n => n.OnMake, made.Add));
        form.Find("input").Input("...");
        form.Find("form").Submit();
        Assert.Contains("letters or digits", form.Find(".error").TextContent, StringComparison.Ordinal);
        form.Find("input").Input("Taller tires!");
        form.Find("form").Submit();
        Assert.Equal([("taller-tires", "Taller tires!", "working")], made);
    }

    [Theory]
    [InlineData("Approved", "approved-2")]
    [InlineData("as found", "as-found-2")]
    [InlineData("Working", "working-2")]
    [InlineData("  Größe 33  ", "gr-e-33")]
    [InlineData("?!", null)]
    public void Ids_of_what_ifs_are_never_reserved_nor_taken(string title, string? id) => Assert.Equal(id, NewId.Of(title, ["working"]));
}
