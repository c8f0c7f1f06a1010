using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class AsFarAsKnown : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "WorkEntries",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "WorkEntries",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "WorkEntries",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "RoadTests",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "RoadTests",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "RoadTests",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackAsTypedEarliest",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackAsTypedLatest",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "BackAsTypedText",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "SentAsTypedEarliest",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "SentAsTypedLatest",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "SentAsTypedText",
                table: "OutsideWorks",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "SeenAsTypedEarliest",
                table: "Offers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "SeenAsTypedLatest",
                table: "Offers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "SeenAsTypedText",
                table: "Offers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "Notes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "Notes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "Notes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DayAsTyped",
                table: "Findables",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "Decisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "Decisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "Decisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DoneAsTypedEarliest",
                table: "Deadlines",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DoneAsTypedLatest",
                table: "Deadlines",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DoneAsTypedText",
                table: "Deadlines",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedEarliest",
                table: "Costs",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DateAsTypedLatest",
                table: "Costs",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "DateAsTypedText",
                table: "Costs",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddCheckConstraint(
                name: "CK_WorkEntries_DateAsTyped",
                table: "WorkEntries",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_WorkEntries_DateAsTypedEarliest",
                table: "WorkEntries",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_WorkEntries_DateAsTypedLatest",
                table: "WorkEntries",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_WorkEntries_DateWithin",
                table: "WorkEntries",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_DateAsTyped",
                table: "Sessions",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_DateAsTypedEarliest",
                table: "Sessions",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_DateAsTypedLatest",
                table: "Sessions",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_DateWithin",
                table: "Sessions",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_RoadTests_DateAsTyped",
                table: "RoadTests",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_RoadTests_DateAsTypedEarliest",
                table: "RoadTests",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_RoadTests_DateAsTypedLatest",
                table: "RoadTests",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_RoadTests_DateWithin",
                table: "RoadTests",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_BackAsTyped",
                table: "OutsideWorks",
                sql: "(\"BackAsTypedText\" IS NOT NULL OR (\"BackAsTypedEarliest\" IS NULL AND \"BackAsTypedLatest\" IS NULL)) AND (\"BackAsTypedEarliest\" IS NULL OR \"BackAsTypedLatest\" IS NULL OR \"BackAsTypedEarliest\" <= \"BackAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_BackAsTypedEarliest",
                table: "OutsideWorks",
                sql: "\"BackAsTypedEarliest\" IS date(\"BackAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_BackAsTypedLatest",
                table: "OutsideWorks",
                sql: "\"BackAsTypedLatest\" IS date(\"BackAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_BackWithin",
                table: "OutsideWorks",
                sql: "(\"BackAsTypedText\" IS NULL OR \"Back\" IS NOT NULL) AND (\"BackAsTypedEarliest\" IS NULL OR \"BackAsTypedEarliest\" <= \"Back\") AND (\"BackAsTypedLatest\" IS NULL OR \"Back\" <= \"BackAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_SentAsTyped",
                table: "OutsideWorks",
                sql: "(\"SentAsTypedText\" IS NOT NULL OR (\"SentAsTypedEarliest\" IS NULL AND \"SentAsTypedLatest\" IS NULL)) AND (\"SentAsTypedEarliest\" IS NULL OR \"SentAsTypedLatest\" IS NULL OR \"SentAsTypedEarliest\" <= \"SentAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_SentAsTypedEarliest",
                table: "OutsideWorks",
                sql: "\"SentAsTypedEarliest\" IS date(\"SentAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_SentAsTypedLatest",
                table: "OutsideWorks",
                sql: "\"SentAsTypedLatest\" IS date(\"SentAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_OutsideWorks_SentWithin",
                table: "OutsideWorks",
                sql: "(\"SentAsTypedText\" IS NULL OR \"Sent\" IS NOT NULL) AND (\"SentAsTypedEarliest\" IS NULL OR \"SentAsTypedEarliest\" <= \"Sent\") AND (\"SentAsTypedLatest\" IS NULL OR \"Sent\" <= \"SentAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Offers_SeenAsTyped",
                table: "Offers",
                sql: "(\"SeenAsTypedText\" IS NOT NULL OR (\"SeenAsTypedEarliest\" IS NULL AND \"SeenAsTypedLatest\" IS NULL)) AND (\"SeenAsTypedEarliest\" IS NULL OR \"SeenAsTypedLatest\" IS NULL OR \"SeenAsTypedEarliest\" <= \"SeenAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Offers_SeenAsTypedEarliest",
                table: "Offers",
                sql: "\"SeenAsTypedEarliest\" IS date(\"SeenAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Offers_SeenAsTypedLatest",
                table: "Offers",
                sql: "\"SeenAsTypedLatest\" IS date(\"SeenAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Offers_SeenWithin",
                table: "Offers",
                sql: "(\"SeenAsTypedText\" IS NULL OR \"Seen\" IS NOT NULL) AND (\"SeenAsTypedEarliest\" IS NULL OR \"SeenAsTypedEarliest\" <= \"Seen\") AND (\"SeenAsTypedLatest\" IS NULL OR \"Seen\" <= \"SeenAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Notes_DateAsTyped",
                table: "Notes",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Notes_DateAsTypedEarliest",
                table: "Notes",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Notes_DateAsTypedLatest",
                table: "Notes",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Notes_DateWithin",
                table: "Notes",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Decisions_DateAsTyped",
                table: "Decisions",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Decisions_DateAsTypedEarliest",
                table: "Decisions",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Decisions_DateAsTypedLatest",
                table: "Decisions",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Decisions_DateWithin",
                table: "Decisions",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Deadlines_DoneAsTyped",
                table: "Deadlines",
                sql: "(\"DoneAsTypedText\" IS NOT NULL OR (\"DoneAsTypedEarliest\" IS NULL AND \"DoneAsTypedLatest\" IS NULL)) AND (\"DoneAsTypedEarliest\" IS NULL OR \"DoneAsTypedLatest\" IS NULL OR \"DoneAsTypedEarliest\" <= \"DoneAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Deadlines_DoneAsTypedEarliest",
                table: "Deadlines",
                sql: "\"DoneAsTypedEarliest\" IS date(\"DoneAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Deadlines_DoneAsTypedLatest",
                table: "Deadlines",
                sql: "\"DoneAsTypedLatest\" IS date(\"DoneAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Deadlines_DoneWithin",
                table: "Deadlines",
                sql: "(\"DoneAsTypedText\" IS NULL OR \"Done\" IS NOT NULL) AND (\"DoneAsTypedEarliest\" IS NULL OR \"DoneAsTypedEarliest\" <= \"Done\") AND (\"DoneAsTypedLatest\" IS NULL OR \"Done\" <= \"DoneAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Costs_DateAsTyped",
                table: "Costs",
                sql: "(\"DateAsTypedText\" IS NOT NULL OR (\"DateAsTypedEarliest\" IS NULL AND \"DateAsTypedLatest\" IS NULL)) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedLatest\" IS NULL OR \"DateAsTypedEarliest\" <= \"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Costs_DateAsTypedEarliest",
                table: "Costs",
                sql: "\"DateAsTypedEarliest\" IS date(\"DateAsTypedEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Costs_DateAsTypedLatest",
                table: "Costs",
                sql: "\"DateAsTypedLatest\" IS date(\"DateAsTypedLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Costs_DateWithin",
                table: "Costs",
                sql: "(\"DateAsTypedText\" IS NULL OR \"Date\" IS NOT NULL) AND (\"DateAsTypedEarliest\" IS NULL OR \"DateAsTypedEarliest\" <= \"Date\") AND (\"DateAsTypedLatest\" IS NULL OR \"Date\" <= \"DateAsTypedLatest\")");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_WorkEntries_DateAsTyped",
                table: "WorkEntries");

            migrationBuilder.DropCheckConstraint(
                name: "CK_WorkEntries_DateAsTypedEarliest",
                table: "WorkEntries");

            migrationBuilder.DropCheckConstraint(
                name: "CK_WorkEntries_DateAsTypedLatest",
                table: "WorkEntries");

            migrationBuilder.DropCheckConstraint(
                name: "CK_WorkEntries_DateWithin",
                table: "WorkEntries");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_DateAsTyped",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_DateAsTypedEarliest",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_DateAsTypedLatest",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_DateWithin",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_RoadTests_DateAsTyped",
                table: "RoadTests");

            migrationBuilder.DropCheckConstraint(
                name: "CK_RoadTests_DateAsTypedEarliest",
                table: "RoadTests");

            migrationBuilder.DropCheckConstraint(
                name: "CK_RoadTests_DateAsTypedLatest",
                table: "RoadTests");

            migrationBuilder.DropCheckConstraint(
                name: "CK_RoadTests_DateWithin",
                table: "RoadTests");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_BackAsTyped",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_BackAsTypedEarliest",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_BackAsTypedLatest",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_BackWithin",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_SentAsTyped",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_SentAsTypedEarliest",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_SentAsTypedLatest",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_OutsideWorks_SentWithin",
                table: "OutsideWorks");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Offers_SeenAsTyped",
                table: "Offers");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Offers_SeenAsTypedEarliest",
                table: "Offers");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Offers_SeenAsTypedLatest",
                table: "Offers");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Offers_SeenWithin",
                table: "Offers");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Notes_DateAsTyped",
                table: "Notes");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Notes_DateAsTypedEarliest",
                table: "Notes");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Notes_DateAsTypedLatest",
                table: "Notes");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Notes_DateWithin",
                table: "Notes");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Decisions_DateAsTyped",
                table: "Decisions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Decisions_DateAsTypedEarliest",
                table: "Decisions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Decisions_DateAsTypedLatest",
                table: "Decisions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Decisions_DateWithin",
                table: "Decisions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Deadlines_DoneAsTyped",
                table: "Deadlines");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Deadlines_DoneAsTypedEarliest",
                table: "Deadlines");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Deadlines_DoneAsTypedLatest",
                table: "Deadlines");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Deadlines_DoneWithin",
                table: "Deadlines");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Costs_DateAsTyped",
                table: "Costs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Costs_DateAsTypedEarliest",
                table: "Costs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Costs_DateAsTypedLatest",
                table: "Costs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Costs_DateWithin",
                table: "Costs");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "WorkEntries");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "WorkEntries");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "WorkEntries");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "RoadTests");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "RoadTests");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "RoadTests");

            migrationBuilder.DropColumn(
                name: "BackAsTypedEarliest",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "BackAsTypedLatest",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "BackAsTypedText",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "SentAsTypedEarliest",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "SentAsTypedLatest",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "SentAsTypedText",
                table: "OutsideWorks");

            migrationBuilder.DropColumn(
                name: "SeenAsTypedEarliest",
                table: "Offers");

            migrationBuilder.DropColumn(
                name: "SeenAsTypedLatest",
                table: "Offers");

            migrationBuilder.DropColumn(
                name: "SeenAsTypedText",
                table: "Offers");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "Notes");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "Notes");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "Notes");

            migrationBuilder.DropColumn(
                name: "DayAsTyped",
                table: "Findables");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "Decisions");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "Decisions");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "Decisions");

            migrationBuilder.DropColumn(
                name: "DoneAsTypedEarliest",
                table: "Deadlines");

            migrationBuilder.DropColumn(
                name: "DoneAsTypedLatest",
                table: "Deadlines");

            migrationBuilder.DropColumn(
                name: "DoneAsTypedText",
                table: "Deadlines");

            migrationBuilder.DropColumn(
                name: "DateAsTypedEarliest",
                table: "Costs");

            migrationBuilder.DropColumn(
                name: "DateAsTypedLatest",
                table: "Costs");

            migrationBuilder.DropColumn(
                name: "DateAsTypedText",
                table: "Costs");
        }
    }
}
