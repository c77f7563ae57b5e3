using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;

namespace Crossmember.Architecture.Tests;

/// <summary>Engineering, Planning and Builds give the same answer for the same question: what they use is read from the built assemblies.</summary>
public sealed partial class PurityTests
{
    /// <summary>Outside world by type, or by single members where the type has harmless ones too.</summary>
    [GeneratedRegex("""
        ^System\.IO\.(File|Directory|FileInfo|DirectoryInfo|FileStream|DriveInfo|FileSystemWatcher)\. |
        ^System\.(Data|Net)\. | ^Microsoft\.(Data|EntityFrameworkCore|AspNetCore|Extensions\.Hosting)\. |
        ^System\.Console\. | ^System\.Diagnostics\.(Process|Stopwatch)\. | ^System\.Threading\.(Thread\.Sleep|Timer\.) |
        ^System\.Environment\.(get_TickCount|GetEnvironmentVariable|GetFolderPath|get_MachineName|get_UserName) |
        ^System\.DateTime(Offset)?\.get_(Now|UtcNow|Today)\( | ^System\.TimeProvider\.get_System\( |
        ^System\.Random\.(get_Shared|\.ctor)\(0\) | ^System\.Guid\.(NewGuid|CreateVersion7)\(0\) | ^System\.Security\.Cryptography\.RandomNumberGenerator\.
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex OutsideWorld();

    [Theory]
    [InlineData("Crossmember.Engineering")]
    [InlineData("Crossmember.Planning")]
    [InlineData("Crossmember.Builds")]
    public void A_pure_project_uses_no_clock_file_database_network_or_chance_of_its_own(string assembly)
    {
        var used = MembersUsed(assembly);
        Assert.NotEmpty(used);
        Rule.NothingIn(used.Where(m => OutsideWorld().IsMatch(m)));
    }

    [Theory]
    [InlineData("System.IO.File.ReadAllText(1)")]
    [InlineData("System.DateTime.get_UtcNow(0)")]
    [InlineData("System.Random..ctor(0)")]
    [InlineData("System.Guid.CreateVersion7(0)")]
    [InlineData("Microsoft.EntityFrameworkCore.DbContext.SaveChanges(0)")]
    public void The_outside_world_is_recognised(string member) => Assert.Matches(OutsideWorld(), member);

    [Theory]
    [InlineData("System.TimeProvider.GetUtcNow(0)")]
    [InlineData("System.Random..ctor(1)")]
    [InlineData("System.Guid.CreateVersion7(1)")]
    [InlineData("System.IO.Path.GetFileName(1)")]
    [InlineData("System.IO.FileNotFoundException..ctor(1)")]
    public void What_is_handed_in_or_harmless_is_let_pass(string member) => Assert.DoesNotMatch(OutsideWorld(), member);

    /// <summary>Full names of the members of other assemblies that this one uses, methods with their number of parameters: a random number
    /// from a seed, or an id from a clock handed in, is another overload.</summary>
    private static List<string> MembersUsed(string assembly)
    {
        using var image = new PEReader(File.OpenRead(Path.Combine(AppContext.BaseDirectory, assembly + ".dll")));
        var metadata = image.GetMetadataReader();
        var used = new List<string>();
        foreach (var handle in metadata.MemberReferences)
        {
            var member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind != HandleKind.TypeReference) continue;
            var type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
            var name = $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}.{metadata.GetString(member.Name)}";
            used.Add(member.GetKind() == MemberReferenceKind.Method ? $"{name}({ParameterCount(metadata, member)})" : name);
        }
        return used;
    }

    private static int ParameterCount(MetadataReader metadata, MemberReference member)
    {
        var signature = metadata.GetBlobReader(member.Signature);
        signature.ReadSignatureHeader();
        return signature.ReadCompressedInteger();
    }
}
