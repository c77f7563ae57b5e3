using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Verification;

namespace Crossmember.Storage.Tests;

public sealed class VerifyTests : IDisposable
{
    private readonly Shop _shop = new();

    public VerifyTests() => _shop.Append(Shop.Graded(1), Shop.Noted(2), Shop.Graded(3, after: 1), Shop.Noted(4, "b2"));

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void An_untouched_shop_has_no_problem() => Assert.Empty(_shop.Store.Verify());

    public static TheoryData<string, long> Cells
    {
        get
        {
            var data = new TheoryData<string, long>();
            foreach (var column in new[] { "Stream", "FactId", "Kind", "Subject", "Fact", "Recorded", "Previous", "Hash" })
                foreach (var sequence in new[] { 1L, 2L, 3L }) data.Add(column, sequence);
            return data;
        }
    }

    /// <summary>Every byte of every cell, one at a time: each change is found, and named by stream, sequence and column.</summary>
    [Theory]
    [MemberData(nameof(Cells))]
    public void One_byte_altered_in_any_column_is_found_and_named(string column, long sequence)
    {
        var bytes = Convert.FromHexString(Assert.Single(_shop.Query($"SELECT hex({column}) FROM Entries WHERE Stream = 'b1' AND Sequence = {sequence}")));
        var blob = column is "Previous" or "Hash";
        for (var i = 0; i < bytes.Length; i += bytes.Length > 64 ? 7 : 3)
        {
            Put(column, sequence, [.. bytes[..i], (byte)(bytes[i] ^ 1), .. bytes[(i + 1)..]], blob);
            var problems = _shop.Store.Verify();
            Assert.Contains(problems, p => p.Sequence == sequence && (p.Item == column || p.Item == "Fact or Recorded" && column is "Fact" or "Recorded"));
            Put(column, sequence, bytes, blob, altered: column == "Stream" ? i : -1);
            Assert.Empty(_shop.Store.Verify());
        }
    }

    private void Put(string column, long sequence, byte[] bytes, bool blob, int altered = -1)
    {
        var value = blob ? $"x'{Convert.ToHexString(bytes)}'" : $"CAST(x'{Convert.ToHexString(bytes)}' AS TEXT)";
        // An altered stream is no longer found under its own name.
        var where = altered < 0 ? "Stream = 'b1'" : "Stream NOT IN ('b1', 'b2')";
        Assert.Equal(1, _shop.Tamper($"UPDATE Entries SET {column} = {value} WHERE {where} AND Sequence = {sequence}"));
    }

