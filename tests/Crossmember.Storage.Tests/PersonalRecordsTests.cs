using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Tests.Workshop;

namespace Crossmember.Storage.Tests;

/// <summary>What can be erased: it lies in one file, and nowhere else before or after.</summary>
public sealed class PersonalRecordsTests : IDisposable
{
    private static readonly CustomerCard s_card = new("Quillon Featherby", "+1 555 0100", "quillon@example.org", "9 Invented Lane", "likes mornings");

    private readonly string _folder = Directory.CreateTempSubdirectory("crossmember-personal-").FullName;
    private readonly PersonalRecords _records;
    private readonly string _id = PersonalRecords.NewId();

    public PersonalRecordsTests() => _records = new(Path.Combine(_folder, "personal"));

    public void Dispose() => Directory.Delete(_folder, true);

    private void Keep(CustomerCard card) => Assert.True(_records.Keep(_id, card, new()));

    private CustomerCard? Read(out Faults faults) => _records.Read(_id, faults = new());

    [Fact]
    public void A_card_is_kept_whole_and_read_back()
    {
        Keep(s_card);
        Assert.Equal(s_card, Read(out var faults));
        Assert.False(faults.Any);
        Assert.Equal([_id], _records.All());
    }

    [Fact]
    public void An_id_is_a_random_uuid_that_tells_nothing()
    {
        Assert.Equal(4, Guid.Parse(_id).Version); // RFC 9562, section 5.4: the version of random ids
        Assert.NotEqual(PersonalRecords.NewId(), _id);
    }

