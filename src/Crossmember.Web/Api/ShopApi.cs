using Crossmember.Web.Features;
using Crossmember.Web.Features.Settings;

namespace Crossmember.Web.Api;

/// <summary>What the shop itself keeps, as files.</summary>
public static class ShopApi
{
    public static IResult Stock(HttpContext context, ShopDesk desk)
    {
        context.Response.Headers.XContentTypeOptions = "nosniff";
        return Results.File(StockCsv.Write(desk.Shop.Shelf.Shop().Stock.Values), "text/csv; charset=utf-8", "stock.csv");
    }
}
