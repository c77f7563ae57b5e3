using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Customers;

namespace Crossmember.Web.Api;

/// <summary>What is kept about a customer, to be handed out to them.</summary>
public static class CustomersApi
{
    public static IResult Json(string id, HttpContext context, ShopDesk desk, TimeProvider clock) =>
        Sent(id, context, desk, kept => Results.File(HandOut.Json(kept, clock.GetUtcNow()), "application/json", $"{id}-customer.json"));

    public static IResult Html(string id, HttpContext context, ShopDesk desk, TimeProvider clock) =>
        Sent(id, context, desk, kept => Results.File(HandOut.Html(kept, clock.GetUtcNow()), "text/html; charset=utf-8", $"{id}-customer.html"));

    private static IResult Sent(string id, HttpContext context, ShopDesk desk, Func<KeptAbout, IResult> write)
    {
        if (BuildView.Of(desk, id) is not { } view) return Answers.NoBuild(id);
        var faults = new Faults();
        CustomerCard? card = view.Build.Customer is { } record ? desk.Shop.Store.Personal.Read(record, faults) : null;
        // An empty answer would say that nothing is kept, which nobody knows here.
        if (faults.Any) return Answers.Faults(faults.List, status: StatusCodes.Status500InternalServerError);
        // No cache on the way may keep what is to be erased.
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'; style-src 'unsafe-inline'";
        return write(KeptAbout.Of(view, card));
    }
}
