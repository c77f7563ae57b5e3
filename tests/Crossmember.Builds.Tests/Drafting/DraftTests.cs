using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Tests.Drafting;

/// <summary>A form and the body of an option say the same; what the form does not show is left as it was.</summary>
public sealed class DraftTests
{
    private static readonly Slot s_tires = new()
    {
        Id = "tires", Parent = "vehicle", Title = "Tires",
        Options = [new() { Id = Option.AsFound, Masses = [new("left", 30, new(0, -0.74, 0), Basis.Assumed), new("right", 30, new(0, 0.74, 0), Basis.Assumed)] }, new() { Id = "at33", Class = OptionClass.Upgrade, Originality = 0.2 }],
    };

    private static JsonObject Write(OptionDraft draft, JsonObject? was = null, string option = "new")
    {
        var faults = new Faults();
        var body = new DraftWriter(ParameterTable.Shipped, s_tires, option, "USD").Write(draft, was, faults);
        Assert.True(body is not null, string.Join('\n', faults.List));
        return body!;
    }

    private static IReadOnlyList<Fault> Faults(OptionDraft draft)
    {
        var faults = new Faults();
        Assert.Null(new DraftWriter(ParameterTable.Shipped, s_tires, "new", "USD").Write(draft, null, faults));
        return faults.List;
    }

