using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage.Projections;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Tests;

public sealed class ProjectionTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    private static Fact Opened(int n, string title, int? after = null, string stream = "b1") =>
        Shop.Fact(n, EntryKind.BuildOpened, "build", $$"""{"title":"{{title}}"}""", after, stream);

    private static Fact Option(int n, string option, string title, int? after = null) =>
        Shop.Fact(n, EntryKind.OptionStated, $"slots/tires/options/{option}", $$"""{"title":"{{title}}"}""", after);

    private static Fact Corrected(Fact target, int n, string? payload, int after) =>
        target with { Id = Shop.Id(n), Corrects = target.Id, After = Shop.Id(after), Payload = payload is null ? null : JsonNode.Parse(payload) };

    [Fact]
    public void The_list_of_builds_follows_the_journal()
    {
        _shop.Append(Opened(1, "Grey hauler"), Shop.Noted(2));
        _shop.Append(Opened(3, "Green hauler", stream: "b0"), Shop.Fact(4, EntryKind.ShopOpened, "shop", "{}", stream: Fact.Shop));
        Assert.Equal([("b0", "Green hauler", 1L), ("b1", "Grey hauler", 2L)], _shop.Store.Builds().Select(b => (b.Id, b.Title, b.Entries)));
        var recorded = _shop.Journal.Store.Read("b1").Select(e => Instants.Text(e.Recorded)).ToList();
        Assert.Equal((recorded[0], recorded[1]), _shop.Store.Builds()[1] is var b ? (b.FirstRecorded, b.LastRecorded) : default);
    }

    [Fact]
    public void A_corrected_title_shows_and_a_voided_one_falls_back()
    {
        var option = Option(1, "at33", "Tall narrow tire");
        _shop.Append(option);
        _shop.Append(Corrected(option, 2, """{"title":"Tall wide tire"}""", 1));
        Assert.Equal("Tall wide tire", Assert.Single(_shop.Store.Search("tall")).Title);
        var second = Option(3, "at33", "Low tire", 2);
        _shop.Append(second);
        Assert.Equal("Low tire", Assert.Single(_shop.Store.Search("tire")).Title);
        _shop.Append(Corrected(second, 4, null, 3));
        Assert.Equal("Tall wide tire", Assert.Single(_shop.Store.Search("tire")).Title);
        _shop.Append(Corrected(option, 5, null, 4));
        Assert.Empty(_shop.Store.Search("tire"));
    }

    [Theory]
    [InlineData("tall", 2)]
    [InlineData("TALL nar", 1)]
    [InlineData("narrow tall", 1)]
    [InlineData("allow", 0)]
    [InlineData("", 0)]
    [InlineData("\" OR tall", 0)]
    [InlineData("tall -", 2)]
    [InlineData("Stream:b1", 0)]
    public void Search_takes_words_and_beginnings_of_words_and_no_query_language(string typed, int hits)
    {
        _shop.Append(Option(1, "at33", "Tall narrow tire"), Option(2, "mt35", "Tall wide tire"), Shop.Fact(3, EntryKind.SlotDefined, "slots/winch", """{"title":"Winch"}"""));
        Assert.Equal(hits, _shop.Store.Search(typed).Count);
    }

    [Fact]
    public void An_option_that_is_found_tells_its_item_and_its_build_without_either_being_opened()
    {
        _shop.Append(Opened(1, "Grey hauler"), Shop.Fact(2, EntryKind.SlotDefined, "slots/tires", """{"title":"Tires"}"""), Option(3, "at33", "Tall narrow rubber"));
        var hit = Assert.Single(_shop.Store.Search("rubber"));
        Assert.Equal(("Tall narrow rubber", "Grey hauler", "Tires", "tires", true), (hit.Title, hit.Build, hit.Item, hit.Slot, hit.IsOption));
        Assert.False(Assert.Single(_shop.Store.Search("tires")).IsOption);
    }

    [Fact]
    public void Rebuilding_gives_the_same_rows()
    {
        for (var n = 1; n <= 30; n++)
            _shop.Append(n % 3 == 0 ? Opened(n, $"Build {n}", stream: $"b{n}") : n % 3 == 1 ? Option(n, $"o{n}", $"Option {n}") : Shop.Noted(n, $"b{n % 4}"));
        var before = Rows();
        Assert.Equal(30, before.Sum(r => r.Split('|') is [_, _, var entries, _, _] ? int.Parse(entries) : 0));
        _shop.Tamper("DELETE FROM Builds; DELETE FROM Search");
        _shop.Store.Rebuild();
        Assert.Equal(before, Rows());
        _shop.Store.Rebuild();
        Assert.Equal(before, Rows());
    }

    private List<string> Rows() => [.. _shop.Query("SELECT * FROM Builds ORDER BY Id"), .. _shop.Query("SELECT * FROM Search ORDER BY Stream, Subject")];

    [Fact]
    public void A_new_version_is_rebuilt_on_opening_and_the_same_one_is_not()
    {
        _shop.Append(Shop.Noted(1), Shop.Noted(2));
        var first = new Counting(1);
        _shop.Open(new([first]));
        Assert.Equal((1, 2), (first.Cleared, first.Seen));
        var again = new Counting(1);
        _shop.Open(new([again]));
        Assert.Equal((0, 0), (again.Cleared, again.Seen));
        var raised = new Counting(2);
        _shop.Open(new([raised]));
        Assert.Equal((1, 2), (raised.Cleared, raised.Seen));
    }

    [Fact]
    public void A_projection_that_fails_takes_the_append_with_it()
    {
        var store = _shop.Open(new([new Counting(1) { FailsOn = Shop.Id(2) }]));
        store.Journal.Append([Shop.Noted(1)], Arrival.Online);
        Assert.Throws<InvalidOperationException>(() => store.Journal.Append([Shop.Noted(2)], Arrival.Online));
        Assert.Single(_shop.Journal.Store.Read("b1"));
    }

    private sealed class Counting(int version) : IProjection
    {
        public int Cleared { get; private set; }
        public int Seen { get; private set; }
        public Guid? FailsOn { get; init; }
        public string Name => "counting";
        public int Version => version;

        public void Apply(IReadOnlyList<Entry> entries, SqliteConnection db)
        {
            if (entries.Any(e => e.Fact.Id == FailsOn)) throw new InvalidOperationException();
            Seen += entries.Count;
        }

        public void Clear(SqliteConnection db) => Cleared++;
    }
}
