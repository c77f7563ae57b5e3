using Crossmember.Web;
using Crossmember.Web.Api;
using Crossmember.Web.Features.Layout;

// Everything the desk serves lies beside the program, wherever it is started from.
var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
builder.WebHost.UseStaticWebAssets();
builder.AddAddress();
builder.Services.AddStorage().AddFeatures();

var app = builder.Build();
app.Services.OpenStorage();
app.UseRefusalOfOtherSites();
app.UseResponseCompression();
app.UseAntiforgery();
app.MapStaticAssets();
app.MapApi();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
app.SayAddressWhenStarted();
app.Run();

/// <summary>Named so that tests can start it.</summary>
public partial class Program;
