using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class MonthsOfSwaps : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals");

            migrationBuilder.AddColumn<string>(
                name: "Gear",
                table: "Sessions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "MostCurrency",
                table: "Goals",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "MostMinor",
                table: "Goals",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "BoughtEarliest",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateOnly>(
                name: "BoughtLatest",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "BoughtText",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Condition",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "GearTeeth",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "OverdriveRing",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "OverdriveSun",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Ownership",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "PriceCurrency",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "PriceMinor",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "SupplierId",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "TakenFromId",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Attachments",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    About = table.Column<string>(type: "TEXT", nullable: false),
                    AboutUid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    FileName = table.Column<string>(type: "TEXT", nullable: false),
                    MediaType = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    Caption = table.Column<string>(type: "TEXT", nullable: false),
                    TakenEarliest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    TakenLatest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    TakenText = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Attachments", x => x.Id);
                    table.CheckConstraint("CK_Attachments_About", "\"About\" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')");
                    table.CheckConstraint("CK_Attachments_FileName", "length(trim(\"FileName\")) > 0");
                    table.CheckConstraint("CK_Attachments_Length", "\"Length\" >= 0");
                    table.CheckConstraint("CK_Attachments_Sha256", "length(\"Sha256\") = 64 AND \"Sha256\" NOT GLOB '*[^0-9a-f]*'");
                    table.CheckConstraint("CK_Attachments_Taken", "(\"TakenText\" IS NOT NULL OR (\"TakenEarliest\" IS NULL AND \"TakenLatest\" IS NULL)) AND (\"TakenEarliest\" IS NULL OR \"TakenLatest\" IS NULL OR \"TakenEarliest\" <= \"TakenLatest\")");
                    table.CheckConstraint("CK_Attachments_TakenEarliest", "\"TakenEarliest\" IS date(\"TakenEarliest\")");
                    table.CheckConstraint("CK_Attachments_TakenLatest", "\"TakenLatest\" IS date(\"TakenLatest\")");
                });

            migrationBuilder.CreateTable(
                name: "Deadlines",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Done = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Deadlines", x => x.Id);
                    table.CheckConstraint("CK_Deadlines_Day", "\"Day\" IS date(\"Day\")");
                    table.CheckConstraint("CK_Deadlines_Done", "\"Done\" IS date(\"Done\")");
                    table.CheckConstraint("CK_Deadlines_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_Deadlines_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Decisions",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    AgreedBy = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Decisions", x => x.Id);
                    table.CheckConstraint("CK_Decisions_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Decisions_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_Decisions_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "IdentityNumbers",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true),
                    Identified = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<string>(type: "TEXT", nullable: false),
                    Where = table.Column<string>(type: "TEXT", nullable: false),
                    ReadBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReadEarliest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ReadLatest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ReadText = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_IdentityNumbers", x => x.Id);
                    table.CheckConstraint("CK_IdentityNumbers_Identified", "\"Identified\" IN ('Chassis', 'Body', 'Engine', 'Gearbox', 'TransferCase', 'FrontAxle', 'RearAxle', 'Casting', 'DateCode', 'Other')");
                    table.CheckConstraint("CK_IdentityNumbers_Number", "length(trim(\"Number\")) > 0");
                    table.CheckConstraint("CK_IdentityNumbers_Owner", "(\"VehicleId\" IS NULL) + (\"ComponentId\" IS NULL) = 1");
                    table.CheckConstraint("CK_IdentityNumbers_Read", "(\"ReadText\" IS NOT NULL OR (\"ReadEarliest\" IS NULL AND \"ReadLatest\" IS NULL)) AND (\"ReadEarliest\" IS NULL OR \"ReadLatest\" IS NULL OR \"ReadEarliest\" <= \"ReadLatest\")");
                    table.CheckConstraint("CK_IdentityNumbers_ReadEarliest", "\"ReadEarliest\" IS date(\"ReadEarliest\")");
                    table.CheckConstraint("CK_IdentityNumbers_ReadLatest", "\"ReadLatest\" IS date(\"ReadLatest\")");
                    table.ForeignKey(
                        name: "FK_IdentityNumbers_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_IdentityNumbers_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Notes",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    About = table.Column<string>(type: "TEXT", nullable: false),
                    AboutUid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Notes", x => x.Id);
                    table.CheckConstraint("CK_Notes_About", "\"About\" IN ('Vehicle', 'Component', 'Fitment', 'OdometerChange', 'Session', 'Goal', 'IdentityNumber', 'Job', 'WorkEntry', 'OutsideWork', 'Cost', 'Supplier', 'Donor', 'DonorPiece', 'WantedPart', 'Offer', 'Plan', 'RoadTest', 'Retorque', 'Deadline', 'Decision', 'Note', 'Attachment', 'Workshop')");
                    table.CheckConstraint("CK_Notes_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Notes_Text", "length(trim(\"Title\")) + length(trim(\"Body\")) > 0");
                });

            migrationBuilder.CreateTable(
                name: "OdometerChanges",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    How = table.Column<string>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Order = table.Column<int>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    FirstOdometerMetres = table.Column<double>(type: "REAL", nullable: true),
                    FirstOdometerText = table.Column<string>(type: "TEXT", nullable: true),
                    FirstOdometerUnit = table.Column<string>(type: "TEXT", nullable: true),
                    LastOdometerMetres = table.Column<double>(type: "REAL", nullable: true),
                    LastOdometerText = table.Column<string>(type: "TEXT", nullable: true),
                    LastOdometerUnit = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OdometerChanges", x => x.Id);
                    table.CheckConstraint("CK_OdometerChanges_Day", "\"Day\" IS date(\"Day\")");
                    table.CheckConstraint("CK_OdometerChanges_FirstOdometer", "(\"FirstOdometerMetres\" IS NULL) + (\"FirstOdometerUnit\" IS NULL) + (\"FirstOdometerText\" IS NULL) IN (0, 3)");
                    table.CheckConstraint("CK_OdometerChanges_FirstOdometerMetres", "\"FirstOdometerMetres\" BETWEEN 0 AND 10000000000");
                    table.CheckConstraint("CK_OdometerChanges_How", "\"How\" IN ('Replaced', 'Reset', 'RolledOver')");
                    table.CheckConstraint("CK_OdometerChanges_LastOdometer", "(\"LastOdometerMetres\" IS NULL) + (\"LastOdometerUnit\" IS NULL) + (\"LastOdometerText\" IS NULL) IN (0, 3)");
                    table.CheckConstraint("CK_OdometerChanges_LastOdometerMetres", "\"LastOdometerMetres\" BETWEEN 0 AND 10000000000");
                    table.CheckConstraint("CK_OdometerChanges_Starts", "\"FirstOdometerMetres\" IS NOT NULL");
                    table.ForeignKey(
                        name: "FK_OdometerChanges_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Plans",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plans", x => x.Id);
                    table.CheckConstraint("CK_Plans_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Plans_Name", "length(trim(\"Name\")) > 0");
                    table.CheckConstraint("CK_Plans_Rejected", "\"State\" <> 'Rejected' OR length(trim(\"Reason\")) > 0");
                    table.CheckConstraint("CK_Plans_State", "\"State\" IN ('Open', 'Kept', 'Rejected')");
                    table.ForeignKey(
                        name: "FK_Plans_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Retorques",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Initials = table.Column<string>(type: "TEXT", nullable: false),
                    TorqueSi = table.Column<double>(type: "REAL", nullable: true),
                    TorqueSource = table.Column<string>(type: "TEXT", nullable: true),
                    TorqueText = table.Column<string>(type: "TEXT", nullable: true),
                    TorqueUnit = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Retorques", x => x.Id);
                    table.CheckConstraint("CK_Retorques_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Retorques_Initials", "length(trim(\"Initials\")) > 0");
                    table.CheckConstraint("CK_Retorques_Torque", "(\"TorqueSi\" IS NULL) + (\"TorqueUnit\" IS NULL) + (\"TorqueText\" IS NULL) + (\"TorqueSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Retorques_TorqueSi", "\"TorqueSi\" BETWEEN 0.0 AND 5000.0");
                    table.CheckConstraint("CK_Retorques_TorqueSource", "\"TorqueSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Retorques_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_Retorques_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "RoadTests",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Gear = table.Column<string>(type: "TEXT", nullable: false),
                    Temperatures = table.Column<string>(type: "TEXT", nullable: false),
                    Vibration = table.Column<string>(type: "TEXT", nullable: false),
                    Noises = table.Column<string>(type: "TEXT", nullable: false),
                    Defects = table.Column<string>(type: "TEXT", nullable: false),
                    Fix = table.Column<string>(type: "TEXT", nullable: false),
                    EngineSpeedSi = table.Column<double>(type: "REAL", nullable: true),
                    EngineSpeedSource = table.Column<string>(type: "TEXT", nullable: true),
                    EngineSpeedText = table.Column<string>(type: "TEXT", nullable: true),
                    EngineSpeedUnit = table.Column<string>(type: "TEXT", nullable: true),
                    OdometerMetres = table.Column<double>(type: "REAL", nullable: true),
                    OdometerText = table.Column<string>(type: "TEXT", nullable: true),
                    OdometerUnit = table.Column<string>(type: "TEXT", nullable: true),
                    SpeedSi = table.Column<double>(type: "REAL", nullable: true),
                    SpeedSource = table.Column<string>(type: "TEXT", nullable: true),
                    SpeedText = table.Column<string>(type: "TEXT", nullable: true),
                    SpeedUnit = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoadTests", x => x.Id);
                    table.CheckConstraint("CK_RoadTests_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_RoadTests_EngineSpeed", "(\"EngineSpeedSi\" IS NULL) + (\"EngineSpeedUnit\" IS NULL) + (\"EngineSpeedText\" IS NULL) + (\"EngineSpeedSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_RoadTests_EngineSpeedSi", "\"EngineSpeedSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_RoadTests_EngineSpeedSource", "\"EngineSpeedSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_RoadTests_Odometer", "(\"OdometerMetres\" IS NULL) + (\"OdometerUnit\" IS NULL) + (\"OdometerText\" IS NULL) IN (0, 3)");
                    table.CheckConstraint("CK_RoadTests_OdometerMetres", "\"OdometerMetres\" BETWEEN 0 AND 10000000000");
                    table.CheckConstraint("CK_RoadTests_Speed", "(\"SpeedSi\" IS NULL) + (\"SpeedUnit\" IS NULL) + (\"SpeedText\" IS NULL) + (\"SpeedSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_RoadTests_SpeedSi", "\"SpeedSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_RoadTests_SpeedSource", "\"SpeedSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.ForeignKey(
                        name: "FK_RoadTests_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Suppliers",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Contact = table.Column<string>(type: "TEXT", nullable: false),
                    GoodFor = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Suppliers", x => x.Id);
                    table.CheckConstraint("CK_Suppliers_Name", "length(trim(\"Name\")) > 0");
                });

            migrationBuilder.CreateTable(
                name: "Traits",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: false),
                    Trait = table.Column<string>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Traits", x => x.Id);
                    table.CheckConstraint("CK_Traits_ParkingBrake", "\"Trait\" <> 'ParkingBrake' OR \"Text\" IN ('Fitted', 'Absent')");
                    table.CheckConstraint("CK_Traits_Plate", "\"Trait\" <> 'Plate' OR \"Text\" IN ('Flywheel', 'Flexplate')");
                    table.CheckConstraint("CK_Traits_ShiftLinkage", "\"Trait\" <> 'ShiftLinkage' OR \"Text\" IN ('Fitted', 'Absent')");
                    table.CheckConstraint("CK_Traits_SpeedometerFeed", "\"Trait\" <> 'SpeedometerFeed' OR \"Text\" IN ('None', 'Cable', 'Pulses')");
                    table.CheckConstraint("CK_Traits_Starter", "\"Trait\" <> 'Starter' OR \"Text\" IN ('Left', 'Right')");
                    table.CheckConstraint("CK_Traits_Text", "length(trim(\"Text\")) > 0");
                    table.CheckConstraint("CK_Traits_Trait", "\"Trait\" IN ('BellHousing', 'Plate', 'Starter', 'Turns', 'InputSpline', 'DiscSpline', 'Output', 'FrontOutput', 'SpeedometerFeed', 'ParkingBrake', 'ShiftLinkage', 'PinionFlange', 'FrontEnd', 'RearEnd')");
                    table.CheckConstraint("CK_Traits_Turns", "\"Trait\" <> 'Turns' OR \"Text\" IN ('Clockwise', 'Anticlockwise')");
                    table.ForeignKey(
                        name: "FK_Traits_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "WantedParts",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Deadline = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    DroppedFor = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    MostCurrency = table.Column<string>(type: "TEXT", nullable: true),
                    MostMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WantedParts", x => x.Id);
                    table.CheckConstraint("CK_WantedParts_Deadline", "\"Deadline\" IS date(\"Deadline\")");
                    table.CheckConstraint("CK_WantedParts_Dropped", "\"State\" <> 'Dropped' OR length(trim(\"DroppedFor\")) > 0");
                    table.CheckConstraint("CK_WantedParts_Kind", "\"Kind\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'Axle', 'Tyres', 'Wheels', 'Speedometer', 'Other')");
                    table.CheckConstraint("CK_WantedParts_Most", "(\"MostMinor\" IS NULL) + (\"MostCurrency\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_WantedParts_MostCurrency", "\"MostCurrency\" GLOB '[A-Z][A-Z][A-Z]'");
                    table.CheckConstraint("CK_WantedParts_MostMinor", "\"MostMinor\" BETWEEN -1000000000000000 AND 1000000000000000");
                    table.CheckConstraint("CK_WantedParts_State", "\"State\" IN ('Hunting', 'Found', 'Dropped')");
                    table.CheckConstraint("CK_WantedParts_Title", "length(trim(\"Title\")) > 0");
                    table.ForeignKey(
                        name: "FK_WantedParts_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Workshops",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Address = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Workshops", x => x.Id);
                    table.CheckConstraint("CK_Workshops_Currency", "\"Currency\" GLOB '[A-Z][A-Z][A-Z]'");
                });

            migrationBuilder.CreateTable(
                name: "PlannedChanges",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    PlanId = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<string>(type: "TEXT", nullable: false),
                    Listed = table.Column<string>(type: "TEXT", nullable: false),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlannedChanges", x => x.Id);
                    table.CheckConstraint("CK_PlannedChanges_Position", "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')");
                    table.CheckConstraint("CK_PlannedChanges_What", "\"ComponentId\" IS NOT NULL OR length(trim(\"Listed\")) > 0");
                    table.ForeignKey(
                        name: "FK_PlannedChanges_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PlannedChanges_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "Donors",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    ChassisNumber = table.Column<string>(type: "TEXT", nullable: false),
                    SellerId = table.Column<long>(type: "INTEGER", nullable: true),
                    Fate = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    BoughtEarliest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    BoughtLatest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    BoughtText = table.Column<string>(type: "TEXT", nullable: true),
                    PriceCurrency = table.Column<string>(type: "TEXT", nullable: true),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Donors", x => x.Id);
                    table.CheckConstraint("CK_Donors_Bought", "(\"BoughtText\" IS NOT NULL OR (\"BoughtEarliest\" IS NULL AND \"BoughtLatest\" IS NULL)) AND (\"BoughtEarliest\" IS NULL OR \"BoughtLatest\" IS NULL OR \"BoughtEarliest\" <= \"BoughtLatest\")");
                    table.CheckConstraint("CK_Donors_BoughtEarliest", "\"BoughtEarliest\" IS date(\"BoughtEarliest\")");
                    table.CheckConstraint("CK_Donors_BoughtLatest", "\"BoughtLatest\" IS date(\"BoughtLatest\")");
                    table.CheckConstraint("CK_Donors_Fate", "\"Fate\" IN ('Undecided', 'Keep', 'Sell', 'Scrap', 'Gone')");
                    table.CheckConstraint("CK_Donors_Name", "length(trim(\"Name\")) > 0");
                    table.CheckConstraint("CK_Donors_Price", "(\"PriceMinor\" IS NULL) + (\"PriceCurrency\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_Donors_PriceCurrency", "\"PriceCurrency\" GLOB '[A-Z][A-Z][A-Z]'");
                    table.CheckConstraint("CK_Donors_PriceMinor", "\"PriceMinor\" BETWEEN -1000000000000000 AND 1000000000000000");
                    table.ForeignKey(
                        name: "FK_Donors_Suppliers_SellerId",
                        column: x => x.SellerId,
                        principalTable: "Suppliers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Jobs",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Description = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    Due = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    BeforeHandover = table.Column<bool>(type: "INTEGER", nullable: false),
                    BlockedBy = table.Column<string>(type: "TEXT", nullable: false),
                    WaitsForId = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Jobs", x => x.Id);
                    table.CheckConstraint("CK_Jobs_Due", "\"Due\" IS date(\"Due\")");
                    table.CheckConstraint("CK_Jobs_State", "\"State\" IN ('ToDo', 'UnderWay', 'Done', 'Dropped')");
                    table.CheckConstraint("CK_Jobs_Title", "length(trim(\"Title\")) > 0");
                    table.ForeignKey(
                        name: "FK_Jobs_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Jobs_WantedParts_WaitsForId",
                        column: x => x.WaitsForId,
                        principalTable: "WantedParts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Offers",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    WantedPartId = table.Column<long>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    SupplierId = table.Column<long>(type: "INTEGER", nullable: true),
                    Claimed = table.Column<string>(type: "TEXT", nullable: false),
                    Contact = table.Column<string>(type: "TEXT", nullable: false),
                    Seen = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Expires = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    PriceCurrency = table.Column<string>(type: "TEXT", nullable: true),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Offers", x => x.Id);
                    table.CheckConstraint("CK_Offers_Expires", "\"Expires\" IS date(\"Expires\")");
                    table.CheckConstraint("CK_Offers_Forward", "\"Expires\" >= \"Seen\"");
                    table.CheckConstraint("CK_Offers_Price", "(\"PriceMinor\" IS NULL) + (\"PriceCurrency\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_Offers_PriceCurrency", "\"PriceCurrency\" GLOB '[A-Z][A-Z][A-Z]'");
                    table.CheckConstraint("CK_Offers_PriceMinor", "\"PriceMinor\" BETWEEN -1000000000000000 AND 1000000000000000");
                    table.CheckConstraint("CK_Offers_Seen", "\"Seen\" IS date(\"Seen\")");
                    table.CheckConstraint("CK_Offers_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_Offers_Suppliers_SupplierId",
                        column: x => x.SupplierId,
                        principalTable: "Suppliers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Offers_WantedParts_WantedPartId",
                        column: x => x.WantedPartId,
                        principalTable: "WantedParts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WantedMustHaves",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    WantedPartId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WantedMustHaves", x => x.Id);
                    table.CheckConstraint("CK_WantedMustHaves_Ordinal", "\"Ordinal\" >= 1");
                    table.CheckConstraint("CK_WantedMustHaves_Text", "length(trim(\"Text\")) > 0");
                    table.CheckConstraint("CK_WantedMustHaves_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_WantedMustHaves_WantedParts_WantedPartId",
                        column: x => x.WantedPartId,
                        principalTable: "WantedParts",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "WantedWindows",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    WantedPartId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", nullable: false),
                    Low = table.Column<string>(type: "TEXT", nullable: false),
                    High = table.Column<string>(type: "TEXT", nullable: false),
                    LowSi = table.Column<double>(type: "REAL", nullable: true),
                    HighSi = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WantedWindows", x => x.Id);
                    table.CheckConstraint("CK_WantedWindows_Ordinal", "\"Ordinal\" >= 1");
                    table.CheckConstraint("CK_WantedWindows_Quantity", "\"Quantity\" IN ('AxleRatio', 'TopGearRatio', 'OverdriveRatio', 'LowRangeRatio', 'Circumference', 'TyreDiameter', 'Width', 'Length')");
                    table.CheckConstraint("CK_WantedWindows_Sides", "(\"LowSi\" IS NOT NULL OR \"HighSi\" IS NOT NULL) AND (\"LowSi\" IS NULL OR \"HighSi\" IS NULL OR \"LowSi\" <= \"HighSi\")");
                    table.ForeignKey(
                        name: "FK_WantedWindows_WantedParts_WantedPartId",
                        column: x => x.WantedPartId,
                        principalTable: "WantedParts",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "DonorPieces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    DonorId = table.Column<long>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true),
                    DayEarliest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    DayLatest = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    DayText = table.Column<string>(type: "TEXT", nullable: true),
                    IncomeCurrency = table.Column<string>(type: "TEXT", nullable: true),
                    IncomeMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DonorPieces", x => x.Id);
                    table.CheckConstraint("CK_DonorPieces_Day", "(\"DayText\" IS NOT NULL OR (\"DayEarliest\" IS NULL AND \"DayLatest\" IS NULL)) AND (\"DayEarliest\" IS NULL OR \"DayLatest\" IS NULL OR \"DayEarliest\" <= \"DayLatest\")");
                    table.CheckConstraint("CK_DonorPieces_DayEarliest", "\"DayEarliest\" IS date(\"DayEarliest\")");
                    table.CheckConstraint("CK_DonorPieces_DayLatest", "\"DayLatest\" IS date(\"DayLatest\")");
                    table.CheckConstraint("CK_DonorPieces_Income", "(\"IncomeMinor\" IS NULL) + (\"IncomeCurrency\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_DonorPieces_IncomeCurrency", "\"IncomeCurrency\" GLOB '[A-Z][A-Z][A-Z]'");
                    table.CheckConstraint("CK_DonorPieces_IncomeMinor", "\"IncomeMinor\" BETWEEN -1000000000000000 AND 1000000000000000");
                    table.CheckConstraint("CK_DonorPieces_State", "\"State\" IN ('Remains', 'Taken', 'Sold', 'Scrapped')");
                    table.CheckConstraint("CK_DonorPieces_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_DonorPieces_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_DonorPieces_Donors_DonorId",
                        column: x => x.DonorId,
                        principalTable: "Donors",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Costs",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    JobId = table.Column<long>(type: "INTEGER", nullable: true),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    SupplierId = table.Column<long>(type: "INTEGER", nullable: true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true),
                    ReceiptId = table.Column<long>(type: "INTEGER", nullable: true),
                    AmountCurrency = table.Column<string>(type: "TEXT", nullable: true),
                    AmountMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Costs", x => x.Id);
                    table.CheckConstraint("CK_Costs_Amount", "(\"AmountMinor\" IS NULL) + (\"AmountCurrency\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_Costs_AmountCurrency", "\"AmountCurrency\" GLOB '[A-Z][A-Z][A-Z]'");
                    table.CheckConstraint("CK_Costs_AmountMinor", "\"AmountMinor\" BETWEEN -1000000000000000 AND 1000000000000000");
                    table.CheckConstraint("CK_Costs_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Costs_Spent", "\"AmountMinor\" IS NOT NULL");
                    table.CheckConstraint("CK_Costs_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_Costs_Attachments_ReceiptId",
                        column: x => x.ReceiptId,
                        principalTable: "Attachments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Costs_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Costs_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Costs_Suppliers_SupplierId",
                        column: x => x.SupplierId,
                        principalTable: "Suppliers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Costs_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "OutsideWorks",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<long>(type: "INTEGER", nullable: false),
                    SupplierId = table.Column<long>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Sent = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Promised = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Back = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Certificate = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OutsideWorks", x => x.Id);
                    table.CheckConstraint("CK_OutsideWorks_Back", "\"Back\" IS date(\"Back\")");
                    table.CheckConstraint("CK_OutsideWorks_Forward", "(\"Promised\" IS NULL OR \"Promised\" >= \"Sent\") AND (\"Back\" IS NULL OR \"Back\" >= \"Sent\")");
                    table.CheckConstraint("CK_OutsideWorks_Promised", "\"Promised\" IS date(\"Promised\")");
                    table.CheckConstraint("CK_OutsideWorks_Sent", "\"Sent\" IS date(\"Sent\")");
                    table.CheckConstraint("CK_OutsideWorks_What", "length(trim(\"What\")) > 0");
                    table.ForeignKey(
                        name: "FK_OutsideWorks_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_OutsideWorks_Suppliers_SupplierId",
                        column: x => x.SupplierId,
                        principalTable: "Suppliers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WorkEntries",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<long>(type: "INTEGER", nullable: false),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Hours = table.Column<string>(type: "TEXT", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    Who = table.Column<string>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WorkEntries", x => x.Id);
                    table.CheckConstraint("CK_WorkEntries_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_WorkEntries_Hours", "length(trim(\"Hours\")) > 0");
                    table.CheckConstraint("CK_WorkEntries_Minutes", "\"Minutes\" BETWEEN 1 AND 1440");
                    table.ForeignKey(
                        name: "FK_WorkEntries_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_ClutchRating",
                table: "Specs",
                sql: "\"Spec\" <> 'ClutchRating' OR \"NumberSi\" BETWEEN 10.0 AND 10000.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_CriticalAltitude",
                table: "Specs",
                sql: "\"Spec\" <> 'CriticalAltitude' OR \"NumberSi\" BETWEEN -500.0 AND 11000.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_FrontPad",
                table: "Specs",
                sql: "\"Spec\" <> 'FrontPad' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_FrontSprings",
                table: "Specs",
                sql: "\"Spec\" <> 'FrontSprings' OR \"NumberSi\" BETWEEN 0.3 AND 2.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_GravityHeight",
                table: "Specs",
                sql: "\"Spec\" <> 'GravityHeight' OR \"NumberSi\" BETWEEN 0.1 AND 3.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Perches",
                table: "Specs",
                sql: "\"Spec\" <> 'Perches' OR \"NumberSi\" BETWEEN 0.3 AND 2.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_PilotBore",
                table: "Specs",
                sql: "\"Spec\" <> 'PilotBore' OR \"NumberSi\" BETWEEN 0.005 AND 0.1");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_PinionToPerch",
                table: "Specs",
                sql: "\"Spec\" <> 'PinionToPerch' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_RearPad",
                table: "Specs",
                sql: "\"Spec\" <> 'RearPad' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_RearSprings",
                table: "Specs",
                sql: "\"Spec\" <> 'RearSprings' OR \"NumberSi\" BETWEEN 0.3 AND 2.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs",
                sql: "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'CriticalAltitude', 'PilotBore', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'Spigot', 'ClutchRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'Perches', 'PinionToPerch', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'RearSprings', 'FrontPad', 'RearPad')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spigot",
                table: "Specs",
                sql: "\"Spec\" <> 'Spigot' OR \"NumberSi\" BETWEEN 0.005 AND 0.1");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Wheelbase",
                table: "Specs",
                sql: "\"Spec\" <> 'Wheelbase' OR \"NumberSi\" BETWEEN 1.0 AND 10.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Gear",
                table: "Sessions",
                sql: "length(trim(\"Gear\")) > 0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_gear_count",
                table: "Sessions",
                sql: "\"Method\" <> 'gear count' OR (\"Gear\" IS NOT NULL AND \"ReadTo\" IS NOT NULL AND \"Align\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions",
                sql: "\"Method\" IN ('turn count', 'gear count', 'roll-out')");

            migrationBuilder.CreateIndex(
                name: "IX_Goals_OneBudget",
                table: "Goals",
                column: "VehicleId",
                unique: true,
                filter: "\"Kind\" = 'budget'");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_budget",
                table: "Goals",
                sql: "\"Kind\" <> 'budget' OR (\"MostMinor\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals",
                sql: "\"Kind\" IN ('cruise', 'hill', 'limit', 'budget')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Most",
                table: "Goals",
                sql: "(\"MostMinor\" IS NULL) + (\"MostCurrency\" IS NULL) IN (0, 2)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_MostCurrency",
                table: "Goals",
                sql: "\"MostCurrency\" GLOB '[A-Z][A-Z][A-Z]'");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_MostMinor",
                table: "Goals",
                sql: "\"MostMinor\" BETWEEN -1000000000000000 AND 1000000000000000");

            migrationBuilder.CreateIndex(
                name: "IX_Components_SupplierId",
                table: "Components",
                column: "SupplierId");

            migrationBuilder.CreateIndex(
                name: "IX_Components_TakenFromId",
                table: "Components",
                column: "TakenFromId");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Bought",
                table: "Components",
                sql: "(\"BoughtText\" IS NOT NULL OR (\"BoughtEarliest\" IS NULL AND \"BoughtLatest\" IS NULL)) AND (\"BoughtEarliest\" IS NULL OR \"BoughtLatest\" IS NULL OR \"BoughtEarliest\" <= \"BoughtLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_BoughtEarliest",
                table: "Components",
                sql: "\"BoughtEarliest\" IS date(\"BoughtEarliest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_BoughtLatest",
                table: "Components",
                sql: "\"BoughtLatest\" IS date(\"BoughtLatest\")");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Condition",
                table: "Components",
                sql: "length(trim(\"Condition\")) > 0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_GearTeeth",
                table: "Components",
                sql: "length(trim(\"GearTeeth\")) > 0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_OverdriveRing",
                table: "Components",
                sql: "\"OverdriveRing\" BETWEEN 4 AND 200");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_OverdriveSun",
                table: "Components",
                sql: "\"OverdriveSun\" BETWEEN 4 AND 200");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_OverdriveTeeth",
                table: "Components",
                sql: "(\"OverdriveRing\" IS NULL) + (\"OverdriveSun\" IS NULL) IN (0, 2)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components",
                sql: "\"Ownership\" IN ('Customers', 'Lent', 'CoreOwed')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Price",
                table: "Components",
                sql: "(\"PriceMinor\" IS NULL) + (\"PriceCurrency\" IS NULL) IN (0, 2)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_PriceCurrency",
                table: "Components",
                sql: "\"PriceCurrency\" GLOB '[A-Z][A-Z][A-Z]'");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_PriceMinor",
                table: "Components",
                sql: "\"PriceMinor\" BETWEEN -1000000000000000 AND 1000000000000000");

            migrationBuilder.CreateIndex(
                name: "IX_Attachments_AboutUid",
                table: "Attachments",
                column: "AboutUid");

            migrationBuilder.CreateIndex(
                name: "IX_Attachments_Sha256",
                table: "Attachments",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_Attachments_Uid",
                table: "Attachments",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Costs_ComponentId",
                table: "Costs",
                column: "ComponentId");

            migrationBuilder.CreateIndex(
                name: "IX_Costs_JobId",
                table: "Costs",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_Costs_ReceiptId",
                table: "Costs",
                column: "ReceiptId");

            migrationBuilder.CreateIndex(
                name: "IX_Costs_SupplierId",
                table: "Costs",
                column: "SupplierId");

            migrationBuilder.CreateIndex(
                name: "IX_Costs_Uid",
                table: "Costs",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Costs_VehicleId_Date",
                table: "Costs",
                columns: new[] { "VehicleId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_Deadlines_Day",
                table: "Deadlines",
                column: "Day");

            migrationBuilder.CreateIndex(
                name: "IX_Deadlines_Uid",
                table: "Deadlines",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Deadlines_VehicleId",
                table: "Deadlines",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Decisions_Uid",
                table: "Decisions",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Decisions_VehicleId_Date",
                table: "Decisions",
                columns: new[] { "VehicleId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_DonorPieces_ComponentId",
                table: "DonorPieces",
                column: "ComponentId");

            migrationBuilder.CreateIndex(
                name: "IX_DonorPieces_DonorId",
                table: "DonorPieces",
                column: "DonorId");

            migrationBuilder.CreateIndex(
                name: "IX_DonorPieces_Uid",
                table: "DonorPieces",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Donors_SellerId",
                table: "Donors",
                column: "SellerId");

            migrationBuilder.CreateIndex(
                name: "IX_Donors_Uid",
                table: "Donors",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_IdentityNumbers_ComponentId",
                table: "IdentityNumbers",
                column: "ComponentId");

            migrationBuilder.CreateIndex(
                name: "IX_IdentityNumbers_Uid",
                table: "IdentityNumbers",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_IdentityNumbers_VehicleId",
                table: "IdentityNumbers",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_Uid",
                table: "Jobs",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_VehicleId",
                table: "Jobs",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_WaitsForId",
                table: "Jobs",
                column: "WaitsForId");

            migrationBuilder.CreateIndex(
                name: "IX_Notes_AboutUid_Date",
                table: "Notes",
                columns: new[] { "AboutUid", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_Notes_Uid",
                table: "Notes",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_OdometerChanges_Day_Order",
                table: "OdometerChanges",
                columns: new[] { "Day", "Order" });

            migrationBuilder.CreateIndex(
                name: "IX_OdometerChanges_Uid",
                table: "OdometerChanges",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_OdometerChanges_VehicleId",
                table: "OdometerChanges",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Offers_SupplierId",
                table: "Offers",
                column: "SupplierId");

            migrationBuilder.CreateIndex(
                name: "IX_Offers_Uid",
                table: "Offers",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Offers_WantedPartId",
                table: "Offers",
                column: "WantedPartId");

            migrationBuilder.CreateIndex(
                name: "IX_OutsideWorks_JobId",
                table: "OutsideWorks",
                column: "JobId");

            migrationBuilder.CreateIndex(
                name: "IX_OutsideWorks_SupplierId",
                table: "OutsideWorks",
                column: "SupplierId");

            migrationBuilder.CreateIndex(
                name: "IX_OutsideWorks_Uid",
                table: "OutsideWorks",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PlannedChanges_ComponentId",
                table: "PlannedChanges",
                column: "ComponentId");

            migrationBuilder.CreateIndex(
                name: "IX_PlannedChanges_PlanId_Position",
                table: "PlannedChanges",
                columns: new[] { "PlanId", "Position" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Plans_Uid",
                table: "Plans",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Plans_VehicleId",
                table: "Plans",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Retorques_Uid",
                table: "Retorques",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Retorques_VehicleId",
                table: "Retorques",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_RoadTests_Uid",
                table: "RoadTests",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_RoadTests_VehicleId_Date",
                table: "RoadTests",
                columns: new[] { "VehicleId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_Suppliers_Uid",
                table: "Suppliers",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Traits_ComponentId_Trait",
                table: "Traits",
                columns: new[] { "ComponentId", "Trait" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WantedMustHaves_WantedPartId_Ordinal",
                table: "WantedMustHaves",
                columns: new[] { "WantedPartId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WantedParts_Uid",
                table: "WantedParts",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WantedParts_VehicleId",
                table: "WantedParts",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_WantedWindows_WantedPartId_Ordinal",
                table: "WantedWindows",
                columns: new[] { "WantedPartId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WorkEntries_JobId_Date",
                table: "WorkEntries",
                columns: new[] { "JobId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_WorkEntries_Uid",
                table: "WorkEntries",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Workshops_Uid",
                table: "Workshops",
                column: "Uid",
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_Components_Donors_TakenFromId",
                table: "Components",
                column: "TakenFromId",
                principalTable: "Donors",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_Components_Suppliers_SupplierId",
                table: "Components",
                column: "SupplierId",
                principalTable: "Suppliers",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Components_Donors_TakenFromId",
                table: "Components");

            migrationBuilder.DropForeignKey(
                name: "FK_Components_Suppliers_SupplierId",
                table: "Components");

            migrationBuilder.DropTable(
                name: "Costs");

            migrationBuilder.DropTable(
                name: "Deadlines");

            migrationBuilder.DropTable(
                name: "Decisions");

            migrationBuilder.DropTable(
                name: "DonorPieces");

            migrationBuilder.DropTable(
                name: "IdentityNumbers");

            migrationBuilder.DropTable(
                name: "Notes");

            migrationBuilder.DropTable(
                name: "OdometerChanges");

            migrationBuilder.DropTable(
                name: "Offers");

            migrationBuilder.DropTable(
                name: "OutsideWorks");

            migrationBuilder.DropTable(
                name: "PlannedChanges");

            migrationBuilder.DropTable(
                name: "Retorques");

            migrationBuilder.DropTable(
                name: "RoadTests");

            migrationBuilder.DropTable(
                name: "Traits");

            migrationBuilder.DropTable(
                name: "WantedMustHaves");

            migrationBuilder.DropTable(
                name: "WantedWindows");

            migrationBuilder.DropTable(
                name: "WorkEntries");

            migrationBuilder.DropTable(
                name: "Workshops");

            migrationBuilder.DropTable(
                name: "Attachments");

            migrationBuilder.DropTable(
                name: "Donors");

            migrationBuilder.DropTable(
                name: "Plans");

            migrationBuilder.DropTable(
                name: "Jobs");

            migrationBuilder.DropTable(
                name: "Suppliers");

            migrationBuilder.DropTable(
                name: "WantedParts");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_ClutchRating",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_CriticalAltitude",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_FrontPad",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_FrontSprings",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_GravityHeight",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Perches",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_PilotBore",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_PinionToPerch",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_RearPad",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_RearSprings",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Spigot",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Wheelbase",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Gear",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_gear_count",
                table: "Sessions");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions");

            migrationBuilder.DropIndex(
                name: "IX_Goals_OneBudget",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_budget",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Most",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_MostCurrency",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_MostMinor",
                table: "Goals");

            migrationBuilder.DropIndex(
                name: "IX_Components_SupplierId",
                table: "Components");

            migrationBuilder.DropIndex(
                name: "IX_Components_TakenFromId",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Bought",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_BoughtEarliest",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_BoughtLatest",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Condition",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_GearTeeth",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_OverdriveRing",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_OverdriveSun",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_OverdriveTeeth",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Ownership",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Price",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_PriceCurrency",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_PriceMinor",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Gear",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "MostCurrency",
                table: "Goals");

            migrationBuilder.DropColumn(
                name: "MostMinor",
                table: "Goals");

            migrationBuilder.DropColumn(
                name: "BoughtEarliest",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "BoughtLatest",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "BoughtText",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Condition",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "GearTeeth",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "OverdriveRing",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "OverdriveSun",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Ownership",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "PriceCurrency",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "PriceMinor",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "SupplierId",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "TakenFromId",
                table: "Components");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs",
                sql: "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions",
                sql: "\"Method\" IN ('turn count', 'roll-out')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals",
                sql: "\"Kind\" IN ('cruise', 'hill', 'limit')");
        }
    }
}
