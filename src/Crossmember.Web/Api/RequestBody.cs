using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Api;

/// <summary>Reads what a program sends, up to a size, and of a kind that no form of another site can send unasked.</summary>
public static class RequestBody
{
    private static readonly string[] s_sentByForms = ["application/x-www-form-urlencoded", "multipart/form-data", "text/plain"];

    /// <summary>The media type without its parameters, in lower case.</summary>
    public static string MediaType(HttpRequest request) => (request.ContentType ?? "").Split(';')[0].Trim().ToLowerInvariant();

    public static bool IsJson(HttpRequest request) => MediaType(request) == "application/json";

    /// <summary>What a browser sends across sites without asking first is refused.</summary>
    public static bool MayComeFromAForm(HttpRequest request) => MediaType(request) is var type && (type.Length == 0 || s_sentByForms.Contains(type));

    /// <summary>The whole body, or null with a fault where it is too long.</summary>
    public static async Task<byte[]?> Read(HttpRequest request, long most, Faults faults)
    {
        using var copy = new MemoryStream();
        var chunk = new byte[81920];
        for (int n; (n = await request.Body.ReadAsync(chunk, request.HttpContext.RequestAborted)) > 0;)
        {
            if (copy.Length + n > most)
            {
                faults.Add("", "the body is too long", $"at most {most >> 20} MiB");
                return null;
            }
            copy.Write(chunk, 0, n);
        }
        return copy.ToArray();
    }

    public static IResult WrongType(string right) =>
        Answers.Faults([new("", "the content type is not one that is taken here", right)], status: StatusCodes.Status415UnsupportedMediaType);
}
