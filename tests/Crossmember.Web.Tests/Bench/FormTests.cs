using System.Text;
using AngleSharp.Dom;
using Bunit;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Bench;

namespace Crossmember.Web.Tests.Bench;

/// <summary>What is wrong stands beside the field in the words of the command line, and nothing typed is lost.</summary>
public sealed class FormTests : BenchShop
{
    private const string Speed = "driveline.engine-speed", Crawl = "driveline.crawl-ratio", Pull = "driveline.tractive-effort", Load = "mass.axle-load", Size = "tires.dimensions";

    private static Fault FaultOf(string id, string input)
    {
        var faults = new Faults();
        Assert.Null(ArgumentReader.Read(CalculationList.Find(id)!, Encoding.UTF8.GetBytes(input), faults));
        return faults.List[0];
    }

    [Theory]
    [InlineData(Speed, "in-roadSpeed", "quick", """{"roadSpeed":"quick"}""", "")]
    [InlineData(Speed, "in-roadSpeed", "65 in", """{"roadSpeed":"65 in"}""", "")]
    [InlineData(Speed, "in-axleRatio", "4,10", """{"axleRatio":"4,10"}""", "")]
    [InlineData(Speed, "in-axleRatio", "-4", """{"axleRatio":"-4"}""", "")]
    [InlineData(Size, "in-size", "33 inches", """{"size":"33 inches"}""", "")]
    [InlineData(Crawl, "in-gearRatios-1", "two", """{"gearRatios":{"2":"two"}}""", "2: ")]
    [InlineData(Pull, "in-torqueCurve", "1000 rpm, 250 N m\n2000 rpm, lots", """{"torqueCurve":[["1000 rpm","250 N m"],["2000 rpm","lots"]]}""", "line 2: ")]
    [InlineData(Pull, "in-torqueCurve", "1000 rpm, 250 N m\nand so on", """{"torqueCurve":[["1000 rpm","250 N m"],["and so on"]]}""", "line 2: ")]
    [InlineData(Pull, "in-torqueCurve", "1000 rpm, 250 N m", """{"torqueCurve":[["1000 rpm","250 N m"]]}""", "")]
    public void A_broken_text_is_answered_beside_its_field_as_on_the_command_line(string id, string field, string typed, string input, string where)
    {
        using var card = Card(id);
        Write(card, $"#{field}", typed);
        var box = card.Find($"#{field}");
        var fault = FaultOf(id, input);
        Assert.Equal($"{where}{fault.Wrong}: {fault.Right}.", Words(card.Find($"#{box.GetAttribute("aria-describedby")} p")));
        Assert.Equal("true", box.GetAttribute("aria-invalid"));
        Assert.Equal(typed, box.GetAttribute("value"));
        Assert.Single(card.FindAll(".error p"));
        Assert.Contains(Uri.EscapeDataString(typed.Split(',')[0]), Nav.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_that_is_none_of_those_comes_from_an_address_and_is_told_too()
    {
        using var card = Card(Load, """{"axle":"middle"}""");
        var fault = FaultOf(Load, """{"axle":"middle"}""");
        Assert.Equal($"{fault.Wrong}: {fault.Right}.", Words(card.Find("#in-axle-fault p")));
        Assert.Equal("middle", card.Find("#in-axle option[selected]").GetAttribute("value"));
        card.Find("#in-axle").Change("rear");
        Assert.Empty(card.FindAll(".error p"));
    }

    [Fact]
    public void What_is_still_being_typed_is_not_wrong_yet_and_the_last_answer_stays()
    {
        using var card = Card(Speed, """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":"4.56","gearRatio":"1"}""");
        var before = Output(card, "engineSpeed").GetAttribute("value");
        card.Find("#in-roadSpeed").Input("70 m");
        Assert.Empty(card.FindAll(".error p"));
        Assert.Equal(before, Output(card, "engineSpeed").GetAttribute("value"));
        Assert.NotEmpty(card.FindAll(".answer.stale"));
        card.Find("#in-roadSpeed").Input("70 mph");
        Assert.Empty(card.FindAll(".answer.stale"));
        Assert.NotEqual(before, Output(card, "engineSpeed").GetAttribute("value"));
    }

    /// <summary>65 mph, 33 in, 4.56: 336.135 x 4.56 x 65 / 33 = 3019 rpm by the inch rule.</summary>
    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "65", "33", "65 mph", "33 in")]
    [InlineData(MeasureSystem.Metric, "104.6", "838.2", "104.6 km/h", "838.2 mm")]
    public void A_bare_number_is_taken_in_the_unit_beside_the_field_and_says_so(MeasureSystem measure, string speed, string tire, string speedRead, string tireRead)
    {
        using var card = Card(Speed, measure: measure);
        Write(card, "#in-roadSpeed", speed);
        Write(card, "#in-tireDiameter", tire);
        Write(card, "#in-axleRatio", "4.56");
        Write(card, "#in-gearRatio", "1");
        Assert.Equal((speedRead, tireRead), (card.Find("#in-roadSpeed").GetAttribute("value"), card.Find("#in-tireDiameter").GetAttribute("value")));
        Assert.InRange(double.Parse(Output(card, "engineSpeed").GetAttribute("value")!, null), 3018, 3020);
        Assert.Equal($$"""{"roadSpeed":"{{speedRead}}","tireDiameter":"{{tireRead}}","axleRatio":"4.56","gearRatio":"1"}""", Sent);
    }

