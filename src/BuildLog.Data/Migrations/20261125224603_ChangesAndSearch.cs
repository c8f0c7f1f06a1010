using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class ChangesAndSearch : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ChangeSets",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Label = table.Column<string>(type: "TEXT", nullable: false),
                    Machine = table.Column<string>(type: "TEXT", nullable: false),
                    Step = table.Column<string>(type: "TEXT", nullable: false),
                    UndoesId = table.Column<long>(type: "INTEGER", nullable: true),
                    At = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ChangeSets", x => x.Id);
                    table.CheckConstraint("CK_ChangeSets_At", "length(trim(\"At\")) > 0");
                    table.CheckConstraint("CK_ChangeSets_Label", "length(trim(\"Label\")) > 0");
                    table.CheckConstraint("CK_ChangeSets_Step", "\"Step\" IN ('Forward', 'Undo', 'Redo')");
                    table.CheckConstraint("CK_ChangeSets_Undoes", "(\"Step\" = 'Forward') = (\"UndoesId\" IS NULL) AND (\"UndoesId\" IS NULL OR \"UndoesId\" < \"Id\")");
                    table.ForeignKey(
                        name: "FK_ChangeSets_ChangeSets_UndoesId",
                        column: x => x.UndoesId,
                        principalTable: "ChangeSets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Findables",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    RecordUid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    About = table.Column<string>(type: "TEXT", nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Findables", x => x.Id);
                    table.CheckConstraint("CK_Findables_Day", "\"Day\" IS date(\"Day\")");
                    table.CheckConstraint("CK_Findables_Kind", "length(trim(\"Kind\")) > 0");
                });

            migrationBuilder.CreateTable(
                name: "Changes",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChangeSetId = table.Column<long>(type: "INTEGER", nullable: false),
                    TableName = table.Column<string>(type: "TEXT", nullable: false),
                    RowId = table.Column<long>(type: "INTEGER", nullable: false),
                    RecordUid = table.Column<Guid>(type: "TEXT", nullable: false),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    Op = table.Column<string>(type: "TEXT", nullable: false),
                    Diff = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Changes", x => x.Id);
                    table.CheckConstraint("CK_Changes_Diff", "json_valid(\"Diff\")");
                    table.CheckConstraint("CK_Changes_Op", "\"Op\" IN ('Insert', 'Update', 'Delete')");
                    table.ForeignKey(
                        name: "FK_Changes_ChangeSets_ChangeSetId",
                        column: x => x.ChangeSetId,
                        principalTable: "ChangeSets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Changes_ChangeSetId",
                table: "Changes",
                column: "ChangeSetId");

            migrationBuilder.CreateIndex(
                name: "IX_Changes_RecordUid",
                table: "Changes",
                column: "RecordUid");

            migrationBuilder.CreateIndex(
                name: "IX_Changes_TableName_RowId",
                table: "Changes",
                columns: new[] { "TableName", "RowId" });

            migrationBuilder.CreateIndex(
                name: "IX_Changes_VehicleId",
                table: "Changes",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_ChangeSets_UndoesId",
                table: "ChangeSets",
                column: "UndoesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Findables_ComponentId",
                table: "Findables",
                column: "ComponentId");

            migrationBuilder.CreateIndex(
                name: "IX_Findables_RecordUid",
                table: "Findables",
                column: "RecordUid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Findables_VehicleId",
                table: "Findables",
                column: "VehicleId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Changes");

            migrationBuilder.DropTable(
                name: "Findables");

            migrationBuilder.DropTable(
                name: "ChangeSets");
        }
    }
}
