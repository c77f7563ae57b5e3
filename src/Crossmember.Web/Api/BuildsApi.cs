using System.Text.Json.Nodes;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;

namespace Crossmember.Web.Api;

/// <summary>Builds for other programs: the list, checks, ripples, export.</summary>
public static class BuildsApi
{
    public static IResult List(ShopDesk desk) => Answers.Json(new JsonObject
    {
        ["format"] = "crossmember.builds/1",
        ["builds"] = new JsonArray([.. desk.Builds().Select(b => new JsonObject { ["id"] = b.Id, ["title"] = b.Title, ["entries"] = b.Entries, ["lastRecorded"] = b.LastRecorded })]),
    });

    public static IResult Check(string id, string? scenario, ShopDesk desk)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        var faults = new Faults();
        var comparing = desk.Shop.Comparing(open);
        var sheet = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        return sheet is null ? Answers.Faults(faults.List) : Answers.Json(SheetJson.Of(sheet, (open.Build.Position, sheet.Shop.Position)));
    }

    public static IResult Ripple(string id, string? from, string? to, ShopDesk desk)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        if (from is null || to is null) return Answers.Faults([new("", "two sides are needed", "from=...&to=..., such as from=as-found&to=working")]);
        var faults = new Faults();
        return desk.Shop.Comparing(open).Ripple(from, to, faults) is { } ripple ? Answers.Json(RippleJson.Of(ripple)) : Answers.Faults(faults.List);
    }

    public static IResult Export(string id, ShopDesk desk)
    {
        var faults = new Faults();
        if (desk.Open(id) is null) return Answers.NoBuild(id);
        if (desk.Shop.Exporting.Export(id, faults) is not { } file) return Answers.Faults(faults.List);
        var zip = file.AsSpan().StartsWith("PK"u8);
        return Results.File(file, zip ? "application/zip" : "application/json", $"{id}.{(zip ? "zip" : "json")}");
    }

    public static async Task<IResult> Import(HttpRequest request, ShopDesk desk)
    {
        if (RequestBody.MediaType(request) is not ("application/json" or "application/zip")) return RequestBody.WrongType("send application/json or application/zip");
        var faults = new Faults();
        var imported = await RequestBody.Read(request, BuildUpload.LargestBytes, faults) is { } body ? desk.Import(body, faults) : null;
        return imported is null ? Answers.Faults(faults.List) : Answers.Json(new JsonObject
        {
            ["format"] = "crossmember.imported/1", ["id"] = imported.Id, ["appended"] = imported.Appended, ["remarks"] = new JsonArray([.. imported.Remarks.Select(r => (JsonNode)r)]),
        });
    }
}
