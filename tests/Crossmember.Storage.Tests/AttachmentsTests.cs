using System.Text;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Tests;

public sealed class AttachmentsTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    private Attachments Attachments => _shop.Store.Attachments;

    /// <summary>FIPS 180-2 (August 2002), appendix B.1: SHA-256 of "abc".</summary>
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private Rows.AttachmentRow? Add(string content, string name = "tire.jpg", Faults? faults = null) =>
        Attachments.Add(new MemoryStream(Encoding.UTF8.GetBytes(content)), "image/jpeg", name, faults ?? new());

    [Fact]
    public void A_file_lies_under_the_hash_of_its_content_and_comes_back()
    {
        var row = Add("abc")!;
        Assert.Equal((HashOfAbc, 3L, "image/jpeg", "tire.jpg"), (row.Hash, row.Length, row.MediaType, row.Name));
        Assert.Equal(Path.Combine(_shop.Folder, "attachments", "ba", HashOfAbc), Attachments.PathOf(HashOfAbc));
        using var content = new StreamReader(Attachments.Open(HashOfAbc, new Faults())!);
        Assert.Equal("abc", content.ReadToEnd());
        Assert.Empty(_shop.Store.Verify());
    }

    [Fact]
    public void The_same_content_is_kept_once_under_its_first_name()
    {
        Add("abc");
        Assert.Equal("tire.jpg", Add("abc", "other.jpg")!.Name);
        Assert.Single(Directory.EnumerateFiles(Path.Combine(_shop.Folder, "attachments"), "*", SearchOption.AllDirectories));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void One_byte_altered_is_found_and_named_and_never_given_out(int at)
    {
        var path = Attachments.PathOf(Add("abc")!.Hash);
        var bytes = File.ReadAllBytes(path);
        bytes[at] ^= 1;
        File.WriteAllBytes(path, bytes);
        Damaged("no longer has");
    }

    [Fact]
    public void A_shortened_file_is_found()
    {
        File.WriteAllText(Attachments.PathOf(Add("abc")!.Hash), "ab");
        Damaged("bytes");
    }

    [Fact]
    public void A_missing_file_is_found()
    {
        File.Delete(Attachments.PathOf(Add("abc")!.Hash));
        Damaged("missing");
    }

    [Fact]
    public void An_altered_index_is_found()
    {
        Add("abc");
        _shop.Tamper("UPDATE Attachments SET Length = 4");
        Damaged("bytes");
    }

    private void Damaged(string what)
    {
        var problem = Assert.Single(_shop.Store.Verify());
        Assert.Equal(("attachments", HashOfAbc), (problem.Where, problem.Item));
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        var faults = new Faults();
        Assert.Null(Attachments.Open(HashOfAbc, faults));
        Assert.Equal(HashOfAbc, Assert.Single(faults.List).Path);
    }

    [Fact]
    public void An_unknown_hash_is_a_fault()
    {
        var faults = new Faults();
        Assert.Null(Attachments.Open(HashOfAbc, faults));
        Assert.Single(faults.List);
    }

    [Fact]
    public void A_file_over_the_limit_is_refused_and_leaves_nothing()
    {
        var faults = new Faults();
        Assert.Null(Attachments.Add(new Zeros(Attachments.LargestBytes + 1), "video/mp4", "walk-round.mp4", faults));
        Assert.Contains("200 MiB", Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_shop.Folder, "attachments"), "*", SearchOption.AllDirectories));
    }

    /// <summary>So many zero bytes, made as they are read.</summary>
    private sealed class Zeros(long length) : Stream
    {
        private long _left = length;

        public override bool CanRead => true;
        public override bool CanSeek => false;
        public override bool CanWrite => false;
        public override long Length => throw new NotSupportedException();
        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var n = (int)Math.Min(count, _left);
            Array.Clear(buffer, offset, n);
            _left -= n;
            return n;
        }

        public override void Flush() { }
        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();
        public override void SetLength(long value) => throw new NotSupportedException();
        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
