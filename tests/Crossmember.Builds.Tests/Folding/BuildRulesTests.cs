namespace Crossmember.Builds.Tests.Folding;

/// <summary>Each rule across subjects by one file that breaks it, with the place that is named.</summary>
public sealed class BuildRulesTests
{
    private const string Slots = "/slots/2", Four = "/slots/2/options/1";

    [Fact]
    public void The_sheet_that_the_others_break_is_sound() => Assert.NotNull(Sheets.Read(Sheets.Text()).Sheet);

    [Theory]
    [InlineData(",\"like\":\"five\"", "/like", "no option 'five'")]
    [InlineData(",\"like\":\"none\"", "/like", "no option 'none'")]
    [InlineData(",\"like\":\"four\"", "/like", "like itself")]
    [InlineData(",\"takes\":[\"winch\"]", "/takes/0", "no item 'winch'")]
    [InlineData(",\"takes\":[\"gearbox\"]", "/takes/0", "takes itself")]
    [InlineData(",\"takes\":[\"vehicle\"]", "/takes/0", "whole vehicle")]
    [InlineData(",\"requires\":[{\"slot\":\"tire\",\"options\":[\"at33\"]}]", "/requires/0/slot", "no item 'tire'")]
    [InlineData(",\"requires\":[{\"slot\":\"tires\",\"options\":[\"at35\"]}]", "/requires/0/options/0", "no option 'at35'")]
    [InlineData(",\"overrides\":[\"gearbox.1.ratio\"]", "/overrides/0", "does not state")]
    [InlineData(",\"overrides\":[\"gearbx.1.ratio\"]", "/overrides/0", "no parameter")]
    [InlineData(",\"governs\":[\"gear.9\"]", "/governs", "'9' is not in the set gear")]
    [InlineData(",\"parameters\":{\"gearbox.9.ratio\":1}", "/parameters/gearbox.9.ratio", "'9' is not in the set gear")]
    [InlineData(",\"parameters\":{\"gearbox.1.ration\":1}", "/parameters/gearbox.1.ration", "no parameter")]
    [InlineData(",\"parameters\":{\"mass.empty.total\":\"1 kg\"}", "/parameters/mass.empty.total", "mass ledger")]
    [InlineData(",\"parameters\":{\"wheel.*.left.tire.size\":\"a\",\"wheel.front.*.tire.size\":\"b\"}", "/parameters/wheel.front.*.tire.size", "equally many stars")]
    [InlineData(",\"prices\":[{\"id\":\"a\",\"each\":\"1 USD\",\"category\":\"parts\"},{\"id\":\"b\",\"each\":\"1 EUR\",\"category\":\"parts\"}]", "/prices/1/each", "EUR")]
    [InlineData(",\"hours\":[{\"trade\":\"a/b\",\"distribution\":{\"kind\":\"fixed\",\"value\":1}}]", "/hours/0/trade", "no name of a trade")]
    [InlineData(",\"masses\":[{\"id\":\"x\",\"mass\":\"1 kg\"},{\"id\":\"x\",\"mass\":\"2 kg\"}]", "/masses/1", "stands twice")]
    [InlineData(",\"note\":\"\\ud800\"", "/note", "half a character")]
    public void What_an_option_may_not_say(string said, string place, string wrong) =>
        Assert.Contains(Sheets.Faults(Sheets.Text(four: said)), f => f.Path == Four + place && f.Wrong.Contains(wrong, StringComparison.Ordinal));

    [Theory]
    [InlineData("\"governs\":[\"gear.7\"],", "/governs", "'7' is not in the set gear")]
    [InlineData("\"weight\":-1,", "/weight", "weight of -1")]
    [InlineData("\"colour\":1,", "/colour", "no key here")]
    public void What_an_item_may_not_say(string said, string place, string wrong) =>
        Assert.Contains(Sheets.Faults(Sheets.Text(gearbox: said)), f => f.Path == Slots + place && f.Wrong.Contains(wrong, StringComparison.Ordinal));

