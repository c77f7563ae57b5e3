using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features;
using Crossmember.Web.Features.VehicleMass;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>
/// The Vehicle page over a store of its own: the flatbed weighed on four scales, with a winch that 64 lb make on a wheelbase of 100 in,
/// and somebody aboard, so that every number can be had by hand.
/// </summary>
public abstract class VehiclePages() : ShopPages(Json)
{
    public static string Json { get; } = Bracken.Json
        .Replace("\"condition\":[\"empty\"]", "\"condition\":[\"empty\",\"loaded\"]", StringComparison.Ordinal)
        .Replace("\"conditions\":{\"empty\":[]}", """
            "conditions":{"empty":[],"loaded":[{"id":"driver","mass":"200 lb","at":["50 in","-15 in","30 in"]},{"id":"tools","mass":"100 lb"}]}
            """.Trim(), StringComparison.Ordinal)
        .Replace("\"axles\":{\"front\":\"2000 lb\",\"rear\":\"1500 lb\"}", "\"wheels\":{\"front\":{\"left\":\"1000 lb\",\"right\":\"1000 lb\"},\"rear\":{\"left\":\"750 lb\",\"right\":\"750 lb\"}}", StringComparison.Ordinal)
        .Replace("\"axle.front.rating\":", "\"axle.*.track\":{\"value\":\"60 in\",\"basis\":\"measured\"},\"axle.front.rating\":", StringComparison.Ordinal)
        .Replace("{\"id\":\"heater\"", """
            {"id":"winch","parent":"vehicle","title":"Winch","weight":1,"options":[{"id":"as-found","class":"none"},
             {"id":"w8","title":"8,000 lb","class":"upgrade","originality":0,"masses":[{"id":"drum","mass":"64 lb","at":["-25 in","0 in","5 in"],"basis":"vendor"}]}]},
            {"id":"heater"
            """.Trim(), StringComparison.Ordinal)
        .Replace("\"id\":\"working\",\"base\":null,\"choices\":{}", "\"id\":\"working\",\"base\":null,\"choices\":{\"winch\":\"w8\"}", StringComparison.Ordinal);

    protected const string Drum = "slots/winch/options/w8/drum", Driver = "conditions/loaded/driver", Tools = "conditions/loaded/tools";

    protected BuildView View => BuildView.Of(Desk, "bracken")!;

    protected Sheet Sheet => View.Sheet("working");

    protected IRenderedComponent<VehiclePage> Page(string query = "?in=working&load=empty&against=nothing", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "bracken")
    {
        Nav.NavigateTo($"builds/{id}/vehicle{query}");
        return Render<VehiclePage>(p => p.Add(d => d.Id, id).AddCascadingValue(Ana with { Measure = measure }));
    }

    /// <summary>What the script of the drawing would tell.</summary>
    protected static void Tell(IRenderedComponent<VehiclePage> page, string word) => page.Find("[data-told]").Input(word);

    /// <summary>Picks it in the list.</summary>
    protected static void Pick(IRenderedComponent<VehiclePage> page, string title) => page.FindAll(".mass-list button").Single(b => Text(b.QuerySelector(".what")!) == title).Click();

    protected static string Text(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    protected static void Press(IRenderedComponent<VehiclePage> page, string text) => page.FindAll("button").First(b => b.TextContent.Trim() == text).Click();

    protected static IReadOnlyList<string> Place(IRenderedComponent<VehiclePage> page) => [.. "xyz".Select(a => page.Find($"#place-{a}").GetAttribute("value")!)];

    protected static IReadOnlyList<string> Row(IRenderedComponent<VehiclePage> page, string name) =>
        [.. page.FindAll(".loads-table tbody tr").Single(r => Text(r.Children[0]) == name).Children.Skip(1).Select(Plain)];

    /// <summary>Without what it may be off.</summary>
    protected static string Plain(IElement e)
    {
        var copy = (IElement)e.Clone();
        foreach (var spread in copy.QuerySelectorAll(".sure").ToList()) spread.Remove();
        return Text(copy);
    }

    /// <summary>The item's place as the journal keeps it.</summary>
    protected string Kept(string slot, string option, int item = 0) => Crossmember.Builds.Drafting.StatedBody.Of(View.Entries, slot, option)!["masses"]![item]!["at"]!.ToJsonString();

    protected JsonObject Aboard(string condition) => Crossmember.Builds.Drafting.StatedCondition.Of(View.Entries, condition)!;

    protected int Said => View.Entries.Count;
}
