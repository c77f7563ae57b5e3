using Crossmember.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage;

/// <summary>The tables of a shop. The journal is appended and read by plain commands; migrations and small look-ups go through here.</summary>
public sealed class ShopDb(DbContextOptions<ShopDb> options) : DbContext(options)
{
    public DbSet<EntryRow> Entries => Set<EntryRow>();
    public DbSet<HeadRow> Heads => Set<HeadRow>();
    public DbSet<HeldRow> Held => Set<HeldRow>();
    public DbSet<SnapshotRow> Snapshots => Set<SnapshotRow>();
    public DbSet<AttachmentRow> Attachments => Set<AttachmentRow>();
    public DbSet<BuildRow> Builds => Set<BuildRow>();
    public DbSet<GlanceRow> Glances => Set<GlanceRow>();
    public DbSet<ProjectionRow> Projections => Set<ProjectionRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<EntryRow>(e =>
        {
            e.HasKey(x => new { x.Stream, x.Sequence });
            e.HasIndex(x => x.FactId).IsUnique();
            // Serves the subject itself, those above it and the range beneath it.
            e.HasIndex(x => new { x.Stream, x.Subject, x.Sequence });
            e.Property(x => x.Sequence).ValueGeneratedNever();
        });
        modelBuilder.Entity<HeadRow>().HasKey(x => x.Stream);
        modelBuilder.Entity<HeldRow>(e =>
        {
            e.HasKey(x => x.Place);
            e.HasIndex(x => x.FactId).IsUnique();
            e.HasIndex(x => x.Batch);
        });
        modelBuilder.Entity<SnapshotRow>().HasKey(x => new { x.Stream, x.Sequence, x.FoldVersion });
        modelBuilder.Entity<AttachmentRow>().HasKey(x => x.Hash);
        modelBuilder.Entity<BuildRow>().HasKey(x => x.Id);
        modelBuilder.Entity<GlanceRow>().HasKey(x => x.Stream);
        modelBuilder.Entity<ProjectionRow>().HasKey(x => x.Name);
    }
}
