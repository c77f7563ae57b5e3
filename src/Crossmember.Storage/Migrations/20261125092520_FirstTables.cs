using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Crossmember.Storage.Migrations
{
    /// <inheritdoc />
    public partial class FirstTables : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Attachments",
                columns: table => new
                {
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    MediaType = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Attachments", x => x.Hash);
                });

            migrationBuilder.CreateTable(
                name: "Builds",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Entries = table.Column<long>(type: "INTEGER", nullable: false),
                    FirstRecorded = table.Column<string>(type: "TEXT", nullable: false),
                    LastRecorded = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Builds", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Entries",
                columns: table => new
                {
                    Stream = table.Column<string>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    FactId = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Subject = table.Column<string>(type: "TEXT", nullable: false),
                    Fact = table.Column<string>(type: "TEXT", nullable: false),
                    Recorded = table.Column<string>(type: "TEXT", nullable: false),
                    Previous = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Hash = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Entries", x => new { x.Stream, x.Sequence });
                });

            migrationBuilder.CreateTable(
                name: "Heads",
                columns: table => new
                {
                    Stream = table.Column<string>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    Hash = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Heads", x => x.Stream);
                });

            migrationBuilder.CreateTable(
                name: "Held",
                columns: table => new
                {
                    Place = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    FactId = table.Column<string>(type: "TEXT", nullable: false),
                    Stream = table.Column<string>(type: "TEXT", nullable: false),
                    Batch = table.Column<string>(type: "TEXT", nullable: true),
                    Fact = table.Column<string>(type: "TEXT", nullable: false),
                    Received = table.Column<string>(type: "TEXT", nullable: false),
                    Met = table.Column<string>(type: "TEXT", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    DecidedBy = table.Column<string>(type: "TEXT", nullable: true),
                    DecidedAt = table.Column<string>(type: "TEXT", nullable: true),
                    ReleasedAs = table.Column<string>(type: "TEXT", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Held", x => x.Place);
                });

            migrationBuilder.CreateTable(
                name: "Projections",
                columns: table => new
                {
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Projections", x => x.Name);
                });

            migrationBuilder.CreateTable(
                name: "Snapshots",
                columns: table => new
                {
                    Stream = table.Column<string>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    FoldVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    Content = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Snapshots", x => new { x.Stream, x.Sequence, x.FoldVersion });
                });

            migrationBuilder.CreateIndex(
                name: "IX_Entries_FactId",
                table: "Entries",
                column: "FactId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Entries_Stream_Subject_Sequence",
                table: "Entries",
                columns: new[] { "Stream", "Subject", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_Held_Batch",
                table: "Held",
                column: "Batch");

            migrationBuilder.CreateIndex(
                name: "IX_Held_FactId",
                table: "Held",
                column: "FactId",
                unique: true);

            migrationBuilder.Sql("CREATE VIRTUAL TABLE Search USING fts5(Stream UNINDEXED, Subject UNINDEXED, Title);");
            JournalGuards.PutUp(migrationBuilder);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql("DROP TABLE Search;");

            migrationBuilder.DropTable(
                name: "Attachments");

            migrationBuilder.DropTable(
                name: "Builds");

            migrationBuilder.DropTable(
                name: "Entries");

            migrationBuilder.DropTable(
                name: "Heads");

            migrationBuilder.DropTable(
                name: "Held");

            migrationBuilder.DropTable(
                name: "Projections");

            migrationBuilder.DropTable(
                name: "Snapshots");
        }
    }
}
