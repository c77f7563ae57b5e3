using Crossmember.Documents.Paper;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Paper;

/// <summary>How somebody wants a document: in which measures, on which paper.</summary>
public sealed record PaperWish(MeasureSystem Measure, PageSize Paper)
{
    /// <summary>As written in an address; null with a fault for each word that is none.</summary>
    public static PaperWish? Of(string? measure, string? paper, Faults faults)
    {
        if (measure is not (null or "us" or "metric")) faults.Add("measure", $"'{measure}' is no measure", "us or metric");
        if (paper is not null && PageSize.Find(paper) is null) faults.Add("paper", $"'{paper}' is no paper", "a4 or letter");
        if (faults.Any) return null;
        var system = measure == "metric" ? MeasureSystem.Metric : MeasureSystem.UsCustomary;
        return new(system, paper is null ? PageSize.For(system) : PageSize.Find(paper)!);
    }
}
