namespace Crossmember.Storage.Tests;

public sealed class SnapshotsTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void The_newest_snapshot_not_after_a_position_is_found()
    {
        var snapshots = _shop.Store.Snapshots;
        snapshots.Keep("b1", 10, 1, [1]);
        snapshots.Keep("b1", 20, 1, [2]);
        snapshots.Keep("b2", 15, 1, [3]);
        Assert.Null(snapshots.Latest("b1", 9, 1));
        Assert.Equal((10L, (byte)1), snapshots.Latest("b1", 19, 1) is var (at, content) ? (at, content[0]) : default);
        Assert.Equal(20, snapshots.Latest("b1", long.MaxValue, 1)!.Value.Sequence);
        snapshots.Keep("b1", 20, 1, [9]);
        Assert.Equal([9], snapshots.Latest("b1", 20, 1)!.Value.Content);
    }

    [Fact]
    public void Another_version_of_the_fold_never_sees_an_old_snapshot()
    {
        _shop.Store.Snapshots.Keep("b1", 10, 1, [1]);
        Assert.Null(_shop.Store.Snapshots.Latest("b1", 10, 2));
        _shop.Store.Snapshots.Keep("b1", 10, 2, [2]);
        Assert.Null(_shop.Store.Snapshots.Latest("b1", 10, 1));
    }
}
