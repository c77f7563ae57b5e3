using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Parameters;

/// <summary>A gap may be nothing, but not less: said where it stands in the file.</summary>
public sealed class ClearanceTests
{
    [Theory]
    [InlineData("pad-clearance", "-0.1 mm", true)]
    [InlineData("shoe-clearance", "-0.020 in", true)]
    [InlineData("knock-back", "-1 mm", true)]
    [InlineData("shoe-clearance", "0 mm", false)]
    [InlineData("pad-clearance", "0.006 in", false)]
    public void A_negative_clearance_is_a_fault_at_its_place(string key, string typed, bool wrong)
    {
        var faults = new Faults();
        var json = $$$"""
            {"format":"crossmember.build/1","id":"t","title":"T","sets":{"condition":["empty"]},
             "slots":[{"id":"vehicle","parent":null,"title":"V","weight":0,"options":[{"id":"as-found","parameters":{"wheel.front.*.brake.{{{key}}}":"{{{typed}}}"}}]}],
             "scenarios":[{"id":"working","base":null,"choices":{}}]}
            """;
        _ = BuildFile.Read(Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        Assert.Equal(wrong ? 1 : 0, faults.Count);
        if (wrong) Assert.Equal(($"/slots/0/options/0/parameters/wheel.front.*.brake.{key}", "it must be at least 0 mm"), (faults.List[0].Path, faults.List[0].Right));
    }
}
