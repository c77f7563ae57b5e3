using System.Text;
using Bunit;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests;

/// <summary>Taking a file in: all of it, or nothing, and it can be turned back from.</summary>
public sealed class ImportFormTests : BunitContext
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-import-");
    private readonly OpenShop _shop;
    private readonly ShopDesk _desk;

    public ImportFormTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        _shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        _desk = new(_shop);
        Services.AddSingleton(_desk);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _shop.Dispose();
        _data.Delete(recursive: true);
    }

    [Fact]
    public void A_file_is_taken_in_and_the_shop_hears_of_it()
    {
        var told = 0;
        var form = Render<ImportForm>(p => p.Add(f => f.OnImported, EventCallback.Factory.Create(this, () => told++)));
        form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(Bracken.Json, "bracken.json"));
        form.WaitForAssertion(() => Assert.Contains("bracken.json is in", form.Find(".done").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.Equal((1, 1), (told, _desk.Builds().Count));
        Assert.Empty(form.FindAll(".reading"));
    }

    [Fact]
    public void A_spoilt_file_is_refused_with_its_faults_and_another_can_be_tried()
    {
        var form = Render<ImportForm>();
        form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("{\"format\":\"crossmember.build/1\"}", "spoilt.json"));
        form.WaitForAssertion(() => Assert.NotEmpty(form.FindAll(".faults tbody tr")), TimeSpan.FromSeconds(30));
        Assert.False(form.Find("#build-file").HasAttribute("disabled"));
        Assert.Empty(_desk.Builds());
    }

    /// <summary>The last moment to turn back comes after the reading: whoever turns back then leaves the shop as it was.</summary>
    [Fact]
    public void Turning_back_at_the_last_moment_leaves_nothing_behind()
    {
        Assert.Throws<OperationCanceledException>(() => _desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults(), () => throw new OperationCanceledException()));
        Assert.Empty(_desk.Builds());
        Assert.NotNull(_desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults()));
    }
}
