using System.Text;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Paper;
using Microsoft.AspNetCore.Mvc;

namespace Crossmember.Web.Api;

/// <summary>Reports as files: the sheet of a build, or a calculation with its working; described in <c>docs/guide/printing.md</c>.</summary>
public static class ReportsApi
{
    private const long LargestInput = 1 << 20;

    private static readonly string[] s_files = [.. from kind in BuildReport.All.Select(r => r.Kind).Append("calculation") from ending in (string[])[".pdf", ".html"] select kind + ending];

    /// <param name="instance">For a calculation: an instance id, or a plain id for all its instances.</param>
    public static IResult OfBuild(string id, string file, [FromQuery(Name = "in")] string? scenario, string? instance, string? measure, string? paper, HttpContext context, ShopDesk desk, TimeProvider clock)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        if (!s_files.Contains(file)) return NoSuchFile(file, s_files);
        var faults = new Faults();
        var wish = PaperWish.Of(measure, paper, faults);
        var comparing = desk.Shop.Comparing(open);
        var sheet = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        if (sheet is null || wish is null) return Answers.Faults(faults.List);
        var imprint = new Imprint(clock.GetUtcNow(), wish.Measure, desk.Shop.Shelf.Recorded(id, sheet.Build.Position));
        if (BuildReport.Find(Path.GetFileNameWithoutExtension(file)) is { } whole) return Sent(whole.Of(sheet, imprint), wish, $"{id}-{file}", context);
        if (string.IsNullOrEmpty(instance)) return Answers.Faults([new("instance", "no calculation is named", "instance=ID, an instance or a plain id")]);
        return Cases.Of(sheet, instance, wish.Measure, faults) is { } cases ? Sent(CalculationReport.Of(cases, sheet, imprint), wish, $"{id}-{instance}{Path.GetExtension(file)}", context)
            : Answers.Faults([.. faults.List.Select(f => f with { Path = "instance" })], status: StatusCodes.Status404NotFound);
    }

    /// <summary>A calculation that stands alone, its input (as for <c>calc run</c>) in the address.</summary>
    public static IResult OfInput(string file, string? calculation, string? input, string? measure, string? paper, HttpContext context, TimeProvider clock) =>
        Alone(file, calculation, Encoding.UTF8.GetBytes(input ?? "{}"), measure, paper, context, clock);

    /// <summary>The same with the input as the body.</summary>
    public static async Task<IResult> OfBody(string file, string? calculation, string? measure, string? paper, HttpRequest request, TimeProvider clock)
    {
        if (!RequestBody.IsJson(request)) return RequestBody.WrongType("send the input as application/json");
        var faults = new Faults();
        return await RequestBody.Read(request, LargestInput, faults) is { } body ? Alone(file, calculation, body, measure, paper, request.HttpContext, clock) : Answers.Faults(faults.List);
    }

    private static IResult Alone(string file, string? calculation, byte[] input, string? measure, string? paper, HttpContext context, TimeProvider clock)
    {
        if (!s_files.Contains(file) || !file.StartsWith("calculation", StringComparison.Ordinal)) return NoSuchFile(file, [.. s_files.Where(f => f.StartsWith("calculation", StringComparison.Ordinal))]);
        if (calculation is null) return Answers.Faults([new("calculation", "no calculation is named", "calculation=ID")]);
        if (CalculationList.Find(calculation) is not { } known)
            return Answers.Faults([new("calculation", $"there is no calculation '{calculation}'", $"nearest: {Nearest.To(calculation, CalculationList.All.Select(c => c.Id))}")], status: StatusCodes.Status404NotFound);
        var faults = new Faults();
        if (PaperWish.Of(measure, paper, faults) is not { } wish || Case.Given(known, input, wish.Measure, faults) is not { } one) return Answers.Faults(faults.List);
        return Sent(CalculationReport.Of(one, new Imprint(clock.GetUtcNow(), wish.Measure)), wish, calculation + Path.GetExtension(file), context);
    }

    private static IResult Sent(Document document, PaperWish wish, string name, HttpContext context)
    {
        var form = PaperForm.Of(name)!;
        var printed = form.Write(document, wish.Paper, null, context.RequestAborted);
        return SafeFiles.Send(printed.Content, form.MediaType, name, context, shown: form == PaperForm.Html);
    }

    private static IResult NoSuchFile(string file, IReadOnlyCollection<string> files) =>
        Answers.Faults([new(file, $"'{file}' is no report", $"one of: {string.Join(", ", files)}")], status: StatusCodes.Status404NotFound);
}