    [Theory]
    [InlineData("\"id\":\"gearbox\",\"parent\":\"vehicle\"", "\"id\":\"gearbox\",\"parent\":\"frame\"", "/slots/2/parent", "no item 'frame'")]
    [InlineData("\"id\":\"gearbox\",\"parent\":\"vehicle\"", "\"id\":\"gearbox\",\"parent\":\"gearbox\"", "/slots/2/parent", "own ancestor")]
    [InlineData("\"id\":\"gearbox\",\"parent\":\"vehicle\"", "\"id\":\"gearbox\",\"parent\":null", "/slots/2/parent", "only the root")]
    [InlineData("\"id\":\"vehicle\",\"parent\":null", "\"id\":\"vehicle\",\"parent\":\"tires\"", "/slots/0/parent", "the root has a parent")]
    [InlineData("\"id\":\"vehicle\",\"parent\":null", "\"id\":\"car\",\"parent\":null", "/slots", "no item 'vehicle'")]
    [InlineData("\"id\":\"four\"", "\"id\":\"none\"", "/slots/2/options/1/id", "reserved")]
    [InlineData("\"id\":\"four\"", "\"id\":\"approved\"", "/slots/2/options/1/id", "reserved")]
    [InlineData("\"class\":\"replace\",", "", "/slots/2/options/1/class", "missing")]
    [InlineData(",\"originality\":0}]}],", "}]}],", "/slots/2/options/1/originality", "missing")]
    [InlineData("\"id\":\"tires\"", "\"id\":\"gearbox\"", "/slots/2/id", "two items")]
    public void What_the_tree_may_not_be(string sound, string broken, string place, string wrong)
    {
        var text = Sheets.Text();
        Assert.Contains(sound, text, StringComparison.Ordinal);
        Assert.Contains(Sheets.Faults(text.Replace(sound, broken, StringComparison.Ordinal)), f => f.Path == place && f.Wrong.Contains(wrong, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{\"id\":\"approved\"}", "/scenarios/0/id", "reserved")]
    [InlineData("{\"id\":\"a\",\"base\":\"b\"}", "/scenarios/0/base", "no scenario 'b'")]
    [InlineData("{\"id\":\"a\",\"base\":\"b\"},{\"id\":\"b\",\"base\":\"a\"}", "/scenarios/1/base", "its own base")]
    [InlineData("{\"id\":\"a\"},{\"id\":\"a\"}", "/scenarios/1/id", "two scenarios")]
    [InlineData("{\"id\":\"a\",\"choices\":{\"winch\":\"w\"}}", "/scenarios/0/choices/winch", "no item 'winch'")]
    [InlineData("{\"id\":\"a\",\"choices\":{\"tires\":\"at35\"}}", "/scenarios/0/choices/tires", "no option 'at35'")]
    [InlineData("{\"id\":\"a\",\"choices\":{\"tires/x\":\"at33\"}}", "/scenarios/0/choices/tires~1x", "cannot be kept")]
    [InlineData("{\"id\":\"a\",\"choices\":{\"vehicle\":\"none\"}}", "/scenarios/0/choices/vehicle", "cannot be left off")]
    [InlineData("{\"id\":\"a\",\"whatIf\":{\"gearbox.9.ratio\":1}}", "/scenarios/0/whatIf/gearbox.9.ratio", "'9' is not in the set gear")]
    public void What_a_scenario_may_not_be(string scenario, string place, string wrong) =>
        Assert.Contains(Sheets.Faults(Sheets.Text(scenarios: scenario)), f => f.Path == place && f.Wrong.Contains(wrong, StringComparison.Ordinal));

    [Theory]
    [InlineData("\"conditions\":{\"full\":[]},", "/conditions/full", "'full' is not in the set condition")]
    [InlineData("\"weighings\":[{\"date\":\"2026-01-10\",\"axles\":{\"front\":\"1 t\"},\"wheelbase\":\"2 m\"}],", "/weighings/0/axles", "rear is missing")]
    [InlineData("\"weighings\":[{\"date\":\"2026-01-10\",\"axles\":{\"front\":\"1 t\",\"rear\":\"1 t\",\"tag\":\"1 t\"},\"wheelbase\":\"2 m\"}],", "/weighings/0/axles", "'tag' is no place")]
    [InlineData("\"weighings\":[{\"date\":\"2026-01-10\",\"axles\":{\"front\":\"1 t\",\"rear\":\"1 t\"},\"wheelbase\":\"2 m\",\"condition\":\"wet\"}],", "/weighings/0/condition", "'wet' is not in")]
    [InlineData("\"weighings\":[{\"date\":\"2026-01-10\",\"axles\":{\"front\":\"1 t\",\"rear\":\"1 t\"},\"wheelbase\":\"0 m\"}],", "/weighings/0/wheelbase", "zero or less")]
    [InlineData("\"weighings\":[{\"date\":\"10 Jan\",\"axles\":{\"front\":\"1 t\",\"rear\":\"1 t\"},\"wheelbase\":\"2 m\"}],", "/weighings/0/date", "is no day")]
    [InlineData("\"stock\":[{\"id\":\"a\"},{\"id\":\"a\"}],", "/stock/1", "there are two")]
    [InlineData("\"documents\":{\"a/b\":{}},", "/documents/a~1b", "cannot be kept")]
    public void What_else_a_sheet_may_not_hold(string top, string place, string wrong) =>
        Assert.Contains(Sheets.Faults(Sheets.Text(top: top)), f => f.Path == place && f.Wrong.Contains(wrong, StringComparison.Ordinal));

    [Fact]
    public void A_hundred_thousand_elements_are_the_most()
    {
        var many = string.Join(',', Enumerable.Range(0, 100_001).Select(i => $"{{\"id\":\"p{i}\"}}"));
        Assert.Contains("100000", Assert.Single(Sheets.Faults(Sheets.Text(top: $"\"stock\":[{many}],"))).Right, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_of_more_members_than_any_vehicle_has_is_refused()
    {
        var many = string.Join(',', Enumerable.Range(0, 65).Select(i => $"\"{i}\""));
        Assert.Contains(Sheets.Faults(Sheets.Text().Replace("[\"1\",\"2\"]", $"[{many}]", StringComparison.Ordinal)), f => f.Path == "/sets/gear");
    }
}
