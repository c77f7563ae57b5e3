namespace Crossmember.Web.Features;

/// <summary>How large a build file may be that somebody hands in.</summary>
public static class BuildUpload
{
    public const long LargestBytes = 512L * 1024 * 1024;
}
