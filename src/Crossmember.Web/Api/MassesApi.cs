using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Crossmember.Web.Features.VehicleDrawing;
using Crossmember.Web.Features.VehicleMass;
using Microsoft.AspNetCore.Mvc;

namespace Crossmember.Web.Api;

/// <summary>The masses of a vehicle in one loading condition: as a drawing, and as a table of what makes them up.</summary>
public static class MassesApi
{
    private const double Width = 1000;

    public static IResult Drawing(string id, [FromQuery(Name = "in")] string? scenario, string? load, string? measure, HttpContext context, ShopDesk desk) =>
        Asked(id, scenario, load, measure, desk, (view, system) =>
        {
            var title = $"{view.Sheet.Build.Title}: {Words.Scenario(view.Sheet.Scenario, view.Sheet.Build)}, {view.Condition}";
            var said = DrawnVehicle.Resting(view.Size, system) + " The area of a mark is as its mass; its middle is its place.";
            var drawing = MassSvg.Write(title, said, new(view.Shape, Width), view.Drawn(system, null, false, null), view.DrawnLoads(system), view.Center);
            return SafeFiles.Send(drawing, "image/svg+xml", $"{id}-{view.Condition}-masses.svg", context);
        });

    public static IResult Ledger(string id, [FromQuery(Name = "in")] string? scenario, string? load, string? measure, HttpContext context, ShopDesk desk) =>
        Asked(id, scenario, load, measure, desk, (view, system) => SafeFiles.Send(LedgerCsv.Write(view, system), "text/csv; charset=utf-8", $"{id}-{view.Condition}-ledger.csv", context));

    private static IResult Asked(string id, string? scenario, string? load, string? measure, ShopDesk desk, Func<MassView, MeasureSystem, IResult> answer)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        var faults = new Faults();
        var (system, _) = CurveAnswer.Asked(measure, null, faults);
        var comparing = desk.Shop.Comparing(open);
        var sheet = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        if (sheet is null || faults.Any) return Answers.Faults(faults.List);
        var conditions = MassView.Heaviest(sheet);
        var condition = load ?? (conditions is [var heaviest, ..] ? heaviest : "");
        return conditions.Contains(condition) ? answer(new(sheet, condition), system)
            : Answers.NotThere("load", $"there is no loading condition '{condition}'", conditions.Count > 0 ? string.Join(", ", conditions) : "add one on the Vehicle page");
    }
}
