using System.Text;
using Bunit;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Starting;

/// <summary>Pages over an empty shop of their own, without a browser.</summary>
public abstract class StartingShop : BunitContext
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-starting-");
    private readonly OpenShop _shop;

    protected StartingShop()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        _shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        Desk = new(_shop);
        Services.AddSingleton(Desk).AddSingleton(TimeProvider.System).AddSingleton<GlanceBoard>();
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected ShopDesk Desk { get; }

    protected static Viewer Ana { get; } = new("Ana", "here", MeasureSystem.UsCustomary, true, true);

    protected string Address => Services.GetRequiredService<NavigationManager>().Uri;

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _shop.Dispose();
        _data.Delete(recursive: true);
    }

    protected void Import(string json) => Assert.NotNull(Desk.Import(Encoding.UTF8.GetBytes(json), new Faults()));

    protected IRenderedComponent<T> Page<T>()
        where T : IComponent => Render<T>(p => p.AddCascadingValue(Ana));

    protected IRenderedComponent<DecisionsPage> Decisions(string build, string? item = null)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo($"builds/{build}/decisions{(item is null ? "" : $"?item={item}")}");
        return Render<DecisionsPage>(p => p.Add(d => d.Id, build).AddCascadingValue(Ana));
    }
}
