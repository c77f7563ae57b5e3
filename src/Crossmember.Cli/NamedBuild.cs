using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli;

/// <summary>BUILD on a command line: a file if one of that name exists, else the id of a stored build.</summary>
internal sealed record NamedBuild(string Name, OpenBuild Open, Comparing Comparing, bool IsFile)
{
    /// <summary>When the entry at a position was recorded; never for a file.</summary>
    public Func<long, DateTimeOffset?> Recorded { get; init; } = _ => null;

    /// <summary>Where the streams stood that a sheet was made from; a file has none.</summary>
    public (long Build, long Shop) PositionOf(Sheet sheet) => IsFile ? (0, 0) : (sheet.Build.Position, sheet.Shop.Position);

    public static Outcome With(string name, ShopAddress address, Terminal terminal, Func<NamedBuild, Outcome> work)
    {
        if (File.Exists(name)) return OfFile(name, work);
        if (Directory.Exists(name)) return Outcome.Faulty(name, "this is a folder", "name a build file, or the id of a stored build");
        if (!address.Exists) return Outcome.Faulty(name, "there is no such file, and nothing is stored yet", $"name a file, or import one first (records would be in {address})");
        using var shop = address.Open();
        if (shop.Shelf.Open(name) is not { } open)
            return Outcome.Faulty(name, "there is no such file and no stored build of this id", $"stored: {string.Join(", ", shop.Store.Builds().Select(b => b.Id))}");
        foreach (var u in open.State.Unreadable) terminal.Say($"{name}: open for reading only: {u}");
        foreach (var fault in open.State.Faults) terminal.Say($"{name}: {fault}");
        return work(new(name, open, shop.Comparing(open), IsFile: false) { Recorded = position => shop.Shelf.Recorded(name, position) });
    }

    private static Outcome OfFile(string name, Func<NamedBuild, Outcome> work)
    {
        var faults = new Faults();
        if (NamedFile.Read(name, faults) is not { } content || BuildFile.Read(content, Catalogue.Shipped, faults) is not { } file) return Outcome.Faulty(name, faults);
        var open = new OpenBuild(new(file.Build, [], [], []), Catalogue.Shipped);
        var fold = new StreamFold(Catalogue.Shipped.Table, Lifts.Current);
        StateThen Then(long position) => new(fold.Build(file.Id, (file.Journal?.Entries ?? []).Where(e => e.Sequence <= position)).Build, _ => file.Shop);
        return work(new(name, open, new(open, file.Shop, Then), IsFile: true));
    }
}
