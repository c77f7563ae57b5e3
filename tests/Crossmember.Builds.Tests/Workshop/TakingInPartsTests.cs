using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Templates;
using Crossmember.Builds.Tests.Journal;
using Crossmember.Builds.Workshop;

namespace Crossmember.Builds.Tests.Workshop;

/// <summary>A pasted list goes in as one batch, and all of it can be taken back.</summary>
public sealed class TakingInPartsTests
{
    private static readonly Speaker s_ana = new("ana", "bench");
    private readonly Stating _stating = new(TimeProvider.System);
    private readonly Builds.Journal.Journal _journal = new(new MemoryJournalStore(), TimeProvider.System, new AppendRules(Catalogue.Shipped));

    public TakingInPartsTests() => Append(new StartingBuilds(_stating, TimeProvider.System).FromTemplate(TemplateReader.Shipped[0], "b", "B", 4, 2, s_ana));

    private Build Build => new StreamFold(Catalogue.Shipped.Table, Lifts.Current).Build("b", _journal.Store.Read("b")).Build;

    private ShopFacts Shop => new StreamFold(Catalogue.Shipped.Table, Lifts.Current).Shop(_journal.Store.Read(Fact.Shop));

    private void Append(IReadOnlyList<Fact> facts) => Assert.All(_journal.Append(facts, Arrival.Online), o => Assert.True(o is AppendOutcome.Appended, o.ToString()));

    private Guid? Seen(string stream, string subject) => _journal.Store.Transact(tx => tx.LastOn(stream, subject))?.Fact.Id;

    private IReadOnlyList<Fact> Facts(bool oneOption, params (PastedPart, Destination)[] parts) =>
        new TakingInParts(_stating, TimeProvider.System, Build, Shop, Seen).Facts(parts, oneOption, s_ana);

    private static PastedPart Part(string text)
    {
        var table = CellReader.Read("Part,Number,Qty,Price,Vendor,Lead time,Weight\n" + text);
        return new PartsReader(ColumnGuessing.Of(table), "USD", "lb").Read(table.Rows[1]);
    }

    private static readonly PastedPart s_hose = Part("Brake hose,BH-22,2,18.50,Coast,2 weeks,0.5 lb"), s_shoes = Part("Brake shoes,,1,64,Coast,,"), s_rack = Part("Roof rack,RR-1,1,410,,,62 lb");

    [Fact]
    public void Parts_become_options_items_and_lines_of_the_price_list()
    {
        var facts = Facts(false, (s_hose, new Destination.Item("axle.front.brakes")), (s_shoes, new Destination.Item("axle.front.brakes")), (s_rack, new Destination.NewItem()), (s_rack, new Destination.PriceList()), (s_hose, new Destination.Nowhere()));
        Assert.Single(facts.Select(f => f.Batch).Distinct());
        Append(facts);
        var brakes = Build.Find("axle.front.brakes")!;
        Assert.Equal(["as-found", "brake-hose", "brake-shoes"], brakes.Options.Select(o => o.Id));
        var hose = brakes.Find("brake-hose")!;
        Assert.Equal((2m, 18.5m, "2 weeks", 2), (hose.Prices!.Value[0].Count, hose.Prices.Value[0].Each!.Value.Amount, hose.Lead, hose.Masses!.Value.Length));
        Assert.Equal(0.2268, hose.Masses.Value[0].Kilograms!.Value, 1e-4); // half a pound; NIST SP 811, appendix B.8, from memory
        Assert.Null(brakes.Find("brake-shoes")!.Masses);
        Assert.Equal("Roof rack", Build.Find("roof-rack")!.Title);
        Assert.Equal(410, Build.Find("roof-rack")!.Find("roof-rack")!.Prices!.Value[0].Each!.Value.Amount);
        var listed = Shop.Stock["roof-rack"];
        Assert.Equal(("RR-1", 410m), (listed.Number, listed.Each!.Value.Amount));
    }

    [Fact]
    public void Parts_of_one_item_may_be_lines_of_one_option()
    {
        Append(Facts(true, (s_hose, new Destination.Item("tires")), (s_shoes, new Destination.Item("tires"))));
        var option = Build.Find("tires")!.Options[^1];
        Assert.Equal("Brake hose and 1 more", option.Title);
        Assert.Equal(101, option.Prices!.Value.Sum(p => p.Count * p.Each!.Value.Amount));
        Assert.Null(option.Masses); // one of the two weighs nobody knows what
    }

    [Fact]
    public void Lines_of_one_option_wait_for_the_slowest_and_no_weight_is_lost()
    {
        var facts = Facts(true, (Part("Caliper,,2,90,,2 days,5 kg"), new Destination.Item("tires")), (Part("Hose,,1,20,,6 weeks,"), new Destination.Item("tires")), (Part("Clip,,1,2,,on request,"), new Destination.Item("tires")));
        Append(facts);
        var option = Build.Find("tires")!.Options[^1];
        Assert.Equal("6 weeks", option.Lead);
        Assert.Null(option.Masses);
        var note = facts[0].Payload!["note"]!.ToString();
        Assert.Contains("Caliper weighs 5 kg each, not counted", note, StringComparison.Ordinal);
        Assert.Contains("Caliper takes 2 days", note, StringComparison.Ordinal);
        Assert.Contains("Clip takes on request", note, StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_that_was_used_once_is_not_used_for_another_part()
    {
        var facts = Facts(false, (s_hose, new Destination.PriceList()), (s_rack, new Destination.NewItem()));
        Append(facts);
        Append([.. facts.Reverse().Select(f => _stating.Undo(f, Seen(f.Stream, f.Subject), s_ana))]);
        Append(Facts(false, (s_hose, new Destination.PriceList()), (s_rack, new Destination.NewItem())));
        Assert.Equal(["brake-hose-2"], Shop.Stock.Keys);
        Assert.NotNull(Build.Find("roof-rack-2"));
    }

    [Fact]
    public void Names_that_are_there_already_get_a_number()
    {
        Append(Facts(false, (s_hose, new Destination.Item("tires")), (s_rack, new Destination.PriceList())));
        Append(Facts(false, (s_hose, new Destination.Item("tires")), (s_hose, new Destination.Item("tires")), (s_rack, new Destination.PriceList())));
        Assert.Equal(["as-found", "brake-hose", "brake-hose-2", "brake-hose-3"], Build.Find("tires")!.Options.Select(o => o.Id));
        Assert.Equal(["roof-rack", "roof-rack-2"], Shop.Stock.Keys);
    }

    [Fact]
    public void What_went_in_together_can_be_taken_back_together()
    {
        var (before, shop) = (Build, Shop);
        var facts = Facts(false, (s_hose, new Destination.Item("tires")), (s_rack, new Destination.NewItem()), (s_rack, new Destination.PriceList()));
        Append(facts);
        Append([.. facts.Reverse().Select(f => _stating.Undo(f, Seen(f.Stream, f.Subject), s_ana))]);
        Assert.Equal(before.Slots.Select(s => (s.Id, s.Options.Length)), Build.Slots.Select(s => (s.Id, s.Options.Length)));
        Assert.Equal(shop.Stock.Keys, Shop.Stock.Keys);
    }

    [Fact]
    public void Many_small_parts_are_weighed_together()
    {
        Append(Facts(false, (Part("Bolt,,100,0.2,,,10 g"), new Destination.Item("tires"))));
        var mass = Assert.Single(Build.Find("tires")!.Options[^1].Masses!.Value);
        Assert.Equal(1, mass.Kilograms!.Value, 1e-9);
    }
}
