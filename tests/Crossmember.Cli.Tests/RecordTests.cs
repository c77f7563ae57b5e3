using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage;

namespace Crossmember.Cli.Tests;

/// <summary>What the command line says of builds that carry more than a sheet: an approval, entries of a later program, a named database.</summary>
public sealed class RecordTests : IDisposable
{
    private readonly Place _place = new();

    public RecordTests()
    {
        _place.Run("demo", "--out", _place.Folder);
        _place.Run("import", Path.Combine(_place.Folder, "packhorse.json"));
    }

    [Fact]
    public void What_was_approved_stays_as_it_was_then_while_the_build_goes_on()
    {
        Approve("asked");
        Assert.Empty(Rows("approved", "asked"));
        Restate("wheel.*.*.tire.size", "31x10.50R15LT");
        Assert.Empty(Rows("approved", "asked"));
        Assert.Contains(Rows("approved@", "approved"), r => (string?)r!["id"] == "axle.rear.tire-diameter");
        var then = _place.Run("check", "packhorse", "--scenario", "approved@", "--json").Json;
        Assert.Equal("33x10.50R15LT", (string?)then["parameters"]!["wheel.rear.left.tire.size"]!["value"]);
        var now = _place.Run("check", "packhorse", "--scenario", "approved", "--json").Json;
        Assert.Equal("31x10.50R15LT", (string?)now["parameters"]!["wheel.rear.left.tire.size"]!["value"]);
        Assert.True((int)then["position"]!["build"]! < (int)now["position"]!["build"]!);
    }

    [Fact]
    public void An_exported_journal_tells_the_same_of_its_approval_as_the_store()
    {
        Approve("asked");
        Restate("wheel.*.*.tire.size", "31x10.50R15LT");
        var file = Path.Combine(_place.Folder, "journal.json");
        Assert.Equal(0, _place.Run("export", "packhorse", "--out", file).Code);
        Assert.Equal(_place.Run("ripple", "packhorse", "--from", "approved@", "--to", "working", "--json").Out,
            _place.Run("ripple", file, "--from", "approved@", "--to", "working", "--json").Out);
    }

    [Fact]
    public void Entries_of_a_later_program_leave_the_build_readable_and_are_named()
    {
        var before = _place.Run("check", "packhorse", "--json");
        using (var shop = OpenShop.Open(_place.Data, TimeProvider.System))
        {
            var fact = new Fact(FactIds.New(TimeProvider.System), "packhorse", "mood.noted", 3, DateTimeOffset.UnixEpoch, "later", "bench", "mood", null, null, null, new JsonObject { ["mood"] = "good" });
            shop.Store.Journal.Store.Transact(tx =>
            {
                tx.Append([Stamp.On(tx.Head("packhorse"), fact, FactText.Write(fact), DateTimeOffset.UnixEpoch)]);
                return 0;
            });
        }
        var after = _place.Run("check", "packhorse", "--json");
        Assert.Contains("mood.noted", after.Error, StringComparison.Ordinal);
        Assert.Contains("schema 3", after.Error, StringComparison.Ordinal);
        Assert.Equal(before.Code, after.Code);
        Assert.Equal(before.Json["totals"]!.ToJsonString(), after.Json["totals"]!.ToJsonString());
        Assert.Contains("mood.noted", _place.Run("ripple", "packhorse", "--from", "asked", "--to", "working").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_database_named_by_its_connection_is_the_same_store()
    {
        var connection = $"Data Source={Path.Combine(_place.Data, "shop.db")}";
        using var stdout = new StringWriter();
        var code = Program.Run(["check", "packhorse", "--database", connection, "--json"], stdout, TextWriter.Null, Stream.Null);
        var used = _place.Run("check", "packhorse", "--json");
        Assert.Equal((used.Code, used.Out), (code, stdout.ToString()));
    }

    [Fact]
    public void Nothing_approved_is_a_fault_that_lists_what_could_be_named()
    {
        var used = _place.Run("ripple", "packhorse", "--from", "approved@", "--to", "working");
        Assert.Equal(2, used.Code);
        Assert.Contains("nothing is approved yet; one of: as-found, asked, ", used.Error, StringComparison.Ordinal);
    }

    public void Dispose() => _place.Dispose();

    private JsonArray Rows(string from, string to) => _place.Run("ripple", "packhorse", "--from", from, "--to", to, "--json").Json["rows"]!.AsArray();

    private void Approve(string scenario) => Write(shop =>
    {
        var open = shop.Shelf.Open("packhorse")!;
        return shop.Deciding.Approve(open, open.Sheet(scenario, shop.Shelf.Shop())!, "the customer, by telephone", shop.Deciding.LastOn("packhorse", "approved"), "lead", "bench");
    });

    /// <summary>A value noted on the fitted option: it lies above what the option's body says.</summary>
    private void Restate(string pattern, string value) => Write(shop =>
    {
        var subject = $"slots/tires/options/at33/values/{pattern}";
        return new(FactIds.New(TimeProvider.System), "packhorse", EntryKind.ValueNoted.Name, EntryKind.ValueNoted.Schema, DateTimeOffset.UnixEpoch, "lead", "bench", subject,
            shop.Deciding.LastOn("packhorse", subject), null, null, new JsonObject { ["value"] = value, ["basis"] = "measured" });
    });

    private void Write(Func<OpenShop, Fact> make)
    {
        using var shop = OpenShop.Open(_place.Data, TimeProvider.System);
        Assert.All(shop.Store.Journal.Append([make(shop)], Arrival.Online), o => Assert.IsType<AppendOutcome.Appended>(o));
    }
}
