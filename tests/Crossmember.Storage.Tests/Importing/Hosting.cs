using System.Security.Cryptography;
using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Tests.Importing;

/// <summary>Hands files to a real shop and looks at what became of it.</summary>
internal sealed class Hosting : IDisposable
{
    private readonly List<(OpenShop Shop, string Folder)> _shops = [];
    private int _taken;

    public int Accepted { get; private set; }

    public int Refused { get; private set; }

    public int RefusedByTheStore { get; private set; }

    /// <summary>A shop that is never full: after some builds it is another.</summary>
    public (OpenShop Shop, string Folder) Here => _taken++ % 40 == 0 ? Opened() : _shops[^1];

    /// <summary>Either it is taken in, and comes out and in again the same; or it is refused with a reason and a place, and the shop is as it was.</summary>
    public void Offer(byte[] file, string what)
    {
        try
        {
            var faults = new Faults();
            if (BuildFile.Read(file, Catalogue.Shipped, faults) is not { } opened)
            {
                AssertLocated(faults, what);
                Refused++;
                return;
            }
            Assert.Empty(faults.List);
            Work(opened);
            Take(opened, what);
        }
        catch (Exception e) when (e is not Xunit.Sdk.IAssertionException)
        {
            Assert.Fail($"{what}: {e}\n{Encoding.UTF8.GetString(file.AsSpan(0, Math.Min(file.Length, 20_000)))}");
        }
    }

    private void Take(OpenedFile opened, string what)
    {
        var (shop, folder) = Here;
        var (before, faults) = (Print(folder), new Faults());
        if (shop.Importing().Import(opened, null, faults) is not { } imported)
        {
            AssertLocated(faults, what);
            Assert.True(before == Print(folder), $"{what}: refused ({faults.List[0]}), but the shop has changed");
            RefusedByTheStore++;
            return;
        }
        Assert.Empty(faults.List);
        Accepted++;
        var first = shop.Exporting.Export(imported.Id, faults);
        Assert.True(first is not null, $"{what}: {string.Join('\n', faults.List)}");
        var (other, otherFolder) = Opened(aside: true);
        var again = BuildFile.Read(first!, Catalogue.Shipped, faults);
        Assert.True(again is not null, $"{what}: the export does not open: {string.Join('\n', faults.List)}\n{Encoding.UTF8.GetString(first!)}");
        Assert.True(other.Importing().Import(again!, null, faults) is not null, $"{what}: the export is not taken in: {string.Join('\n', faults.List)}");
        Assert.Equal(first, other.Exporting.Export(imported.Id, faults));
        other.Dispose();
        Directory.Delete(otherFolder, true);
    }

    /// <summary>Every scenario is worked out, written, and compared with the build as found: nothing a file says may break that.</summary>
    private static void Work(OpenedFile opened)
    {
        var plan = new EvaluationPlan(Catalogue.Shipped, opened.Build);
        var found = plan.Evaluate(opened.Build, opened.Shop, (Scenario?)null);
        foreach (var scenario in opened.Build.Scenarios.Values)
        {
            var sheet = plan.Evaluate(opened.Build, opened.Shop, scenario);
            Assert.NotEmpty(SheetJson.Of(sheet, (0, 0)).ToJsonString());
            Assert.NotEmpty(RippleJson.Of(Ripple.Between(found, sheet)).ToJsonString());
        }
    }

    private static void AssertLocated(Faults faults, string what)
    {
        Assert.True(faults.Any, $"{what}: refused without a word");
        Assert.All(faults.List, f => Assert.True(f.Wrong.Length > 0 && f.Right.Length > 0, $"{what}: {f}"));
    }

    private (OpenShop Shop, string Folder) Opened(bool aside = false)
    {
        var folder = Directory.CreateTempSubdirectory("crossmember-hostile").FullName;
        var shop = (OpenShop.Open(folder, TimeProvider.System), folder);
        if (!aside) _shops.Add(shop);
        return shop;
    }

    /// <summary>Every row of every table and every attached file, as one hash.</summary>
    private static string Print(string folder)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var db = new SqliteConnection($"Data Source={Path.Combine(folder, "shop.db")};Pooling=False");
        db.Open();
        foreach (var table in Rows(db, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name"))
            foreach (var row in Rows(db, $"SELECT * FROM \"{table}\""))
                hash.AppendData(Encoding.UTF8.GetBytes($"{table}|{row}\n"));
        var attachments = Path.Combine(folder, "attachments");
        string[] files = Directory.Exists(attachments) ? Directory.GetFiles(attachments, "*", SearchOption.AllDirectories) : [];
        foreach (var file in files.Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(file + "\n"));
            hash.AppendData(File.ReadAllBytes(file));
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static List<string> Rows(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var list = new List<string>();
        while (reader.Read())
            list.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetValue(i) is byte[] b ? Convert.ToHexStringLower(b) : reader.GetValue(i).ToString())));
        return list;
    }

    public void Dispose()
    {
        foreach (var (shop, folder) in _shops)
        {
            shop.Dispose();
            Directory.Delete(folder, true);
        }
    }
}
