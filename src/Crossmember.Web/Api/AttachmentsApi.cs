using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Microsoft.AspNetCore.Http.Metadata;

namespace Crossmember.Web.Api;

/// <summary>Files attached to entries, each under the hash of its content.</summary>
public static class AttachmentsApi
{
    public static async Task<IResult> Post(string? name, HttpRequest request, ShopDesk desk)
    {
        if (RequestBody.MayComeFromAForm(request)) return RequestBody.WrongType("send the file as the body, with its own content type such as image/jpeg");
        var faults = new Faults();
        // The store reads synchronously, so the body is taken in first; one beyond the limit never fills the memory.
        if (await RequestBody.Read(request, Storage.Attachments.LargestBytes, faults) is not { } body) return Answers.Faults(faults.List);
        using var content = new MemoryStream(body);
        if (desk.Shop.Store.Attachments.Add(content, RequestBody.MediaType(request), name ?? "attachment", faults) is not { } kept) return Answers.Faults(faults.List);
        return Answers.Json(new JsonObject { ["format"] = "crossmember.attachment/1", ["hash"] = kept.Hash, ["length"] = kept.Length });
    }

    public static IResult Get(string hash, HttpContext context, ShopDesk desk)
    {
        var faults = new Faults();
        var known = hash.Length == 64 && hash.All(char.IsAsciiHexDigitLower) ? desk.Shop.Store.Attachments.Find(hash) : null;
        if (known is null || desk.Shop.Store.Attachments.Open(hash, faults) is not { } content)
            return Answers.Faults(faults.Any ? faults.List : [new(hash, "no attachment has this hash", "the SHA-256 of the content, 64 hexadecimal digits")], status: StatusCodes.Status404NotFound);
        // Somebody else's file is shown or saved, never run as a page of the desk.
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'";
        return Results.Stream(content, known.MediaType, known.MediaType.StartsWith("image/", StringComparison.Ordinal) ? null : known.Name);
    }

    /// <summary>The server's own limit is lower than a photo book; ours is checked while reading.</summary>
    public static TBuilder TakesLargeBodies<TBuilder>(this TBuilder endpoint)
        where TBuilder : IEndpointConventionBuilder => endpoint.WithMetadata(new LargeBody());

    private sealed class LargeBody : IRequestSizeLimitMetadata
    {
        public long? MaxRequestBodySize => null;
    }
}