    [Fact]
    public void An_address_shows_the_same_to_somebody_else_and_tells_what_it_names_wrongly()
    {
        const string input = """{"roadSpeed":"65 mph","tireDiametre":"33 in","axleRatio":4.56,"gearRatio":{"value":"1","basis":"measured"}}""";
        using var card = Card(Speed, input);
        Assert.Equal(["65 mph", "", "4.56", "1", "", ""], card.FindAll("form input").Select(f => f.GetAttribute("value") ?? ""));
        Assert.Contains("tireDiameter", Assert.Single(card.FindAll(".note.error")).TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(JSInterop.Invocations, i => i.Identifier == "desk.restore");
        using var broken = Card(Speed, "{half");
        Assert.Contains("not JSON", broken.Find(".note.error").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_address_what_was_typed_before_comes_back_and_can_be_dropped()
    {
        using var card = Card(Speed);
        Assert.Single(JSInterop.Invocations, i => i.Identifier == "desk.restore");
        Assert.Equal("bench.driveline.engine-speed.roadSpeed.mph", card.Find("#in-roadSpeed").GetAttribute("data-draft"));
        Write(card, "#in-roadSpeed", "65");
        card.FindAll("form .acts button")[1].Click();
        Assert.Equal(("", null), (card.Find("#in-roadSpeed").GetAttribute("value") ?? "", Sent));
        Assert.Equal("bench.driveline.engine-speed.", JSInterop.Invocations.Single(i => i.Identifier == "desk.forgetAll").Arguments[0]);
    }

    [Fact]
    public void Rows_of_a_map_can_be_added_named_and_taken_out()
    {
        using var card = Card(Crawl);
        IReadOnlyList<IElement> Rows() => card.FindAll("[data-input=gearRatios] .member");
        Assert.Equal(["1", "2", "3", "4"], Rows().Select(r => r.QuerySelector(".name")!.GetAttribute("value")));
        card.Find("[data-input=gearRatios] fieldset > button").Click();
        Write(card, "#in-gearRatios-4", "0.8");
        Write(card, "#in-gearRatios-0", "5.15");
        Assert.Equal("""{"gearRatios":{"1":"5.15","5":"0.8"}}""", Sent);
        Rows()[0].QuerySelector("button")!.Click();
        Assert.Equal("""{"gearRatios":{"5":"0.8"}}""", Sent);
        Write(card, "[data-input=gearRatios] .member:nth-of-type(1) .name", "5");
        Write(card, "#in-gearRatios-0", "3");
        Assert.Contains("stands twice", card.Find("#in-gearRatios-fault p").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_takes_more_rows_than_anybody_counts()
    {
        var calculation = CalculationList.Find(Crawl)!;
        var typed = new TypedInputs(calculation);
        for (var n = 0; n < 120; n++) typed.Add("gearRatios");
        Assert.Equal(Enumerable.Range(1, 120).Select(n => $"{n}"), typed.Members("gearRatios").Select(m => m.Name));
        typed.TakeOut("gearRatios", typed.Members("gearRatios")[6]);
        typed.Add("gearRatios");
        Assert.Equal("7", typed.Members("gearRatios")[^1].Name);
    }

    [Fact]
    public void A_calculation_that_is_not_there_is_said_to_be_so_with_the_nearest()
    {
        using var card = Card("driveline.engine-sped");
        Assert.Contains("There is no calculation “driveline.engine-sped”", card.Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Equal("bench/driveline.engine-speed", card.Find("p a").GetAttribute("href"));
    }

    [Theory]
    [InlineData("1000 rpm, 250 N m", "1000 rpm|250 N m")]
    [InlineData("1000 rpm; 250 N m", "1000 rpm|250 N m")]
    [InlineData("1000\t250", "1000|250")]
    [InlineData("1000 250", "1000|250")]
    [InlineData("1000,250", "1000|250")]
    [InlineData("1,000 rpm, 250 N m", "1,000 rpm|250 N m")]
    [InlineData("1,000 rpm; 250,5 N m", "1,000 rpm|250,5 N m")]
    [InlineData("1,000 rpm = 250 N m", "1,000 rpm|250 N m")]
    [InlineData("1,000 rpm,250 N m", "1,000 rpm,250 N m")]
    [InlineData("a curve by hand", "a curve by hand")]
    public void Points_are_told_apart_as_people_write_them(string line, string parts) => Assert.Equal(parts, string.Join('|', CurveText.Pairs($"\n{line}\n")[0]));

    [Theory]
    [InlineData("driveline.tractive-effort", "dragArea", "ft2", "m2")]
    [InlineData("driveline.tractive-effort", "masses", "lb", "kg")]
    [InlineData("driveline.engine-speed", "roadSpeed", "mph", "km/h")]
    [InlineData("driveline.axle-shaft-torque", "jointRating", "lbf ft", "N m")]
    [InlineData("tires.dimensions", "size", null, null)]
    public void The_unit_of_a_field_is_the_readers(string id, string input, string? us, string? metric)
    {
        var calculation = CalculationList.Find(id)!;
        var spec = calculation.InputSpecs[calculation.InputIndex(input)];
        Assert.Equal((us, metric), (FieldUnits.Of(calculation, spec, MeasureSystem.UsCustomary).X?.Code, FieldUnits.Of(calculation, spec, MeasureSystem.Metric).X?.Code));
    }

    [Fact]
    public void Every_unit_of_a_field_means_what_the_input_means() => Assert.All(
        from c in CalculationList.All from s in c.InputSpecs from m in Enum.GetValues<MeasureSystem>() select (s, FieldUnits.Of(c, s, m)),
        f => Assert.Equal((f.s.Dimension, f.s.CurveUnit?.Dimension), (f.Item2.X?.Dimension, f.Item2.Y?.Dimension)));
}
