using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;

namespace Crossmember.Web;

/// <summary>What the desk is made of.</summary>
public static class Composition
{
    private const string UsualAddress = "http://127.0.0.1:5230";

    /// <summary>Loopback only, unless somebody says otherwise.</summary>
    public static void AddAddress(this WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey])) builder.WebHost.UseUrls(UsualAddress);
    }

    public static IServiceCollection AddStorage(this IServiceCollection services) => services
        .AddSingleton(TimeProvider.System)
        .AddSingleton(provider =>
        {
            var configuration = provider.GetRequiredService<IConfiguration>();
            var folder = DataFolder.Of(configuration["data"], Environment.GetEnvironmentVariable);
            var clock = provider.GetRequiredService<TimeProvider>();
            return configuration["database"] is { Length: > 0 } connection ? OpenShop.Open(connection, folder, clock) : OpenShop.Open(folder, clock);
        });

    public static IServiceCollection AddFeatures(this IServiceCollection services)
    {
        services.AddSingleton<ShopDesk>().AddSingleton<GlanceBoard>();
        services.AddSingleton<Features.Paper.MadePapers>();
        // The page is the largest part of a first load; what the desk serves as files is compressed already.
        services.AddResponseCompression();
        services.AddAntiforgery();
        services.AddRazorComponents().AddInteractiveServerComponents();
        return services;
    }

    /// <summary>Opened before the first request, so that a folder that cannot be used is told at once.</summary>
    public static void OpenStorage(this IServiceProvider services) => services.GetRequiredService<OpenShop>();

    public static void SayAddressWhenStarted(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() => Console.WriteLine($"Crossmember is at {app.Urls.FirstOrDefault()}"));
}
