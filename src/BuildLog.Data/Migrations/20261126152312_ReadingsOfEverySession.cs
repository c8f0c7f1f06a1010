using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class ReadingsOfEverySession : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Sessions_VehicleId_Date",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions");

            migrationBuilder.AlterColumn<long>(
                name: "ComponentId",
                table: "Sessions",
                type: "INTEGER",
                nullable: true,
                oldClrType: typeof(long),
                oldType: "INTEGER");

            migrationBuilder.AddColumn<string>(
                name: "Between",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Step",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Studs",
                table: "Sessions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "PlannedWishes",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    PlanId = table.Column<long>(type: "INTEGER", nullable: false),
                    Wish = table.Column<string>(type: "TEXT", nullable: false),
                    Typed = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlannedWishes", x => x.Id);
                    table.CheckConstraint("CK_PlannedWishes_Typed", "length(trim(\"Typed\")) > 0");
                    table.CheckConstraint("CK_PlannedWishes_Wish", "\"Wish\" IN ('Mass', 'DragArea', 'Cruise', 'TopSpeed', 'HillStart', 'TyreDiameter')");
                    table.ForeignKey(
                        name: "FK_PlannedWishes_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateIndex(
                name: "IX_Sessions_VehicleId_ComponentId_Date",
                table: "Sessions",
                columns: new[] { "VehicleId", "ComponentId", "Date" });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Between",
                table: "Sessions",
                sql: "\"Between\" IN ('Adjacent', 'SkipOne', 'Across')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_bolt_circle",
                table: "Sessions",
                sql: "\"Method\" <> 'bolt circle' OR (\"Studs\" IS NOT NULL AND \"Between\" IS NOT NULL AND \"Tape\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_loaded_radius",
                table: "Sessions",
                sql: "\"Method\" <> 'loaded radius' OR (\"Tape\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions",
                sql: "\"Method\" IN ('turn count', 'gear count', 'roll-out', 'teeth', 'loaded radius', 'bolt circle', 'shaft angles', 'weighbridge', 'speedometer run')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_speedometer_run",
                table: "Sessions",
                sql: "\"Method\" <> 'speedometer run' OR (\"Tape\" IS NOT NULL AND \"Step\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Subject",
                table: "Sessions",
                sql: "(\"ComponentId\" IS NULL) = (\"Method\" IN ('weighbridge', 'speedometer run')) AND (\"ComponentId\" IS NOT NULL OR \"VehicleId\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_weighbridge",
                table: "Sessions",
                sql: "\"Method\" <> 'weighbridge' OR (\"Step\" IS NOT NULL)");

            migrationBuilder.CreateIndex(
                name: "IX_PlannedWishes_PlanId_Wish",
                table: "PlannedWishes",
                columns: new[] { "PlanId", "Wish" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "PlannedWishes");

            migrationBuilder.DropIndex(
                name: "IX_Sessions_VehicleId_ComponentId_Date",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Between",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_bolt_circle",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_loaded_radius",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_speedometer_run",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Subject",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_weighbridge",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "Between",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "Step",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "Studs",
                table: "Sessions");

            migrationBuilder.AlterColumn<long>(
                name: "ComponentId",
                table: "Sessions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L,
                oldClrType: typeof(long),
                oldType: "INTEGER",
                oldNullable: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sessions_VehicleId_Date",
                table: "Sessions",
                columns: new[] { "VehicleId", "Date" });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions",
                sql: "\"Method\" IN ('turn count', 'gear count', 'roll-out')");
        }
    }
}