    [Theory]
    [InlineData(1, 9)]
    [InlineData(2, 9)]
    [InlineData(3, 4)]
    public void An_altered_sequence_is_found(long from, long to)
    {
        _shop.Tamper($"UPDATE Entries SET Sequence = {to} WHERE Stream = 'b1' AND Sequence = {from}");
        Assert.Contains(_shop.Store.Verify(), p => p.Where == "b1" && p.Item == "Sequence" && p.Sequence == from);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_missing_entry_is_named(long sequence)
    {
        _shop.Tamper($"DELETE FROM Entries WHERE Stream = 'b1' AND Sequence = {sequence}");
        Assert.Contains(_shop.Store.Verify(), p => p.Where == "b1" && p.Item == "Sequence" && p.Sequence == sequence);
    }

    [Fact]
    public void A_missing_last_entry_shows_at_the_head()
    {
        _shop.Tamper("DELETE FROM Entries WHERE Stream = 'b1' AND Sequence = 3");
        Assert.Equal("b1/3 Heads: the head says 3, but the last entry here is 2", Assert.Single(_shop.Store.Verify()).ToString());
        _shop.Tamper("DELETE FROM Entries WHERE Stream = 'b2'");
        Assert.Contains(_shop.Store.Verify(), p => p.Where == "b2");
    }

    [Fact]
    public void A_last_entry_cut_off_together_with_its_head_shows_in_the_heads_file()
    {
        var file = Path.Combine(_shop.Folder, "heads.json");
        Assert.Empty(_shop.Store.VerifyAgainst(file, new Faults()));
        CutOffTheLast();
        Assert.Empty(_shop.Store.Verify());
        var problem = Assert.Single(_shop.Store.VerifyAgainst(file, new Faults()));
        Assert.Equal(("b1", 3L), (problem.Where, problem.Sequence));
        // Another entry in its place has another hash; and a bad outcome never overwrites the file.
        _shop.Append(Shop.Graded(9, after: 1));
        Assert.Equal(("b1", 3L, "Hash"), Assert.Single(_shop.Store.VerifyAgainst(file, new Faults())) is var p ? (p.Where, p.Sequence, p.Item) : default);
    }

    private void CutOffTheLast()
    {
        _shop.Tamper("DELETE FROM Entries WHERE Stream = 'b1' AND Sequence = 3");
        _shop.Tamper("UPDATE Heads SET Sequence = 2, Hash = (SELECT Hash FROM Entries WHERE Stream = 'b1' AND Sequence = 2) WHERE Stream = 'b1'");
    }

    [Theory]
    [InlineData("UPDATE Heads SET Hash = zeroblob(32) WHERE Stream = 'b1'", "b1")]
    [InlineData("UPDATE Heads SET Sequence = 2 WHERE Stream = 'b1'", "b1")]
    [InlineData("DELETE FROM Heads WHERE Stream = 'b2'", "b2")]
    [InlineData("UPDATE Entries SET Fact = 'x' WHERE Stream = 'b2'", "b2")]
    [InlineData("UPDATE Entries SET Recorded = 7 WHERE Stream = 'b2'", "b2")]
    public void Other_damage_is_found_too(string sql, string where)
    {
        _shop.Tamper(sql);
        Assert.All(_shop.Store.Verify(), p => Assert.Equal(where, p.Where));
        Assert.NotEmpty(_shop.Store.Verify());
    }

    [Fact]
    public void Guards_that_were_taken_away_are_missed()
    {
        _shop.Tamper("DROP TRIGGER EntriesAreNeverRemoved", guardsDown: false);
        Assert.Equal("EntriesAreNeverRemoved", Assert.Single(_shop.Store.Verify()).Item);
    }

    [Theory]
    [InlineData("Stream = 'b9'")]
    [InlineData("Batch = 'x'")]
    [InlineData("FactId = 'x'")]
    [InlineData("Fact = 'x'")]
    [InlineData("ReleasedAs = 'x'")]
    public void Altered_held_facts_are_found(string change)
    {
        _shop.Journal.Append([Shop.Graded(7)], Arrival.Queue);
        Assert.Empty(_shop.Store.Verify());
        _shop.Tamper($"UPDATE Held SET {change}");
        Assert.Equal("held", Assert.Single(_shop.Store.Verify()).Where);
    }

    [Fact]
    public void A_heads_file_reads_back_and_a_broken_one_is_named()
    {
        var heads = _shop.Store.Heads();
        var read = HeadsFile.Read(System.Text.Encoding.UTF8.GetBytes(heads.Write()), new Faults())!;
        Assert.Equal(heads.Write(), read.Write());
        Assert.Equal(3, read.Heads["b1"].Sequence);
        var faults = new Faults();
        Assert.Null(HeadsFile.Read("""{"format":"crossmember.heads/2","heads":{"b1":{"sequence":1,"hash":"zz"}}}"""u8.ToArray(), faults));
        Assert.Equal(["/format", "/heads/b1/hash"], faults.List.Select(f => f.Path));
        var file = Path.Combine(_shop.Folder, "heads.json");
        File.WriteAllText(file, "{");
        Assert.Empty(_shop.Store.VerifyAgainst(file, faults));
        Assert.Equal(3, faults.List.Count);
        Assert.Equal("{", File.ReadAllText(file));
    }
}
