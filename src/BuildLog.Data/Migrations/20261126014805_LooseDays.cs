using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class LooseDays : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateOnly>(
                name: "FromAsTypedEarliest",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "FromAsTypedLatest",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "FromAsTypedText",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "ToAsTypedEarliest",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "ToAsTypedLatest",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "ToAsTypedText",
                table: "Fitments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "What",
                table: "Attachments",
                type: "TEXT",
                nullable: false,
                defaultValue: "Paper");

            migrationBuilder.Sql("UPDATE \"Attachments\" SET \"What\" = 'Photo' WHERE \"MediaType\" LIKE 'image/%'");

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_FromDate_FromOrder",
                table: "Fitments",
                columns: new[] { "FromDate", "FromOrder" });

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_ToDate_ToOrder",
                table: "Fitments",
                columns: new[] { "ToDate", "ToOrder" });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_FromAsTyped",
                table: "Fitments",
                sql: "(\"FromAsTypedText\" IS NOT NULL OR (\"FromAsTypedEarliest\" IS NULL AND \"FromAsTypedLatest\" IS NULL)) AND (\"FromAsTypedEarliest\" IS NULL OR \"FromAsTypedLatest\" IS NULL OR \"FromAsTypedEarliest\" <= \"FromAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_FromAsTypedEarliest",
                table: "Fitments",
                sql: "\"FromAsTypedEarliest\" IS date(\"FromAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_FromAsTypedLatest",
                table: "Fitments",
                sql: "\"FromAsTypedLatest\" IS date(\"FromAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_FromWithin",
                table: "Fitments",
                sql: "(\"FromAsTypedEarliest\" IS NULL OR \"FromAsTypedEarliest\" <= \"FromDate\") AND (\"FromAsTypedLatest\" IS NULL OR \"FromDate\" <= \"FromAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_ToAsTyped",
                table: "Fitments",
                sql: "(\"ToAsTypedText\" IS NOT NULL OR (\"ToAsTypedEarliest\" IS NULL AND \"ToAsTypedLatest\" IS NULL)) AND (\"ToAsTypedEarliest\" IS NULL OR \"ToAsTypedLatest\" IS NULL OR \"ToAsTypedEarliest\" <= \"ToAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_ToAsTypedEarliest",
                table: "Fitments",
                sql: "\"ToAsTypedEarliest\" IS date(\"ToAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_ToAsTypedLatest",
                table: "Fitments",
                sql: "\"ToAsTypedLatest\" IS date(\"ToAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_ToWithin",
                table: "Fitments",
                sql: "(\"ToAsTypedText\" IS NULL OR \"ToDate\" IS NOT NULL) AND (\"ToAsTypedEarliest\" IS NULL OR \"ToAsTypedEarliest\" <= \"ToDate\") AND (\"ToAsTypedLatest\" IS NULL OR \"ToDate\" <= \"ToAsTypedLatest\")");

            migrationBuilder.CreateIndex(
                name: "IX_ChangeSets_Step",
                table: "ChangeSets",
                column: "Step",
                filter: "\"Step\" = 'Undo'");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Attachments_What",
                table: "Attachments",
                sql: "\"What\" IN ('Paper', 'Photo', 'Receipt', 'Drawing')");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Fitments_FromDate_FromOrder",
                table: "Fitments");

            migrationBuilder.DropIndex(
                name: "IX_Fitments_ToDate_ToOrder",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_FromAsTyped",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_FromAsTypedEarliest",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_FromAsTypedLatest",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_FromWithin",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_ToAsTyped",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_ToAsTypedEarliest",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_ToAsTypedLatest",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_ToWithin",
                table: "Fitments");

            migrationBuilder.DropIndex(
                name: "IX_ChangeSets_Step",
                table: "ChangeSets");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Attachments_What",
                table: "Attachments");

            migrationBuilder.DropColumn(
                name: "FromAsTypedEarliest",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "FromAsTypedLatest",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "FromAsTypedText",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "ToAsTypedEarliest",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "ToAsTypedLatest",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "ToAsTypedText",
                table: "Fitments");

            migrationBuilder.DropColumn(
                name: "What",
                table: "Attachments");
        }
    }
}
