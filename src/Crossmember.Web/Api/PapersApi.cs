using Crossmember.Web.Features.Paper;

namespace Crossmember.Web.Api;

/// <summary>Documents that were made on the page Paper, each under the hash of its content.</summary>
public static class PapersApi
{
    public static IResult Get(string file, HttpContext context, MadePapers made) => made.Find(Path.GetFileNameWithoutExtension(file)) is { } paper
        ? SafeFiles.Send(paper.Content, paper.Form.MediaType, paper.Name, context, shown: paper.Form == Documents.Paper.PaperForm.Html)
        : Answers.Faults([new(file, "this document is no longer kept", "make it again")], status: StatusCodes.Status404NotFound);
}
