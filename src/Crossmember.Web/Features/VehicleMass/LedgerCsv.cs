using System.Globalization;
using Crossmember.Documents.Tables;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>The ledger of masses as a table for other programs: every figure of it, none rounded away.</summary>
public static class LedgerCsv
{
    public static byte[] Write(MassView view, MeasureSystem measure)
    {
        Unit mass = Display.Customary(Dimension.Mass, measure), length = Display.Customary(Dimension.Length, measure);
        string Kg(double? kg) => kg is { } k && double.IsFinite(k) ? Number(mass.FromSi(k)) : "";
        string M(double? m) => m is { } l && double.IsFinite(l) ? Number(length.FromSi(l)) : "";
        var csv = new CsvWriter().Row("what", "kind", $"mass {mass.Code}", $"plus or minus {mass.Code}", $"behind front axle {length.Code}", $"right of center {length.Code}", $"over frame datum {length.Code}",
            $"on front axle {mass.Code}", $"on rear axle {mass.Code}", "share of moment %", "where from");
        foreach (var row in LedgerRow.Of(view))
            csv.Row(row.Title, row.Kind, Kg(row.Entry.Kilograms), Kg(row.Entry.PlusMinus), M(row.Entry.At?.X), M(row.Entry.At?.Y), M(row.Entry.At?.Z), Kg(row.Front), Kg(row.Rear), row.Share is { } s ? Number(100 * s) : "", Words.Of(row.Entry.Basis));
        var (all, wheelbase) = (view.Ledger, view.Wheelbase ?? double.NaN);
        var rear = all.MomentX / wheelbase;
        return csv.Row($"{view.Condition}, together", "", Kg(all.Kilograms), "", M(view.Center?.X), M(view.Center?.Y), M(view.Center?.Z), Kg(all.Kilograms - rear), Kg(rear), double.IsFinite(rear) ? "100" : "", "").ToFile();
    }

    private static string Number(double number) => Math.Round(number, 4).ToString("0.####", CultureInfo.InvariantCulture);
}
