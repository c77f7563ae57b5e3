using System.Globalization;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Tables;

namespace Crossmember.Web.Features.Settings;

/// <summary>The shelf and the price lists as one table.</summary>
public static class StockCsv
{
    public static byte[] Write(IEnumerable<StockPart> parts)
    {
        var csv = new CsvWriter().Row("id", "title", "number", "vendor", "each", "currency", "category", "lead", "on hand", "price held until");
        foreach (var p in parts)
            csv.Row(p.Id, p.Title, p.Number ?? "", p.Vendor ?? "", p.Each?.Amount.ToString(CultureInfo.InvariantCulture) ?? "", p.Each?.Currency ?? "", p.Category ?? "", p.Lead ?? "",
                p.OnHand?.ToString(CultureInfo.InvariantCulture) ?? "", p.Until ?? "");
        return csv.ToFile();
    }
}
