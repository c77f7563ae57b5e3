using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Web.Features.Writing;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Settings;

/// <summary>What lies on the shelf and what vendors have quoted.</summary>
public sealed partial class StockSection
{
    private IReadOnlyList<StockPart> _all = [];
    private IReadOnlyList<(string Subject, JsonNode Payload)> _gone = [];
    private StockDraft _draft = new();
    private string _typed = "";
    private bool _adding;
    private int _over;

    [Parameter, EditorRequired] public ShopPage Page { get; set; } = null!;

    [Parameter] public EventCallback OnActed { get; set; }

    private List<StockPart> Found => [.. _all.Where(p => _typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(w => Text(p).Contains(w, StringComparison.OrdinalIgnoreCase)))];

    protected override void OnParametersSet()
    {
        _all = [.. Page.Shop.Stock.Values.OrderBy(p => p.Title, StringComparer.OrdinalIgnoreCase).ThenBy(p => p.Id, StringComparer.Ordinal)];
        _over = _all.Count(Over);
        _gone = Page.View.Gone("stock/");
    }

    /// <summary>What a search looks through.</summary>
    private static string Text(StockPart part) => $"{part.Title} {part.Number} {part.Vendor} {part.Category}";

    /// <summary>On a narrow screen what was not said takes no line.</summary>
    private static string? Blank(string? text) => string.IsNullOrEmpty(text) ? "blank" : null;

    private bool Over(StockPart part) => PriceHeld.RanOut(part.Until, DateOnly.FromDateTime(Page.Clock.GetLocalNow().Date));

    private Task Begin()
    {
        (_adding, _draft) = (true, new());
        Page.PutDown();
        return OnActed.InvokeAsync();
    }

    private Task Take(StockPart part)
    {
        (_adding, _draft) = (false, StockDraft.Of(part));
        Page.Take("stock/" + part.Id);
        return OnActed.InvokeAsync();
    }

    private Task End()
    {
        _adding = false;
        Page.PutDown();
        return OnActed.InvokeAsync();
    }

    private Task List(JsonObject payload)
    {
        // A part that was taken off keeps its id for good: a new one gets another.
        var taken = Page.Shop.Stock.Keys.Concat(_gone.Select(g => g.Subject["stock/".Length..])).ToList();
        var id = NewId.Of($"{payload["title"]}", taken) ?? NewId.Free("part", taken);
        if (Page.Say(EntryKind.StockListed, "stock/" + id, payload)) _adding = false;
        return OnActed.InvokeAsync();
    }

    private Task Keep(string subject, JsonObject payload)
    {
        Page.Say(EntryKind.StockListed, subject, payload);
        return OnActed.InvokeAsync();
    }

    private Task TakeOff(string subject)
    {
        // Taking back the last wording alone would bring the one before it to light.
        Page.TakeBack(Page.View.Standing(subject));
        return OnActed.InvokeAsync();
    }
}
