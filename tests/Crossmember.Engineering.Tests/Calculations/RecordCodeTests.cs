using System.Text;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>A calculation that ran thousands of times is carried by code of its own: it must say what it said the first time.</summary>
public sealed class RecordCodeTests
{
    private const int Often = 2100;

    public static TheoryData<string> Ids => [.. CalculationList.All.Where(c => c.About.Examples.Count > 0).Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_thousandth_run_says_what_the_first_said(string id)
    {
        var calculation = CalculationList.Find(id)!;
        var faults = new Faults();
        var arguments = ArgumentReader.Read(calculation, Encoding.UTF8.GetBytes(CatalogueJson.InputOf(calculation.About.Examples[0]).ToJsonString()), faults);
        Assert.True(arguments is not null, string.Join('\n', faults.List));
        var first = calculation.Run(arguments!, Told.Findings);
        for (var i = 0; i < Often; i++) calculation.Run(arguments!, Told.Numbers);
        var last = calculation.Run(arguments!, Told.Findings);
        Assert.Equal(first.Outputs, last.Outputs);
        Assert.Equal(first.Findings, last.Findings);
        Assert.Equal(first.Missing, last.Missing);
        // And with nothing known at all.
        var none = new Value[calculation.InputSpecs.Count];
        Assert.Equal(first.Outputs.Count, calculation.Run(none, Told.Findings).Outputs.Count);
    }
}
