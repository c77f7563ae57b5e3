using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Crossmember.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Glances : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Glances",
                columns: table => new
                {
                    Stream = table.Column<string>(type: "TEXT", nullable: false),
                    Position = table.Column<long>(type: "INTEGER", nullable: false),
                    Shop = table.Column<long>(type: "INTEGER", nullable: false),
                    Maker = table.Column<string>(type: "TEXT", nullable: false),
                    Content = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Glances", x => x.Stream);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Glances");
        }
    }
}
