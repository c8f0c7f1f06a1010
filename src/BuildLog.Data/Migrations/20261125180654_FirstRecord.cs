using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class FirstRecord : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Components",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    SerialNumber = table.Column<string>(type: "TEXT", nullable: false),
                    Donor = table.Column<string>(type: "TEXT", nullable: false),
                    Shelf = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 13, nullable: false),
                    Ring = table.Column<int>(type: "INTEGER", nullable: true),
                    Pinion = table.Column<int>(type: "INTEGER", nullable: true),
                    HubReductionSi = table.Column<double>(type: "REAL", nullable: true),
                    HubReductionSource = table.Column<string>(type: "TEXT", nullable: true),
                    HubReductionText = table.Column<string>(type: "TEXT", nullable: true),
                    HubReductionUnit = table.Column<string>(type: "TEXT", nullable: true),
                    StatedRatioSi = table.Column<double>(type: "REAL", nullable: true),
                    StatedRatioSource = table.Column<string>(type: "TEXT", nullable: true),
                    StatedRatioText = table.Column<string>(type: "TEXT", nullable: true),
                    StatedRatioUnit = table.Column<string>(type: "TEXT", nullable: true),
                    IdleSi = table.Column<double>(type: "REAL", nullable: true),
                    IdleSource = table.Column<string>(type: "TEXT", nullable: true),
                    IdleText = table.Column<string>(type: "TEXT", nullable: true),
                    IdleUnit = table.Column<string>(type: "TEXT", nullable: true),
                    RedlineSi = table.Column<double>(type: "REAL", nullable: true),
                    RedlineSource = table.Column<string>(type: "TEXT", nullable: true),
                    RedlineText = table.Column<string>(type: "TEXT", nullable: true),
                    RedlineUnit = table.Column<string>(type: "TEXT", nullable: true),
                    OverdriveRatioSi = table.Column<double>(type: "REAL", nullable: true),
                    OverdriveRatioSource = table.Column<string>(type: "TEXT", nullable: true),
                    OverdriveRatioText = table.Column<string>(type: "TEXT", nullable: true),
                    OverdriveRatioUnit = table.Column<string>(type: "TEXT", nullable: true),
                    HighSi = table.Column<double>(type: "REAL", nullable: true),
                    HighSource = table.Column<string>(type: "TEXT", nullable: true),
                    HighText = table.Column<string>(type: "TEXT", nullable: true),
                    HighUnit = table.Column<string>(type: "TEXT", nullable: true),
                    LowSi = table.Column<double>(type: "REAL", nullable: true),
                    LowSource = table.Column<string>(type: "TEXT", nullable: true),
                    LowText = table.Column<string>(type: "TEXT", nullable: true),
                    LowUnit = table.Column<string>(type: "TEXT", nullable: true),
                    SizeText = table.Column<string>(type: "TEXT", nullable: true),
                    Construction = table.Column<string>(type: "TEXT", nullable: true),
                    StatedCircumferenceSi = table.Column<double>(type: "REAL", nullable: true),
                    StatedCircumferenceSource = table.Column<string>(type: "TEXT", nullable: true),
                    StatedCircumferenceText = table.Column<string>(type: "TEXT", nullable: true),
                    StatedCircumferenceUnit = table.Column<string>(type: "TEXT", nullable: true),
                    WornSi = table.Column<double>(type: "REAL", nullable: true),
                    WornSource = table.Column<string>(type: "TEXT", nullable: true),
                    WornText = table.Column<string>(type: "TEXT", nullable: true),
                    WornUnit = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Components", x => x.Id);
                    table.CheckConstraint("CK_Components_Construction", "\"Construction\" IN ('Radial', 'Bias')");
                    table.CheckConstraint("CK_Components_High", "(\"HighSi\" IS NULL) + (\"HighUnit\" IS NULL) + (\"HighText\" IS NULL) + (\"HighSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_HighSi", "\"HighSi\" BETWEEN 0.5 AND 6.0");
                    table.CheckConstraint("CK_Components_HighSource", "\"HighSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_HubReduction", "(\"HubReductionSi\" IS NULL) + (\"HubReductionUnit\" IS NULL) + (\"HubReductionText\" IS NULL) + (\"HubReductionSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_HubReductionSi", "\"HubReductionSi\" BETWEEN 1.0 AND 6.0");
                    table.CheckConstraint("CK_Components_HubReductionSource", "\"HubReductionSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Idle", "(\"IdleSi\" IS NULL) + (\"IdleUnit\" IS NULL) + (\"IdleText\" IS NULL) + (\"IdleSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_IdleSi", "\"IdleSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Components_IdleSource", "\"IdleSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Kind", "\"Kind\" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'wheels')");
                    table.CheckConstraint("CK_Components_Low", "(\"LowSi\" IS NULL) + (\"LowUnit\" IS NULL) + (\"LowText\" IS NULL) + (\"LowSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_LowSi", "\"LowSi\" BETWEEN 0.5 AND 6.0");
                    table.CheckConstraint("CK_Components_LowSource", "\"LowSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Name", "length(trim(\"Name\")) > 0");
                    table.CheckConstraint("CK_Components_OverdriveRatio", "(\"OverdriveRatioSi\" IS NULL) + (\"OverdriveRatioUnit\" IS NULL) + (\"OverdriveRatioText\" IS NULL) + (\"OverdriveRatioSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_OverdriveRatioSi", "\"OverdriveRatioSi\" BETWEEN 0.4 AND 1.0");
                    table.CheckConstraint("CK_Components_OverdriveRatioSource", "\"OverdriveRatioSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Pinion", "\"Pinion\" BETWEEN 4 AND 200");
                    table.CheckConstraint("CK_Components_Redline", "(\"RedlineSi\" IS NULL) + (\"RedlineUnit\" IS NULL) + (\"RedlineText\" IS NULL) + (\"RedlineSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_RedlineSi", "\"RedlineSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Components_RedlineSource", "\"RedlineSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Ring", "\"Ring\" BETWEEN 4 AND 200");
                    table.CheckConstraint("CK_Components_StatedCircumference", "(\"StatedCircumferenceSi\" IS NULL) + (\"StatedCircumferenceUnit\" IS NULL) + (\"StatedCircumferenceText\" IS NULL) + (\"StatedCircumferenceSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_StatedCircumferenceSi", "\"StatedCircumferenceSi\" BETWEEN 0.8 AND 6.0");
                    table.CheckConstraint("CK_Components_StatedCircumferenceSource", "\"StatedCircumferenceSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_StatedRatio", "(\"StatedRatioSi\" IS NULL) + (\"StatedRatioUnit\" IS NULL) + (\"StatedRatioText\" IS NULL) + (\"StatedRatioSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_StatedRatioSi", "\"StatedRatioSi\" BETWEEN 1.5 AND 12.0");
                    table.CheckConstraint("CK_Components_StatedRatioSource", "\"StatedRatioSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Components_Teeth", "(\"Ring\" IS NULL) + (\"Pinion\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_Components_wheels", "\"Kind\" <> 'wheels' OR (\"SizeText\" IS NOT NULL AND \"Construction\" IS NOT NULL)");
                    table.CheckConstraint("CK_Components_Worn", "(\"WornSi\" IS NULL) + (\"WornUnit\" IS NULL) + (\"WornText\" IS NULL) + (\"WornSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Components_WornSi", "\"WornSi\" BETWEEN 0.0 AND 0.03");
                    table.CheckConstraint("CK_Components_WornSource", "\"WornSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                });

            migrationBuilder.CreateTable(
                name: "Vehicles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    Owner = table.Column<string>(type: "TEXT", nullable: false),
                    ChassisNumber = table.Column<string>(type: "TEXT", nullable: false),
                    Registration = table.Column<string>(type: "TEXT", nullable: false),
                    DrivesInFront = table.Column<bool>(type: "INTEGER", nullable: false),
                    OdometerUnit = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    NameKey = table.Column<string>(type: "TEXT", nullable: false),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Vehicles", x => x.Id);
                    table.CheckConstraint("CK_Vehicles_Name", "length(trim(\"Name\")) > 0");
                    table.CheckConstraint("CK_Vehicles_NameKey", "length(trim(\"NameKey\")) > 0");
                    table.CheckConstraint("CK_Vehicles_OdometerUnit", "\"OdometerUnit\" IN ('Kilometres', 'Miles')");
                    table.CheckConstraint("CK_Vehicles_State", "\"State\" IN ('Planned', 'InBuild', 'OnTheRoad', 'LaidUp', 'HandedOver')");
                });

            migrationBuilder.CreateTable(
                name: "Gears",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TransmissionId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    RatioSi = table.Column<double>(type: "REAL", nullable: false),
                    RatioSource = table.Column<string>(type: "TEXT", nullable: false),
                    RatioText = table.Column<string>(type: "TEXT", nullable: false),
                    RatioUnit = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Gears", x => x.Id);
                    table.CheckConstraint("CK_Gears_Name", "length(trim(\"Name\")) > 0");
                    table.CheckConstraint("CK_Gears_Ordinal", "\"Ordinal\" >= 1");
                    table.CheckConstraint("CK_Gears_Ratio", "(\"RatioSi\" IS NULL) + (\"RatioUnit\" IS NULL) + (\"RatioText\" IS NULL) + (\"RatioSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Gears_RatioSi", "\"RatioSi\" BETWEEN 0.3 AND 20.0");
                    table.CheckConstraint("CK_Gears_RatioSource", "\"RatioSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.ForeignKey(
                        name: "FK_Gears_Components_TransmissionId",
                        column: x => x.TransmissionId,
                        principalTable: "Components",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "Fitments",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: false),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<string>(type: "TEXT", nullable: false),
                    FromDate = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    FromOrder = table.Column<int>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    ToDate = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ToOrder = table.Column<int>(type: "INTEGER", nullable: true),
                    ReasonOff = table.Column<string>(type: "TEXT", nullable: false),
                    FromOdometerMetres = table.Column<double>(type: "REAL", nullable: true),
                    FromOdometerText = table.Column<string>(type: "TEXT", nullable: true),
                    FromOdometerUnit = table.Column<string>(type: "TEXT", nullable: true),
                    ToOdometerMetres = table.Column<double>(type: "REAL", nullable: true),
                    ToOdometerText = table.Column<string>(type: "TEXT", nullable: true),
                    ToOdometerUnit = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Fitments", x => x.Id);
                    table.CheckConstraint("CK_Fitments_Forward", "(\"FromDate\", \"FromOrder\") < (\"ToDate\", \"ToOrder\")");
                    table.CheckConstraint("CK_Fitments_FromDate", "\"FromDate\" IS date(\"FromDate\")");
                    table.CheckConstraint("CK_Fitments_FromOdometer", "(\"FromOdometerMetres\" IS NULL) + (\"FromOdometerUnit\" IS NULL) + (\"FromOdometerText\" IS NULL) IN (0, 3)");
                    table.CheckConstraint("CK_Fitments_FromOdometerMetres", "\"FromOdometerMetres\" BETWEEN 0 AND 10000000000");
                    table.CheckConstraint("CK_Fitments_Off", "(\"ToDate\" IS NULL) + (\"ToOrder\" IS NULL) IN (0, 2)");
                    table.CheckConstraint("CK_Fitments_Position", "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'RearAxle', 'FrontAxle', 'Tyres')");
                    table.CheckConstraint("CK_Fitments_ToDate", "\"ToDate\" IS date(\"ToDate\")");
                    table.CheckConstraint("CK_Fitments_ToOdometer", "(\"ToOdometerMetres\" IS NULL) + (\"ToOdometerUnit\" IS NULL) + (\"ToOdometerText\" IS NULL) IN (0, 3)");
                    table.CheckConstraint("CK_Fitments_ToOdometerMetres", "\"ToOdometerMetres\" BETWEEN 0 AND 10000000000");
                    table.ForeignKey(
                        name: "FK_Fitments_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Fitments_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Goals",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 13, nullable: false),
                    Speed = table.Column<string>(type: "TEXT", nullable: true),
                    EngineSpeed = table.Column<string>(type: "TEXT", nullable: true),
                    Tolerance = table.Column<string>(type: "TEXT", nullable: true),
                    Gear = table.Column<string>(type: "TEXT", nullable: true),
                    SpeedSi = table.Column<double>(type: "REAL", nullable: true),
                    EngineSpeedSi = table.Column<double>(type: "REAL", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Goals", x => x.Id);
                    table.CheckConstraint("CK_Goals_cruise", "\"Kind\" <> 'cruise' OR (\"Speed\" IS NOT NULL AND \"EngineSpeed\" IS NOT NULL AND \"Tolerance\" IS NOT NULL AND \"Gear\" IS NOT NULL AND \"SpeedSi\" IS NOT NULL AND \"EngineSpeedSi\" IS NOT NULL)");
                    table.CheckConstraint("CK_Goals_EngineSpeedSi", "\"EngineSpeedSi\" > 0 AND \"EngineSpeedSi\" < 1000");
                    table.CheckConstraint("CK_Goals_Kind", "\"Kind\" IN ('cruise')");
                    table.CheckConstraint("CK_Goals_SpeedSi", "\"SpeedSi\" > 0 AND \"SpeedSi\" < 1000");
                    table.ForeignKey(
                        name: "FK_Goals_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Sessions",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Date = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Helper = table.Column<string>(type: "TEXT", nullable: false),
                    Conditions = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: false),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    Method = table.Column<string>(type: "TEXT", maxLength: 13, nullable: false),
                    Loaded = table.Column<bool>(type: "INTEGER", nullable: true),
                    Construction = table.Column<string>(type: "TEXT", nullable: true),
                    Tape = table.Column<string>(type: "TEXT", nullable: true),
                    Align = table.Column<string>(type: "TEXT", nullable: true),
                    Pressure = table.Column<string>(type: "TEXT", nullable: true),
                    Wheels = table.Column<string>(type: "TEXT", nullable: true),
                    ReadTo = table.Column<string>(type: "TEXT", nullable: true),
                    Hub = table.Column<string>(type: "TEXT", nullable: true),
                    Uid = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Sessions", x => x.Id);
                    table.CheckConstraint("CK_Sessions_Construction", "\"Construction\" IN ('Radial', 'Bias')");
                    table.CheckConstraint("CK_Sessions_Date", "\"Date\" IS date(\"Date\")");
                    table.CheckConstraint("CK_Sessions_Method", "\"Method\" IN ('turn count', 'roll-out')");
                    table.CheckConstraint("CK_Sessions_roll-out", "\"Method\" <> 'roll-out' OR (\"Loaded\" IS NOT NULL AND \"Construction\" IS NOT NULL AND \"Tape\" IS NOT NULL AND \"Align\" IS NOT NULL AND \"Pressure\" IS NOT NULL)");
                    table.CheckConstraint("CK_Sessions_turn_count", "\"Method\" <> 'turn count' OR (\"Wheels\" IS NOT NULL AND \"ReadTo\" IS NOT NULL AND \"Align\" IS NOT NULL AND \"Hub\" IS NOT NULL)");
                    table.CheckConstraint("CK_Sessions_Wheels", "\"Wheels\" IN ('OneHeld', 'Together', 'Each')");
                    table.ForeignKey(
                        name: "FK_Sessions_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Sessions_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Readings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    SessionId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Readings", x => x.Id);
                    table.CheckConstraint("CK_Readings_Ordinal", "\"Ordinal\" >= 1");
                    table.CheckConstraint("CK_Readings_Text", "length(trim(\"Text\")) > 0");
                    table.ForeignKey(
                        name: "FK_Readings_Sessions_SessionId",
                        column: x => x.SessionId,
                        principalTable: "Sessions",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateIndex(
                name: "IX_Components_Uid",
                table: "Components",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_ComponentId_FromDate",
                table: "Fitments",
                columns: new[] { "ComponentId", "FromDate" });

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_OnePartAtATime",
                table: "Fitments",
                columns: new[] { "VehicleId", "Position" },
                unique: true,
                filter: "\"ToDate\" IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_OnePlaceAtATime",
                table: "Fitments",
                column: "ComponentId",
                unique: true,
                filter: "\"ToDate\" IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_Uid",
                table: "Fitments",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Fitments_VehicleId_FromDate",
                table: "Fitments",
                columns: new[] { "VehicleId", "FromDate" });

            migrationBuilder.CreateIndex(
                name: "IX_Gears_TransmissionId_Ordinal",
                table: "Gears",
                columns: new[] { "TransmissionId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Goals_Uid",
                table: "Goals",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Goals_VehicleId",
                table: "Goals",
                column: "VehicleId");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_SessionId_Ordinal",
                table: "Readings",
                columns: new[] { "SessionId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sessions_ComponentId_Date",
                table: "Sessions",
                columns: new[] { "ComponentId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_Sessions_Uid",
                table: "Sessions",
                column: "Uid",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Sessions_VehicleId_Date",
                table: "Sessions",
                columns: new[] { "VehicleId", "Date" });

            migrationBuilder.CreateIndex(
                name: "IX_Vehicles_NameKey",
                table: "Vehicles",
                column: "NameKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Vehicles_Uid",
                table: "Vehicles",
                column: "Uid",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Fitments");

            migrationBuilder.DropTable(
                name: "Gears");

            migrationBuilder.DropTable(
                name: "Goals");

            migrationBuilder.DropTable(
                name: "Readings");

            migrationBuilder.DropTable(
                name: "Sessions");

            migrationBuilder.DropTable(
                name: "Components");

            migrationBuilder.DropTable(
                name: "Vehicles");
        }
    }
}