    private static void Same(string expected, JsonNode? actual) => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), actual), actual?.ToJsonString());

    [Theory]
    [InlineData("replace", 0.8)]
    [InlineData("upgrade", 0.2)]
    [InlineData("refurbish", 1)]
    public void Only_the_title_is_needed_and_what_is_assumed_is_labelled(string kind, double share)
    {
        var body = Write(new() { Title = " 33 in ", Class = kind });
        Same($$"""{"title":"33 in","class":"{{kind}}","originality":{{share}},"note":"originality assumed from the class"}""", body);
        Assert.Equal("", DraftReader.Of(body).Originality);
    }

    [Fact]
    public void Everything_a_form_can_say_is_said_and_read_back()
    {
        var draft = new OptionDraft { Title = "33 in", Class = "upgrade", Like = "at33", Price = "$310 each, 5", Category = "materials", Lead = "3 weeks", Mass = "31 kg each, 2", MassBasis = "vendor", Originality = "modern kind, hidden" };
        draft.Hours.Add(new() { Trade = "technician", Figure = "3 h", Certainty = "DoneIt" });
        draft.Values.Add(new() { Key = "wheel.*.*.tire.size", Typed = "33x10.50R15LT", Basis = "vendor" });
        var body = Write(draft);
        Same("""
            {"title":"33 in","class":"upgrade","like":"at33","lead":"3 weeks","originality":0.5,
             "prices":[{"id":"price","count":5,"each":"310.00 USD","category":"materials"}],
             "hours":[{"trade":"technician","distribution":{"kind":"lognormal","median":3,"factor":1.15}}],
             "masses":[{"id":"left","mass":"31 kg","at":["0 mm","-740 mm","0 mm"],"basis":"vendor"},{"id":"right","mass":"31 kg","at":["0 mm","740 mm","0 mm"],"basis":"vendor"}],
             "parameters":{"wheel.*.*.tire.size":{"value":"33x10.50R15LT","basis":"vendor"}}}
            """, body);
        var back = DraftReader.Of(body);
        Assert.Equal(("33 in", "upgrade", "at33", "310.00 USD each, 5", "materials", "3 weeks", "31 kg each, 2", "vendor", "modern kind, hidden"),
            (back.Title, back.Class, back.Like, back.Price, back.Category, back.Lead, back.Mass, back.MassBasis, back.Originality));
        Assert.Equal(("technician", "3", nameof(Certainty.DoneIt)), (back.Hours[0].Trade, back.Hours[0].Figure, back.Hours[0].Certainty));
        Same(body.ToJsonString(), Write(back, body));
    }

    /// <summary>A body with all that a form has no field for.</summary>
    private const string Rich = """
        {"title":"Rich","class":"replace","originality":0.37,"governs":["gear.4"],"takes":["wheels"],"requires":[{"slot":"wheels","options":["wide"]}],"tasks":[{"id":"fit","title":"fit them"}],"stock":"T33","note":"seen at a swap meet",
         "prices":[{"id":"set","count":4,"each":"310.00 USD","category":"parts","quote":"Q1"},{"id":"freight","count":1,"each":"60.00 USD","category":"freight"}],
         "hours":[{"trade":"technician","distribution":{"kind":"pert","low":2,"mode":3,"high":5},"driver":{"shell":0.6}},{"trade":"body","distribution":{"kind":"lognormal","median":4,"factor":1.8}}],
         "masses":[{"id":"left","mass":"31 kg","at":["0 mm","-700 mm","0 mm"],"basis":"vendor"},{"id":"right","mass":"33 kg","basis":"vendor"}],
         "parameters":{"engine.torque-curve":{"value":[["1000 rpm","200 N m"],["2000 rpm","240 N m"]],"basis":"published"},"engine.redline":{"value":"4500 rpm","basis":"vendor","plusMinus":"50 rpm"},"axle.front.ratio":null}}
        """;

    [Fact]
    public void What_the_form_does_not_show_stays_as_it_was() => Same(Rich, Write(DraftReader.Of((JsonObject)JsonNode.Parse(Rich)!), (JsonObject)JsonNode.Parse(Rich)!));

    [Fact]
    public void What_the_form_shows_can_be_said_otherwise_beside_it()
    {
        var was = (JsonObject)JsonNode.Parse(Rich)!;
        var draft = DraftReader.Of(was);
        Assert.Equal(("2 lines", "2 masses"), (draft.PriceKept, draft.MassKept));
        Assert.Contains("3.2 h in the mean", draft.Hours[0].Kept, StringComparison.Ordinal);
        draft.Hours[1].Figure = "";
        draft.Values.Single(v => v.Key == "engine.redline").Typed = "4400 rpm";
        draft.Title = "Richer";
        var body = Write(draft, was);
        Assert.Equal("Richer", (string?)body["title"]);
        Assert.Equal("technician", (string?)Assert.Single(body["hours"]!.AsArray())!["trade"]);
        Same("""{"value":"4400 rpm","basis":"vendor"}""", body["parameters"]!["engine.redline"]); // another value, another uncertainty
        Assert.Equal(2, body["prices"]!.AsArray().Count);
    }

    [Fact]
    public void As_found_keeps_its_own_share_and_needs_no_name() =>
        Same("""{"class":"keep","massBelow":"5 kg"}""", Write(new() { Class = "keep", MassBelow = "5 kg" }, null, Option.AsFound));

    [Theory]
    [InlineData("title", "")]
    [InlineData("price", "twelve")]
    [InlineData("price", "EUR 12")]
    [InlineData("mass", "heavy")]
    [InlineData("mass", "31 kg each, 400")]
    [InlineData("massBelow", "5")]
    [InlineData("originality", "rather old")]
    [InlineData("hours/0", "soon")]
    [InlineData("values/0", "4,56")]
    public void What_is_wrong_is_told_of_its_field(string field, string typed)
    {
        var draft = new OptionDraft { Title = field == "title" ? typed : "T" };
        if (field == "price") draft.Price = typed;
        if (field == "mass") draft.Mass = typed;
        if (field == "massBelow") draft.MassBelow = typed;
        if (field == "originality") draft.Originality = typed;
        if (field == "hours/0") draft.Hours.Add(new() { Trade = "t", Figure = typed });
        if (field == "values/0") draft.Values.Add(new() { Key = "axle.rear.ratio", Typed = typed });
        var fault = Assert.Single(Faults(draft));
        Assert.Equal(field, fault.Path);
        Assert.NotEmpty(fault.Right);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var draft = new OptionDraft { Price = "x", Mass = "y" };
        draft.Hours.Add(new() { Figure = "3" });
        Assert.Equal(["title", "price", "hours/0", "mass"], Faults(draft).Select(f => f.Path));
    }

    [Fact]
    public void A_part_of_the_shelf_is_copied_with_the_id_of_its_source()
    {
        var body = StatedBody.Copied(new("T33", "33 in tire", "N1", "Coast", new(310, "USD"), "parts", "2 weeks", 4, "2026-12-31", """{"class":"upgrade","parameters":{"wheel.*.*.tire.size":"33x10.50R15LT"}}"""));
        var option = new OptionReader(ParameterTable.Shipped).Read(new(System.Text.Json.JsonSerializer.SerializeToElement(Write(DraftReader.Of(body), body)), "", new()), "t");
        Assert.Equal(("T33", "33 in tire", OptionClass.Upgrade, 310m, "2026-12-31", "2 weeks"), (option.Stock, option.Title, option.Class!.Value, option.Prices!.Value[0].Each!.Value.Amount, option.Prices.Value[0].Until, option.Lead));
        Assert.Equal("33x10.50R15LT", option.Parameters[0].Value.Typed);
    }

    [Fact]
    public void Shares_have_words_and_words_have_shares() => Assert.All(OriginalityWords.All, w => Assert.Equal(w.Words, OriginalityWords.Of(w.Share)));
}
