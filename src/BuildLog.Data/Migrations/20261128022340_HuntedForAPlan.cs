using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class HuntedForAPlan : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_PlannedWishes_Wish",
                table: "PlannedWishes");

            migrationBuilder.AddColumn<long>(
                name: "PlanId",
                table: "WantedParts",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "IX_WantedParts_PlanId",
                table: "WantedParts",
                column: "PlanId");

            migrationBuilder.AddCheckConstraint(
                name: "CK_PlannedWishes_Wish",
                table: "PlannedWishes",
                sql: "\"Wish\" IN ('Mass', 'DrivenShare', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'FrontPad', 'RearSprings', 'RearPad', 'Cruise', 'Hill', 'TopSpeed', 'HillStart', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')");

            migrationBuilder.AddForeignKey(
                name: "FK_WantedParts_Plans_PlanId",
                table: "WantedParts",
                column: "PlanId",
                principalTable: "Plans",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_WantedParts_Plans_PlanId",
                table: "WantedParts");

            migrationBuilder.DropIndex(
                name: "IX_WantedParts_PlanId",
                table: "WantedParts");

            migrationBuilder.DropCheckConstraint(
                name: "CK_PlannedWishes_Wish",
                table: "PlannedWishes");

            migrationBuilder.DropColumn(
                name: "PlanId",
                table: "WantedParts");

            migrationBuilder.AddCheckConstraint(
                name: "CK_PlannedWishes_Wish",
                table: "PlannedWishes",
                sql: "\"Wish\" IN ('Mass', 'DragArea', 'Cruise', 'TopSpeed', 'HillStart', 'TyreDiameter')");
        }
    }
}