    [Fact]
    public void A_change_leaves_no_older_wording_in_any_file()
    {
        Keep(s_card);
        Keep(s_card with { Name = "Somebody Else" });
        Assert.Equal("Somebody Else", Read(out _)!.Name);
        Assert.Empty(Holding(_folder, "Featherby"));
        Assert.Single(Directory.GetFiles(_folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void The_old_wording_is_overwritten_where_it_lay_before_it_is_let_go()
    {
        if (OperatingSystem.IsWindows()) return; // an open file cannot be removed there
        Keep(s_card);
        using var underneath = File.Open(_records.PathOf(_id), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        Assert.True(_records.Erase(_id, new()));
        var left = new byte[underneath.Length];
        underneath.ReadExactly(left);
        Assert.All(left, b => Assert.Equal(0, b));
        Assert.NotEmpty(left);
    }

    [Fact]
    public void What_is_erased_is_gone_and_erasing_twice_is_no_fault()
    {
        Keep(s_card);
        Assert.True(_records.Erase(_id, new()));
        Assert.True(_records.Erase(_id, new()));
        Assert.Null(Read(out var faults));
        Assert.Contains("not here", faults.List[0].Wrong, StringComparison.Ordinal);
        Assert.Empty(_records.All());
    }

    [Fact]
    public void Nobody_but_the_owner_may_read_it()
    {
        if (OperatingSystem.IsWindows()) return; // rights are told otherwise there
        Keep(s_card);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_records.PathOf(_id)));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(_records.PathOf(_id))!));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"format\":\"crossmember.customer/2\",\"name\":\"x\",\"phone\":\"\",\"mail\":\"\",\"address\":\"\",\"notes\":\"\"}")]
    [InlineData("{\"format\":\"crossmember.customer/1\",\"name\":7}")]
    [InlineData("\0\0\0\0\0\0")]
    public void Unreadable_content_is_a_fault_and_no_exception(string content)
    {
        Keep(s_card);
        File.WriteAllText(_records.PathOf(_id), content);
        Assert.Null(Read(out var faults));
        Assert.Contains("cannot be read", Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_byte_of_damage_is_a_card_or_a_fault()
    {
        Keep(s_card);
        var whole = File.ReadAllBytes(_records.PathOf(_id));
        for (var i = 0; i < whole.Length; i++)
        {
            File.WriteAllBytes(_records.PathOf(_id), [.. whole[..i], (byte)(whole[i] ^ 0x80), .. whole[(i + 1)..]]);
            Assert.True(Read(out var faults) is not null || faults.Any);
        }
    }

    [Fact]
    public void A_change_that_was_cut_off_after_it_was_whole_stands_and_an_unfinished_one_never_was()
    {
        Keep(s_card);
        var old = File.ReadAllBytes(_records.PathOf(_id));
        Keep(s_card with { Name = "Newer" });
        var fresh = File.ReadAllBytes(_records.PathOf(_id));
        File.WriteAllBytes(_records.PathOf(_id), new byte[old.Length]);
        File.WriteAllBytes(_records.PathOf(_id) + ".new", fresh);
        Assert.Equal("Newer", Read(out _)!.Name);
        File.WriteAllBytes(_records.PathOf(_id) + ".new", old[..20]);
        Assert.Equal("Newer", Read(out _)!.Name);
        Assert.Equal([_id], Directory.GetFiles(Path.GetDirectoryName(_records.PathOf(_id))!).Select(f => Path.GetFileName(f)));
    }

    [Theory]
    [InlineData("../shop")]
    [InlineData("name of somebody")]
    public void Only_an_id_names_a_record(string record)
    {
        var faults = new Faults();
        Assert.False(_records.Keep(record, s_card, faults));
        Assert.Null(_records.Read(record, faults));
        Assert.Equal(2, faults.Count);
        Assert.False(Directory.Exists(Path.Combine(_folder, "personal")));
    }

    [Fact]
    public void What_does_not_fit_a_card_is_told_field_by_field()
    {
        var faults = new Faults();
        Assert.False(_records.Keep(_id, new(" ", "", new('m', 201), "", new('n', 4001)), faults));
        Assert.Equal(["name", "mail", "notes"], faults.List.Select(f => f.Path));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_a_fault()
    {
        File.WriteAllText(Path.Combine(_folder, "personal"), "a file where the folder should be");
        var faults = new Faults();
        Assert.False(_records.Keep(_id, s_card, faults));
        Assert.Contains("could not be reached", Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
    }

    /// <summary>Every byte of the data folder, of the export and of the snapshots is searched for the name, the phone and the mail.</summary>
    [Fact]
    public void Nothing_of_it_is_in_the_database_the_journal_an_export_or_a_snapshot_before_or_after()
    {
        using var shop = new ShopWithABuild();
        var by = new Speaker("lead", "test");
        var personal = shop.Shop.Store.Personal;
        Assert.True(personal.Keep(_id, s_card, new()));
        var recorded = shop.Shop.Stating.Say("hauler", EntryKind.CustomerRecorded, "customer", new JsonObject { ["record"] = _id }, null, by);
        Assert.IsType<AppendOutcome.Appended>(shop.Append(recorded));
        // Enough entries for a snapshot, which holds sequences and no words.
        for (var i = 0; i < 510; i++) Assert.IsType<AppendOutcome.Appended>(shop.Say("note.written", "slots/tires/notes", new JsonObject { ["text"] = $"note {i}" }));
        Assert.Equal(_id, shop.Open().Build.Customer);
        var file = Path.Combine(_folder, "hauler.zip");
        File.WriteAllBytes(file, shop.Export());

        foreach (var word in new[] { "Featherby", "555 0100", "quillon@example.org" })
        {
            Assert.Equal([personal.PathOf(_id)], Holding(shop.Folder, word));
            Assert.Empty(Holding(_folder, word));
        }
        Assert.IsType<AppendOutcome.Appended>(shop.Append(shop.Shop.Stating.Say("hauler", EntryKind.CustomerErased, "customer", new JsonObject(), recorded.Id, by)));
        Assert.True(personal.Erase(_id, new()));
        Assert.Null(shop.Open().Build.Customer);
        foreach (var word in new[] { "Featherby", "555 0100", "quillon@example.org" }) Assert.Empty(Holding(shop.Folder, word));
        Assert.Empty(shop.Shop.Store.Verify());
        Assert.Empty(shop.Shop.Store.Remarks());
    }

    [Fact]
    public void A_missing_record_and_one_that_nobody_names_are_remarks_and_no_problems()
    {
        using var shop = new ShopWithABuild();
        var personal = shop.Shop.Store.Personal;
        Assert.IsType<AppendOutcome.Appended>(shop.Say("customer.recorded", "customer", new JsonObject { ["record"] = _id }));
        Assert.Contains("of 'hauler' is missing", Assert.Single(shop.Shop.Store.Remarks()).What, StringComparison.Ordinal);
        Assert.True(personal.Keep(_id, s_card, new()));
        Assert.Empty(shop.Shop.Store.Remarks());
        File.WriteAllText(personal.PathOf(_id), "{");
        Assert.Contains("cannot be read", Assert.Single(shop.Shop.Store.Remarks()).What, StringComparison.Ordinal);
        Assert.True(personal.Keep(_id, s_card, new()));
        Assert.IsType<AppendOutcome.Appended>(shop.Say("customer.erased", "customer", new JsonObject()));
        Assert.Contains("no build names", Assert.Single(shop.Shop.Store.Remarks()).What, StringComparison.Ordinal);
        Assert.Empty(shop.Shop.Store.Verify());
    }

    [Fact]
    public void A_price_in_another_currency_than_the_books_is_refused_before_it_could_spoil_a_sum()
    {
        using var shop = new ShopWithABuild();
        var body = JsonNode.Parse("""{"class":"replace","originality":0.5,"prices":[{"id":"a","count":1,"each":"10.00 EUR","category":"parts"}]}""");
        var refused = Assert.IsType<AppendOutcome.Refused>(shop.Say("option.stated", "slots/axle.rear/options/foreign", body));
        Assert.Contains("books in USD", refused.Fault.Right, StringComparison.Ordinal);
    }

    private static List<string> Holding(string folder, string word)
    {
        var sought = Encoding.UTF8.GetBytes(word);
        return [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Where(f => Shared(f).AsSpan().IndexOf(sought) >= 0)];
    }

    private static byte[] Shared(string file)
    {
        using var stream = File.Open(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
