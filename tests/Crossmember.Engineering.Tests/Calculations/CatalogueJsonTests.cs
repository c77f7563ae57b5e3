using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>The shapes of <c>calc list</c>, <c>calc describe</c> and <c>calc run</c>, key by key as the format page gives them.</summary>
public class CatalogueJsonTests
{
    [Fact]
    public void The_list_names_every_calculation_once()
    {
        var list = CatalogueJson.Of(CalculationList.All);
        Assert.Equal("crossmember.catalogue/1", list["format"]!.GetValue<string>());
        var entries = list["calculations"]!.AsArray();
        Assert.Equal(CalculationList.All.Select(c => c.Id), entries.Select(e => e!["id"]!.GetValue<string>()));
        Assert.All(entries, e => Assert.Equal(["id", "version", "title", "area"], e!.AsObject().Select(p => p.Key)));
    }

    [Fact]
    public void A_description_tells_inputs_outputs_checks_trends_and_examples()
    {
        var d = CatalogueJson.Of(CalculationList.Find("driveline.engine-speed")!, input => input == "redline" ? "engine.redline" : null);
        Assert.Equal(["format", "id", "version", "title", "purpose", "formula", "validity", "inputs", "outputs", "checks", "trends", "sources", "examples"], d.Select(p => p.Key));
        var inputs = d["inputs"]!.AsArray().ToDictionary(i => i!["name"]!.GetValue<string>(), i => i!.AsObject());
        Assert.All(inputs.Values, i => Assert.Equal(["name", "meaning", "parameter", "unit", "required", "default", "range"], i.Select(p => p.Key)));
        Assert.Equal("""{"value":1,"unit":"1","basis":"assumed"}""", inputs["transferRatio"]["default"]!.ToJsonString());
        Assert.False(inputs["transferRatio"]["required"]!.GetValue<bool>());
        Assert.True(inputs["roadSpeed"]["required"]!.GetValue<bool>());
        Assert.Equal("[null,150]", inputs["roadSpeed"]["range"]!.ToJsonString());
        Assert.Equal("engine.redline", inputs["redline"]["parameter"]!.GetValue<string>());
        Assert.Null(inputs["roadSpeed"]["parameter"]);
        Assert.Equal("""[{"id":"redline","sense":"at-most"}]""", d["checks"]!.ToJsonString());
        Assert.Equal("""{"input":"roadSpeed","output":"engineSpeed","sign":"+","range":[5,100]}""", JsonNode.Parse(d["trends"]![0]!.ToJsonString())!.ToJsonString(s_plain));
        Assert.Equal(["input", "outputs", "tolerance", "source", "provenance"], d["examples"]![0]!.AsObject().Select(p => p.Key));
        Assert.Equal("derived", d["examples"]![0]!["provenance"]!.GetValue<string>());
    }

    [Fact]
    public void Every_description_and_its_examples_can_be_written_and_run_again()
    {
        foreach (var c in CalculationList.All)
        {
            var read = JsonNode.Parse(Json.Text(CatalogueJson.Of(c, _ => null)))!;
            foreach (var example in read["examples"]!.AsArray())
            {
                var result = Door.Run(c, example!["input"]!.ToJsonString());
                foreach (var (name, told) in example["outputs"]!.AsObject()) Assert.Equal(result["outputs"]![name]!["unit"]!.GetValue<string>(), told!["unit"]!.GetValue<string>());
            }
        }
    }

    [Fact]
    public void A_result_has_the_keys_of_the_format_in_its_order()
    {
        var r = Door.Run("driveline.engine-speed", """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1,"redline":"4000 rpm"}""");
        Assert.Equal(["format", "id", "version", "outputs", "findings", "working", "curves", "missing", "cautions", "sources"], r.Select(p => p.Key));
        Assert.Equal("crossmember.result/1", r["format"]!.GetValue<string>());
        Assert.Equal(["id", "verdict", "text", "value", "limit", "sense", "margin", "source"], r.Finding("redline").Select(p => p.Key));
        Assert.Equal("at-most", r.Finding("redline")["sense"]!.GetValue<string>());
        Assert.Equal(["symbol", "formula", "substituted", "value"], r["working"]![1]!.AsObject().Select(p => p.Key));
        Assert.Equal("60 x 29.058 x 4.1 / (pi x 0.8382)", r["working"]![1]!["substituted"]!.GetValue<string>());
    }

    private static readonly System.Text.Json.JsonSerializerOptions s_plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
