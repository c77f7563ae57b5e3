using System.Text;
using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests;

/// <summary>Pages over a store of their own with the flatbed in it, read by Ana; Ben writes from elsewhere.</summary>
public abstract class WrittenPages : BunitContext
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-written-");

    protected WrittenPages()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        Desk = new(Shop);
        Assert.NotNull(Desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults()));
        Services.AddSingleton(Desk).AddSingleton(TimeProvider.System);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected static Viewer Ana { get; } = new("Ana", "here", MeasureSystem.UsCustomary, true, true);

    protected OpenShop Shop { get; }

    protected ShopDesk Desk { get; }

    protected Builds.Slots.ShopFacts Facts => Shop.Shelf.Shop();

    protected string Folder => _data.FullName;

    /// <summary>Ben says something elsewhere, having just looked.</summary>
    protected void Ben(string stream, EntryKind kind, string subject, JsonNode payload) =>
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Stating.Say(stream, kind, subject, payload, Desk.Deciding.LastOn(stream, subject), new Speaker("Ben", "there"))], Arrival.Online)[0]);

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        Shop.Dispose();
        _data.Delete(recursive: true);
    }
}
