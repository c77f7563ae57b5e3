namespace Crossmember.Web.Api;

/// <summary>Files in which names stand that people typed: they are shown or saved, never run.</summary>
public static class SafeFiles
{
    /// <param name="shown">Whether a browser shows it; else it saves it.</param>
    public static IResult Send(byte[] content, string type, string name, HttpContext context, bool shown = false)
    {
        context.Response.Headers.XContentTypeOptions = "nosniff";
        // A page that stands by itself brings its faces within it; nothing else is let in.
        context.Response.Headers.ContentSecurityPolicy = "sandbox; default-src 'none'; style-src 'unsafe-inline'; font-src data:";
        if (!shown) return Results.File(content, type, name);
        context.Response.Headers.ContentDisposition = new System.Net.Mime.ContentDisposition { Inline = true, FileName = name }.ToString();
        return Results.Bytes(content, type);
    }
}
