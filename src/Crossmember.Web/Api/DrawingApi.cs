using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Crossmember.Web.Features.VehicleDrawing;
using Microsoft.AspNetCore.Mvc;

namespace Crossmember.Web.Api;

/// <summary>The vehicle with its items marked, as a drawing.</summary>
public static class DrawingApi
{
    private const double Width = 1000;

    public static IResult Get(string id, [FromQuery(Name = "in")] string? scenario, HttpContext context, ShopDesk desk)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        var faults = new Faults();
        var comparing = desk.Shop.Comparing(open);
        var sheet = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        if (sheet is null) return Answers.Faults(faults.List);
        var vehicle = DrawnVehicle.Of(sheet);
        var drawing = VehicleSvg.Write($"{open.Build.Title}: {Words.Scenario(sheet.Scenario, open.Build)}", vehicle.Caption(MeasureSystem.UsCustomary), [.. vehicle.Items.Select(i => i.Drawn)], vehicle.Shape, Width);
        // Names that people typed stand in the file: it is shown or saved, never run.
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'; style-src 'unsafe-inline'";
        return Results.File(drawing, "image/svg+xml", $"{id}-drawing.svg");
    }
}
