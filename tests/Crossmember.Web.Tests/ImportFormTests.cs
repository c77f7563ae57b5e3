using System.Text;
using Bunit;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features.Builds;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests;

/// <summary>Taking a file in: all of it, or nothing, and it can be turned back from.</summary>
public sealed class ImportFormTests() : ShopPages(null)
{
    [Fact]
    public void A_file_is_taken_in_and_theShop_hears_of_it()
    {
        var told = 0;
        var form = Render<ImportForm>(p => p.Add(f => f.OnImported, EventCallback.Factory.Create(this, () => told++)));
        form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(Bracken.Json, "bracken.json"));
        form.WaitForAssertion(() => Assert.Contains("bracken.json is in", form.Find(".done").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.Equal((1, 1), (told, Desk.Builds().Count));
        Assert.Empty(form.FindAll(".reading"));
    }

    [Fact]
    public void A_spoilt_file_is_refused_with_its_faults_and_another_can_be_tried()
    {
        var form = Render<ImportForm>();
        form.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("{\"format\":\"crossmember.build/1\"}", "spoilt.json"));
        form.WaitForAssertion(() => Assert.NotEmpty(form.FindAll(".faults tbody tr")), TimeSpan.FromSeconds(30));
        Assert.False(form.Find("#build-file").HasAttribute("disabled"));
        Assert.Empty(Desk.Builds());
    }

    /// <summary>The last moment to turn back comes after the reading: whoever turns back then leaves the shop as it was.</summary>
    [Fact]
    public void Turning_back_at_the_last_moment_leaves_nothing_behind()
    {
        Assert.Throws<OperationCanceledException>(() => Desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults(), () => throw new OperationCanceledException()));
        Assert.Empty(Desk.Builds());
        Assert.NotNull(Desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults()));
    }
}
