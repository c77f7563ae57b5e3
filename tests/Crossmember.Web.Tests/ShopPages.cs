using System.Text;
using Bunit;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests;

/// <summary>Pages over a store of their own, read by Ana, without a browser.</summary>
public abstract class ShopPages : BunitContext
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-pages-");

    /// <param name="file">A build file that is in the shop from the beginning.</param>
    protected ShopPages(string? file)
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        Desk = new(Shop);
        if (file is not null) Import(file);
        Services.AddSingleton(Desk).AddSingleton(TimeProvider.System).AddSingleton<GlanceBoard>();
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected static Viewer Ana { get; } = new("Ana", "here", MeasureSystem.UsCustomary, true, true);

    protected OpenShop Shop { get; }

    protected ShopDesk Desk { get; }

    protected string Folder => _data.FullName;

    protected NavigationManager Nav => Services.GetRequiredService<NavigationManager>();

    protected void Import(string json) => Assert.NotNull(Desk.Import(Encoding.UTF8.GetBytes(json), new Faults()));

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        Shop.Dispose();
        _data.Delete(recursive: true);
    }
}
