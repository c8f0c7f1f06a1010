using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class PartsThatAreGone : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components",
                sql: "\"Ownership\" IN ('Customers', 'Lent', 'CoreOwed', 'Gone')");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components",
                sql: "\"Ownership\" IN ('Customers', 'Lent', 'CoreOwed')");
        }
    }
}
