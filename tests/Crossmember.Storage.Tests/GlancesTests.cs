using Crossmember.Builds.Journal;

namespace Crossmember.Storage.Tests;

/// <summary>What the lists remember of a build is told from what no longer holds.</summary>
public sealed class GlancesTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crossmember-glances-");
    private readonly ShopStore _store;

    public GlancesTests() => _store = ShopStore.Open(_folder.FullName, TimeProvider.System);

    public void Dispose()
    {
        _store.Dispose();
        _folder.Delete(recursive: true);
    }

    private void Open(string build, string title, Guid? after = null) => _store.Journal.Append(
        [new(FactIds.New(TimeProvider.System), build, "build.opened", 1, DateTimeOffset.UnixEpoch, "ana", "test", "build", after, null, null, new System.Text.Json.Nodes.JsonObject { ["title"] = title })], Arrival.Online);

    [Fact]
    public void Every_build_has_a_row_from_its_first_entry_and_the_shop_has_none()
    {
        Open("b", "Hauler");
        _store.Journal.Append([new(FactIds.New(TimeProvider.System), Fact.Shop, "shop.opened", 1, DateTimeOffset.UnixEpoch, "ana", "test", "shop", null, null, null, new System.Text.Json.Nodes.JsonObject { ["currency"] = "USD" })], Arrival.Online);
        var row = Assert.Single(_store.Glances.All("one"));
        Assert.Equal(("b", "Hauler", 1L, null), (row.Build, row.Title, row.Head, row.Content));
        Assert.False(row.IsOf(0));
    }

    [Fact]
    public void What_is_kept_holds_until_build_or_shop_move_on_or_another_program_asks()
    {
        Open("b", "Hauler");
        _store.Glances.Keep("b", 1, 0, "one", "{}");
        Assert.True(_store.Glances.All("one")[0].IsOf(0));
        Assert.False(_store.Glances.All("one")[0].IsOf(1));
        Assert.Null(_store.Glances.All("two")[0].Content);
        Open("b", "Hauler, renamed", _store.Journal.Store.Read("b")[0].Fact.Id);
        Assert.False(_store.Glances.All("one")[0].IsOf(0));
        Assert.Equal("Hauler, renamed", _store.Glances.All("one")[0].Title);
    }

    [Fact]
    public void One_that_was_worked_out_further_along_is_not_put_back()
    {
        Open("b", "Hauler");
        _store.Glances.Keep("b", 9, 4, "one", "later");
        _store.Glances.Keep("b", 8, 4, "one", "earlier");
        Assert.Equal("later", _store.Glances.All("one")[0].Content);
        _store.Glances.Keep("b", 1, 0, "two", "another program's");
        Assert.Equal("another program's", _store.Glances.All("two")[0].Content);
    }
}
