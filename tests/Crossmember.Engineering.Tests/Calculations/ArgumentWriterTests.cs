using System.Text;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>What is written is read back as the very same arguments.</summary>
public class ArgumentWriterTests
{
    public static TheoryData<string> Ids => [.. CalculationList.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Arguments_go_out_and_come_back_bit_for_bit(string id)
    {
        var c = CalculationList.Find(id)!;
        Samples.Of(c).Sample(arguments =>
        {
            var faults = new Faults();
            var back = ArgumentReader.Read(c, Encoding.UTF8.GetBytes(ArgumentWriter.Of(c, arguments).ToJsonString()), faults);
            // Samples go beyond what an input allows: then the door says so, and nothing comes back.
            if (back is null) return;
            for (var i = 0; i < back.Length; i++)
                Assert.Equal(arguments[i].IsAbsent && c.InputSpecs[i].DefaultSi is { } standIn ? Value.Of(standIn) : arguments[i], back[i]);
        }, iter: 200);
    }

    [Fact]
    public void A_number_stands_in_the_unit_it_is_told_in_and_a_default_needs_no_words()
    {
        var c = CalculationList.Find("driveline.engine-speed")!;
        var arguments = new Value[c.InputSpecs.Count];
        (arguments[1], arguments[2], arguments[4]) = (Value.Of(33 * 0.0254), Value.Of(4.56), Value.Of(1));
        Assert.Equal("""{"tireDiameter":"33 in","axleRatio":"4.56"}""", ArgumentWriter.Of(c, arguments).ToJsonString());
    }

    [Fact]
    public void Maps_and_curves_are_written_as_people_write_them()
    {
        var c = CalculationList.Find("driveline.tractive-effort")!;
        var faults = new Faults();
        var arguments = ArgumentReader.Read(c, Encoding.UTF8.GetBytes("""{"torqueCurve":[["1000 rpm","250 N m"],["2000 rpm","330 N m"]],"masses":{"empty":"1900 kg"}}"""), faults)!;
        var written = ArgumentWriter.Of(c, arguments);
        Assert.Equal("1900 kg", (string)written["masses"]!["empty"]!);
        Assert.Equal(["1000 rpm", "250 N m"], written["torqueCurve"]![0]!.AsArray().Select(n => (string)n!));
    }
}
