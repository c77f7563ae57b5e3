using System.Text;
using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Customers;

namespace Crossmember.Web.Tests.Customers;

/// <summary>A card that is written, changed, handed out and erased.</summary>
public sealed class CustomerPageTests : WrittenPages
{
    private const string Name = "Quillon Featherby";

    private IRenderedComponent<CustomerPage> Page() => Render<CustomerPage>(p => p.Add(c => c.Id, "bracken").AddCascadingValue(Ana));

    private string? Record => Desk.Open("bracken")!.Build.Customer;

    private CustomerCard? Card => Record is { } record ? Shop.Store.Personal.Read(record, new()) : null;

    private static void WriteDown(IRenderedComponent<CustomerPage> page, string name)
    {
        page.Find("#customer-name").Input(name);
        page.Find(".customer form").Submit();
    }

    [Fact]
    public void A_card_is_written_down_and_the_journal_holds_only_its_id()
    {
        var page = Page();
        page.Find("#customer-phone").Input("+1 555 0100");
        WriteDown(page, Name);
        Assert.Equal((Name, "+1 555 0100"), (Card!.Name, Card.Phone));
        Assert.Contains("Kept.", page.Find(".said").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Featherby", string.Concat(BuildView.Of(Desk, "bracken")!.Entries.Select(e => e.FactText)), StringComparison.Ordinal);
        Assert.DoesNotContain("Featherby", Encoding.UTF8.GetString(Shop.Exporting.Export("bracken", new Faults())!), StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_goes_into_the_same_record_and_the_journal_says_who_made_it()
    {
        var page = Page();
        WriteDown(page, Name);
        var record = Record;
        WriteDown(page, "Quillon F.");
        Assert.Equal((record, "Quillon F."), (Record, Card!.Name));
        Assert.Equal(2, BuildView.Of(Desk, "bracken")!.Entries.Count(e => e.Fact.Kind == "customer.recorded"));
    }

    [Fact]
    public void A_card_without_a_name_is_answered_beside_the_field_and_keeps_what_was_typed()
    {
        var page = Page();
        page.Find("#customer-phone").Input("+1 555 0100");
        page.Find(".customer form").Submit();
        Assert.Contains("no name", page.Find("#customer-name-error").TextContent, StringComparison.Ordinal);
        Assert.Equal("+1 555 0100", page.Find("#customer-phone").GetAttribute("value"));
        Assert.Null(Record);
    }

    [Fact]
    public void Two_who_write_at_once_see_both_cards_and_nothing_is_left_over()
    {
        IRenderedComponent<CustomerPage> ana = Page(), other = Page();
        ana.Find("#customer-name").Input("Mine");
        WriteDown(other, "Theirs");
        ana.Find(".customer form").Submit();
        Assert.Contains("Theirs", ana.Find(".stands").TextContent, StringComparison.Ordinal);
        Assert.Equal("Theirs", Card!.Name);
        ana.FindAll(".clash button").First(b => b.TextContent == "Use mine").Click();
        Assert.Equal("Mine", Card!.Name);
        Assert.Equal([Record!], Shop.Store.Personal.All());
    }

    [Fact]
    public void Erasing_says_what_goes_and_stays_asks_for_the_word_and_leaves_nothing()
    {
        var page = Page();
        WriteDown(page, Name);
        Ben("bracken", EntryKind.NoteWritten, "slots/tires/notes", new JsonObject { ["text"] = "Featherby wants narrow ones" });
        page.FindAll(".erase button")[0].Click();
        var told = page.Find(".erase").TextContent;
        Assert.Contains("cannot be undone", told, StringComparison.Ordinal);
        Assert.Contains("1 entry names the customer", told, StringComparison.Ordinal);
        Assert.Contains("Featherby wants narrow ones", told, StringComparison.Ordinal);
        page.Find("#erase-word").Input("yes");
        page.Find(".erase form").Submit();
        Assert.Equal(Name, Card!.Name);
        page.Find("#erase-word").Input("Erase");
        page.Find(".erase form").Submit();
        Assert.Null(Record);
        Assert.Empty(Shop.Store.Personal.All());
        Assert.Equal("", page.Find("#customer-name").GetAttribute("value") ?? "");
        Assert.Contains("Erased", page.Find(".said").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".erase"));
    }

    [Fact]
    public void A_record_that_is_not_here_is_said_and_can_be_written_anew()
    {
        var elsewhere = PersonalRecords.NewId();
        Ben("bracken", EntryKind.CustomerRecorded, "customer", new JsonObject { ["record"] = elsewhere });
        var page = Page();
        Assert.Contains("not here", page.Find(".note.error").TextContent, StringComparison.Ordinal);
        WriteDown(page, Name);
        Assert.NotEqual(elsewhere, Record);
        Assert.Equal(Name, Card!.Name);
        Assert.Empty(page.FindAll(".note.error"));
    }

    [Fact]
    public void A_damaged_record_goes_as_soon_as_another_is_named_in_its_place()
    {
        WriteDown(Page(), Name);
        var damaged = Record!;
        File.WriteAllText(Shop.Store.Personal.PathOf(damaged), "{\"name\": \"Quillon Feath");
        var page = Page();
        Assert.Contains("cannot be read", page.Find(".note.error").TextContent, StringComparison.Ordinal);
        WriteDown(page, "Quillon F.");
        Assert.NotEqual(damaged, Record);
        Assert.Equal([Record!], Shop.Store.Personal.All());
        Assert.Empty(page.FindAll(".note.error"));
    }

    [Theory]
    [InlineData(0, "None of the vehicle.")]
    [InlineData(1, "1 of the vehicle, kept with its record.")]
    [InlineData(2, "2 of the vehicle, kept with its record.")]
    public void Files_are_counted_in_a_sentence(int files, string says)
    {
        for (var n = 0; n < files; n++) Ben("bracken", EntryKind.PhotoTaken, "slots/tires/photos", new JsonObject { ["attachment"] = new string((char)('a' + n), 64) });
        var kept = KeptAbout.Of(BuildView.Of(Desk, "bracken")!, null);
        Assert.Contains(says, Encoding.UTF8.GetString(HandOut.Html(kept, DateTimeOffset.UnixEpoch)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_handed_out_holds_the_card_the_yes_and_the_entries_that_name_the_customer()
    {
        WriteDown(Page(), "<Featherby>");
        Ben("bracken", EntryKind.NoteWritten, "slots/tires/notes", new JsonObject { ["text"] = "ask <Featherby> first" });
        var kept = KeptAbout.Of(BuildView.Of(Desk, "bracken")!, Card);
        var json = JsonNode.Parse(HandOut.Json(kept, DateTimeOffset.UnixEpoch))!;
        Assert.Equal("<Featherby>", json["card"]!["name"]!.GetValue<string>());
        Assert.Contains("ask <Featherby> first", Assert.Single(json["entries"]!.AsArray())!["says"]!.GetValue<string>(), StringComparison.Ordinal);
        var html = Encoding.UTF8.GetString(HandOut.Html(kept, DateTimeOffset.UnixEpoch));
        Assert.Contains("&lt;Featherby&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<Featherby>", html, StringComparison.Ordinal);
    }
}
