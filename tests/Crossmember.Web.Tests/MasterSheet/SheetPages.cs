using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.MasterSheet;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>The Sheet page over a store of its own, without a browser.</summary>
public abstract class SheetPages() : ShopPages(Bracken.Json)
{
    protected BuildView View => BuildView.Of(Desk, "bracken")!;

    protected Sheet Sheet => View.Sheet("working");

    protected IRenderedComponent<SheetPage> Page(string? item = null, string? key = null)
    {
        Nav.NavigateTo($"builds/bracken/sheet?in=working{(item is null ? "" : $"&item={item}")}{(key is null ? "" : $"&key={Uri.EscapeDataString(key)}")}");
        return Render<SheetPage>(p => p.Add(d => d.Id, "bracken").AddCascadingValue(Ana));
    }

    /// <summary>Fills the form and sends it.</summary>
    protected static void Note(IRenderedComponent<SheetPage> page, string value, string? spread = null)
    {
        page.Find("#note-value").Input(value);
        if (spread is not null) page.Find("#note-spread").Input(spread);
        page.Find("#note form").Submit();
    }

    /// <summary>Somebody else notes a value on the option in effect.</summary>
    protected void Ben(string item, string key, string value)
    {
        var (view, option) = (View, Sheet.Choices[item].Id);
        var fact = Desk.Stating.Note("bracken", item, option, key, value, Crossmember.Builds.Slots.Basis.Measured, null, view.Seen($"slots/{item}/options/{option}/values/{key}"), new("Ben", "there"));
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([fact], Arrival.Online)[0]);
    }

    protected IReadOnlyList<ValueWord> Said(string key) => ValueHistory.Of(View.Entries, key, Sheet.Plan.Catalogue.Table);

    protected static string Text(AngleSharp.Dom.IElement element) => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
