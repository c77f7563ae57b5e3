using System.Net;
using Microsoft.Net.Http.Headers;

namespace Crossmember.Web.Api;

/// <summary>A page of another site, open in the same browser, must not read or write here: the desk asks for no password on the shop's own network.</summary>
public static class OtherSites
{
    private static readonly string[] s_homeEndings = [".local", ".lan", ".home.arpa", ".internal"];

    public static void UseRefusalOfOtherSites(this WebApplication app) => app.Use((context, next) =>
    {
        if (Refusal(context.Request, app.Configuration["names"]) is not { } why) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync(why);
    });

    /// <summary>Why a request is refused, or null.</summary>
    /// <param name="names">Further names the desk is known by on this network, separated by commas.</param>
    public static string? Refusal(HttpRequest request, string? names)
    {
        if (!IsHome(request.Host.Host, names)) return $"The desk is not known as {request.Host.Host}: start it with --names {request.Host.Host} if it is to be.";
        var reads = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        var opens = request.Headers.ContainsKey(HeaderNames.Upgrade);
        if (reads && !opens) return null;
        var origin = request.Headers.Origin.ToString();
        var own = origin.Length == 0 || origin == $"{request.Scheme}://{request.Host}";
        return own && request.Headers["Sec-Fetch-Site"].ToString() is not ("cross-site" or "same-site") ? null : "Only the desk's own pages may write here.";
    }

    /// <summary>A public name that somebody points at this machine is how a foreign page would come to count as our own.</summary>
    private static bool IsHome(string host, string? names) =>
        IPAddress.TryParse(host.Trim('[', ']'), out _) || !host.Contains('.', StringComparison.Ordinal)
        || Array.Exists(s_homeEndings, e => host.EndsWith(e, StringComparison.OrdinalIgnoreCase))
        || (names ?? "").Split(',', StringSplitOptions.TrimEntries).Contains(host, StringComparer.OrdinalIgnoreCase);
}
