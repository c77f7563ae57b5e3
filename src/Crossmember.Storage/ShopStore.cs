using System.Text;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Projections;
using Crossmember.Storage.Rows;
using Crossmember.Storage.Verification;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage;

/// <summary>Where a shop's data lies.</summary>
/// <param name="PersonalFolder">What can be erased lies here, and nowhere else.</param>
public sealed record ShopPlace(string ConnectionString, string AttachmentsFolder, string PersonalFolder)
{
    /// <summary>Database, attachments and personal records in one folder.</summary>
    public static ShopPlace Folder(string folder) => Beside($"Data Source={Path.Combine(folder, "shop.db")}", folder);

    /// <summary>A database anywhere; attachments and personal records in a folder.</summary>
    public static ShopPlace Beside(string connection, string folder) => new(connection, Path.Combine(folder, "attachments"), Path.Combine(folder, "personal"));
}

/// <summary>Everything a shop keeps, opened at one place: what programs compose from.</summary>
public sealed class ShopStore : IDisposable
{
    private readonly ShopDatabase _database;
    private readonly ProjectionSet _projections;
    private readonly Verifier _verifier;

    private ShopStore(ShopPlace place, TimeProvider clock, IAppendRules? rules, ProjectionSet projections)
    {
        _database = new(place.ConnectionString);
        _projections = projections;
        Attachments = new(place.AttachmentsFolder, _database);
        Personal = new(place.PersonalFolder);
        Snapshots = new(_database);
        Glances = new(_database);
        Journal = new(new SqliteJournalStore(_database, projections), clock, rules);
        _verifier = new(_database, Attachments);
    }

    public Journal Journal { get; }

    public Attachments Attachments { get; }

    public PersonalRecords Personal { get; }

    public Snapshots Snapshots { get; }

    public Glances Glances { get; }

    /// <summary>Opens a shop in a folder, making it if it is not there.</summary>
    public static ShopStore Open(string dataFolder, TimeProvider clock, IAppendRules? rules = null)
    {
        Directory.CreateDirectory(dataFolder);
        return Open(ShopPlace.Folder(dataFolder), clock, rules);
    }

    /// <summary>Opens a shop: brings its tables up to date, then projections that were written in another version.</summary>
    /// <exception cref="InvalidDataException">A newer program wrote the database.</exception>
    public static ShopStore Open(ShopPlace place, TimeProvider clock, IAppendRules? rules = null, ProjectionSet? projections = null)
    {
        var store = new ShopStore(place, clock, rules, projections ?? ProjectionSet.Standard);
        store._database.Migrate();
        using var db = store._database.Open();
        store._projections.BringUpToDate(db);
        return store;
    }

    /// <summary>The builds of the shop by id.</summary>
    public IReadOnlyList<BuildRow> Builds()
    {
        using var db = _database.Context();
        return [.. db.Builds.AsNoTracking().OrderBy(b => b.Id)];
    }

    /// <summary>Slots and options whose title has the words typed.</summary>
    public IReadOnlyList<TitleHit> Search(string typed, int most = 50)
    {
        using var db = _database.Open();
        return TitleSearch.Find(db, typed, most);
    }

    /// <summary>Writes all projections anew from the journal.</summary>
    public void Rebuild()
    {
        using var db = _database.Open();
        _projections.Rebuild(db);
    }

    /// <summary>Whatever is not as it was written: database, chains, held facts, attachments; against heads kept elsewhere, if given.</summary>
    public IReadOnlyList<Problem> Verify(HeadsFile? kept = null) => _verifier.Verify(kept);

    /// <summary>What does not fit together outside the journal, and breaks nothing in it: personal records that are missing or that no build names.</summary>
    public IReadOnlyList<Problem> Remarks()
    {
        using var db = _database.Open();
        return [.. PersonalCheck.Check(db, Personal)];
    }

    /// <summary>Where the streams stand, to be kept away from the database.</summary>
    public HeadsFile Heads() => _verifier.Heads();

    /// <summary>Verifies against a heads file if there is one, and when all is well writes where the streams stand now.</summary>
    public IReadOnlyList<Problem> VerifyAgainst(string headsFile, Faults faults)
    {
        var kept = File.Exists(headsFile) ? HeadsFile.Read(File.ReadAllBytes(headsFile), faults) : null;
        if (faults.Any) return [];
        // Taken before the check: what is appended meanwhile belongs to the next one.
        var heads = Heads();
        var problems = Verify(kept);
        if (problems.Count == 0) File.WriteAllText(headsFile, heads.Write() + "\n", new UTF8Encoding(false));
        return problems;
    }

    public void Dispose() => _database.Dispose();
}
