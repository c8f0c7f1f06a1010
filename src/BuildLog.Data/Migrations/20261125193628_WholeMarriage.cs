using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class WholeMarriage : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Kind",
                table: "Components");

            migrationBuilder.AddColumn<string>(
                name: "BodyClass",
                table: "Vehicles",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "RollingClass",
                table: "Vehicles",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Gradient",
                table: "Goals",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limit",
                table: "Goals",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limited",
                table: "Goals",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "ConverterLocksUp",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "DriveTeeth",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "DrivenTeeth",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "FrontDrive",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Induction",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "PassengerOnTruck",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Per",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Pickup",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Seat",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Studs",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Thread",
                table: "Components",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "TwinRear",
                table: "Components",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "ShaftPieces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    PropshaftId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Yokes = table.Column<string>(type: "TEXT", nullable: true),
                    LengthSi = table.Column<double>(type: "REAL", nullable: true),
                    LengthSource = table.Column<string>(type: "TEXT", nullable: true),
                    LengthText = table.Column<string>(type: "TEXT", nullable: true),
                    LengthUnit = table.Column<string>(type: "TEXT", nullable: true),
                    OuterSi = table.Column<double>(type: "REAL", nullable: true),
                    OuterSource = table.Column<string>(type: "TEXT", nullable: true),
                    OuterText = table.Column<string>(type: "TEXT", nullable: true),
                    OuterUnit = table.Column<string>(type: "TEXT", nullable: true),
                    PlanSi = table.Column<double>(type: "REAL", nullable: true),
                    PlanSource = table.Column<string>(type: "TEXT", nullable: true),
                    PlanText = table.Column<string>(type: "TEXT", nullable: true),
                    PlanUnit = table.Column<string>(type: "TEXT", nullable: true),
                    SideSi = table.Column<double>(type: "REAL", nullable: true),
                    SideSource = table.Column<string>(type: "TEXT", nullable: true),
                    SideText = table.Column<string>(type: "TEXT", nullable: true),
                    SideUnit = table.Column<string>(type: "TEXT", nullable: true),
                    WallSi = table.Column<double>(type: "REAL", nullable: true),
                    WallSource = table.Column<string>(type: "TEXT", nullable: true),
                    WallText = table.Column<string>(type: "TEXT", nullable: true),
                    WallUnit = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShaftPieces", x => x.Id);
                    table.CheckConstraint("CK_ShaftPieces_Length", "(\"LengthSi\" IS NULL) + (\"LengthUnit\" IS NULL) + (\"LengthText\" IS NULL) + (\"LengthSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_ShaftPieces_LengthSi", "\"LengthSi\" BETWEEN 0.05 AND 4.0");
                    table.CheckConstraint("CK_ShaftPieces_LengthSource", "\"LengthSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_ShaftPieces_Ordinal", "\"Ordinal\" BETWEEN 1 AND 3");
                    table.CheckConstraint("CK_ShaftPieces_Outer", "(\"OuterSi\" IS NULL) + (\"OuterUnit\" IS NULL) + (\"OuterText\" IS NULL) + (\"OuterSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_ShaftPieces_OuterSi", "\"OuterSi\" BETWEEN 0.005 AND 0.3");
                    table.CheckConstraint("CK_ShaftPieces_OuterSource", "\"OuterSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_ShaftPieces_Plan", "(\"PlanSi\" IS NULL) + (\"PlanUnit\" IS NULL) + (\"PlanText\" IS NULL) + (\"PlanSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_ShaftPieces_PlanSi", "\"PlanSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_ShaftPieces_PlanSource", "\"PlanSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_ShaftPieces_Side", "(\"SideSi\" IS NULL) + (\"SideUnit\" IS NULL) + (\"SideText\" IS NULL) + (\"SideSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_ShaftPieces_SideSi", "\"SideSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_ShaftPieces_SideSource", "\"SideSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_ShaftPieces_Wall", "(\"WallSi\" IS NULL) + (\"WallUnit\" IS NULL) + (\"WallText\" IS NULL) + (\"WallSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_ShaftPieces_WallSi", "\"WallSi\" BETWEEN 0.0002 AND 0.15");
                    table.CheckConstraint("CK_ShaftPieces_WallSource", "\"WallSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_ShaftPieces_Yokes", "\"Yokes\" IN ('InLine', 'QuarterTurn')");
                    table.ForeignKey(
                        name: "FK_ShaftPieces_Components_PropshaftId",
                        column: x => x.PropshaftId,
                        principalTable: "Components",
                        principalColumn: "Id");
                });

            migrationBuilder.CreateTable(
                name: "Specs",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ComponentId = table.Column<long>(type: "INTEGER", nullable: true),
                    VehicleId = table.Column<long>(type: "INTEGER", nullable: true),
                    Spec = table.Column<string>(type: "TEXT", nullable: false),
                    NumberSi = table.Column<double>(type: "REAL", nullable: false),
                    NumberSource = table.Column<string>(type: "TEXT", nullable: false),
                    NumberText = table.Column<string>(type: "TEXT", nullable: false),
                    NumberUnit = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Specs", x => x.Id);
                    table.CheckConstraint("CK_Specs_Altitude", "\"Spec\" <> 'Altitude' OR \"NumberSi\" BETWEEN -500.0 AND 6000.0");
                    table.CheckConstraint("CK_Specs_Bore", "\"Spec\" <> 'Bore' OR \"NumberSi\" BETWEEN 0.03 AND 0.4");
                    table.CheckConstraint("CK_Specs_Bump", "\"Spec\" <> 'Bump' OR \"NumberSi\" BETWEEN 0.0 AND 1.0");
                    table.CheckConstraint("CK_Specs_Correction", "\"Spec\" <> 'Correction' OR \"NumberSi\" BETWEEN 0.01 AND 100.0");
                    table.CheckConstraint("CK_Specs_DragArea", "\"Spec\" <> 'DragArea' OR \"NumberSi\" BETWEEN 0.2 AND 12.0");
                    table.CheckConstraint("CK_Specs_DrivenShare", "\"Spec\" <> 'DrivenShare' OR \"NumberSi\" BETWEEN 0.05 AND 1.0");
                    table.CheckConstraint("CK_Specs_Droop", "\"Spec\" <> 'Droop' OR \"NumberSi\" BETWEEN 0.0 AND 1.0");
                    table.CheckConstraint("CK_Specs_FrontAxleMass", "\"Spec\" <> 'FrontAxleMass' OR \"NumberSi\" BETWEEN 20.0 AND 40000.0");
                    table.CheckConstraint("CK_Specs_HubFaces", "\"Spec\" <> 'HubFaces' OR \"NumberSi\" BETWEEN 0.6 AND 3.0");
                    table.CheckConstraint("CK_Specs_JointRating", "\"Spec\" <> 'JointRating' OR \"NumberSi\" BETWEEN 10.0 AND 100000.0");
                    table.CheckConstraint("CK_Specs_LoadedRadius", "\"Spec\" <> 'LoadedRadius' OR \"NumberSi\" BETWEEN 0.1 AND 1.0");
                    table.CheckConstraint("CK_Specs_LowestPull", "\"Spec\" <> 'LowestPull' OR \"NumberSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Specs_Mass", "\"Spec\" <> 'Mass' OR \"NumberSi\" BETWEEN 100.0 AND 60000.0");
                    table.CheckConstraint("CK_Specs_Number", "(\"NumberSi\" IS NULL) + (\"NumberUnit\" IS NULL) + (\"NumberText\" IS NULL) + (\"NumberSource\" IS NULL) IN (0, 4)");
                    table.CheckConstraint("CK_Specs_NumberSi", "\"NumberSi\" BETWEEN -1.0 AND 2000000.0");
                    table.CheckConstraint("CK_Specs_NumberSource", "\"NumberSource\" IN ('TeethCounted', 'Measured', 'MakersData', 'Tag', 'OwnersWord', 'Assumed')");
                    table.CheckConstraint("CK_Specs_Offset", "\"Spec\" <> 'Offset' OR \"NumberSi\" BETWEEN -0.2 AND 0.2");
                    table.CheckConstraint("CK_Specs_OutputPlan", "\"Spec\" <> 'OutputPlan' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_Specs_OutputSide", "\"Spec\" <> 'OutputSide' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_Specs_Owner", "(\"ComponentId\" IS NULL) + (\"VehicleId\" IS NULL) = 1");
                    table.CheckConstraint("CK_Specs_PeakPower", "\"Spec\" <> 'PeakPower' OR \"NumberSi\" BETWEEN 500.0 AND 2000000.0");
                    table.CheckConstraint("CK_Specs_PeakPowerAt", "\"Spec\" <> 'PeakPowerAt' OR \"NumberSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Specs_PeakTorque", "\"Spec\" <> 'PeakTorque' OR \"NumberSi\" BETWEEN 1.0 AND 5000.0");
                    table.CheckConstraint("CK_Specs_PeakTorqueAt", "\"Spec\" <> 'PeakTorqueAt' OR \"NumberSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Specs_PinionPlan", "\"Spec\" <> 'PinionPlan' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_Specs_PinionSide", "\"Spec\" <> 'PinionSide' OR \"NumberSi\" BETWEEN -0.7853982 AND 0.7853982");
                    table.CheckConstraint("CK_Specs_PitchCircle", "\"Spec\" <> 'PitchCircle' OR \"NumberSi\" BETWEEN 0.05 AND 0.4");
                    table.CheckConstraint("CK_Specs_PulsesPerTurn", "\"Spec\" <> 'PulsesPerTurn' OR \"NumberSi\" BETWEEN 0.01 AND 1000.0");
                    table.CheckConstraint("CK_Specs_RearAxleMass", "\"Spec\" <> 'RearAxleMass' OR \"NumberSi\" BETWEEN 20.0 AND 40000.0");
                    table.CheckConstraint("CK_Specs_RimWidth", "\"Spec\" <> 'RimWidth' OR \"NumberSi\" BETWEEN 0.05 AND 0.6");
                    table.CheckConstraint("CK_Specs_RollingResistance", "\"Spec\" <> 'RollingResistance' OR \"NumberSi\" BETWEEN 0.003 AND 0.4");
                    table.CheckConstraint("CK_Specs_SlipOut", "\"Spec\" <> 'SlipOut' OR \"NumberSi\" BETWEEN 0.0 AND 1.0");
                    table.CheckConstraint("CK_Specs_SlipStroke", "\"Spec\" <> 'SlipStroke' OR \"NumberSi\" BETWEEN 0.0 AND 1.0");
                    table.CheckConstraint("CK_Specs_Spec", "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude')");
                    table.CheckConstraint("CK_Specs_StallSpeed", "\"Spec\" <> 'StallSpeed' OR \"NumberSi\" BETWEEN 0.0 AND 1000.0");
                    table.CheckConstraint("CK_Specs_StallTorqueRatio", "\"Spec\" <> 'StallTorqueRatio' OR \"NumberSi\" BETWEEN 1.0 AND 5.0");
                    table.CheckConstraint("CK_Specs_TorquePoints", "\"Spec\" <> 'TorquePoints' OR \"NumberSi\" BETWEEN 0.0 AND 5000.0");
                    table.CheckConstraint("CK_Specs_TorqueRating", "\"Spec\" <> 'TorqueRating' OR \"NumberSi\" BETWEEN 10.0 AND 100000.0");
                    table.CheckConstraint("CK_Specs_TurnsWanted", "\"Spec\" <> 'TurnsWanted' OR \"NumberSi\" BETWEEN 50.0 AND 1000000.0");
                    table.ForeignKey(
                        name: "FK_Specs_Components_ComponentId",
                        column: x => x.ComponentId,
                        principalTable: "Components",
                        principalColumn: "Id");
                    table.ForeignKey(
                        name: "FK_Specs_Vehicles_VehicleId",
                        column: x => x.VehicleId,
                        principalTable: "Vehicles",
                        principalColumn: "Id");
                });

            migrationBuilder.AddCheckConstraint(
                name: "CK_Vehicles_BodyClass",
                table: "Vehicles",
                sql: "\"BodyClass\" IN ('saloon, 1945–60', 'large saloon, 1960–79', 'saloon, 1960–79', 'saloon, 1980–95', 'coupé, 1964–74', 'pickup with separate wings, 1935–55', 'pickup, 1955–72', 'pickup, 1973–91', 'raised 4×4 pickup', 'compact pickup, 1975–95', 'rear-engined van, 1950–79', 'box van, 1970–95', 'short 4×4, upright screen', 'station-wagon 4×4, 1970–99')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Vehicles_RollingClass",
                table: "Vehicles",
                sql: "\"RollingClass\" IN ('modern radial', 'radial, 1970–89', 'bias ply', 'mud tread at road pressure', 'loose gravel', 'medium hard soil', 'sand')");

            migrationBuilder.CreateIndex(
                name: "IX_Goals_OneHill",
                table: "Goals",
                column: "VehicleId",
                unique: true,
                filter: "\"Kind\" = 'hill'");

            migrationBuilder.CreateIndex(
                name: "IX_Goals_OneLimitOfEach",
                table: "Goals",
                columns: new[] { "VehicleId", "Limited" },
                unique: true);

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_hill",
                table: "Goals",
                sql: "\"Kind\" <> 'hill' OR (\"Gradient\" IS NOT NULL AND \"Speed\" IS NOT NULL AND \"Gear\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals",
                sql: "\"Kind\" IN ('cruise', 'hill', 'limit')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_limit",
                table: "Goals",
                sql: "\"Kind\" <> 'limit' OR (\"Limited\" IS NOT NULL AND \"Limit\" IS NOT NULL)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Limited",
                table: "Goals",
                sql: "\"Limited\" IN ('HillStart', 'TopSpeed', 'OverallLow', 'TyreDiameter', 'TyreWidth', 'Track')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_DrivenTeeth",
                table: "Components",
                sql: "\"DrivenTeeth\" BETWEEN 3 AND 99");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_DriveTeeth",
                table: "Components",
                sql: "\"DriveTeeth\" BETWEEN 1 AND 60");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_FrontDrive",
                table: "Components",
                sql: "\"FrontDrive\" IN ('ThroughShaft', 'Declutch', 'CentreDifferential', 'ClutchPack')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Induction",
                table: "Components",
                sql: "\"Induction\" IN ('NaturallyAspirated', 'Charged')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Kind",
                table: "Components",
                sql: "\"Kind\" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'propshaft', 'wheels', 'speedometer')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Per",
                table: "Components",
                sql: "\"Per\" IN ('Kilometres', 'Miles')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Pickup",
                table: "Components",
                sql: "\"Pickup\" IN ('Propshaft', 'GearboxOutput', 'Wheel')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Seat",
                table: "Components",
                sql: "\"Seat\" IN ('Cone', 'Ball', 'Flat')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_SpeedometerTeeth",
                table: "Components",
                sql: "(\"DriveTeeth\" IS NULL) + (\"DrivenTeeth\" IS NULL) IN (0, 2)");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Studs",
                table: "Components",
                sql: "\"Studs\" BETWEEN 3 AND 10");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Thread",
                table: "Components",
                sql: "length(trim(\"Thread\")) > 0");

            migrationBuilder.CreateIndex(
                name: "IX_ShaftPieces_PropshaftId_Ordinal",
                table: "ShaftPieces",
                columns: new[] { "PropshaftId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Specs_ComponentId_Spec",
                table: "Specs",
                columns: new[] { "ComponentId", "Spec" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Specs_VehicleId_Spec",
                table: "Specs",
                columns: new[] { "VehicleId", "Spec" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "ShaftPieces");

            migrationBuilder.DropTable(
                name: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Vehicles_BodyClass",
                table: "Vehicles");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Vehicles_RollingClass",
                table: "Vehicles");

            migrationBuilder.DropIndex(
                name: "IX_Goals_OneHill",
                table: "Goals");

            migrationBuilder.DropIndex(
                name: "IX_Goals_OneLimitOfEach",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_hill",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_limit",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Goals_Limited",
                table: "Goals");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_DrivenTeeth",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_DriveTeeth",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_FrontDrive",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Induction",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Kind",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Per",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Pickup",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Seat",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_SpeedometerTeeth",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Studs",
                table: "Components");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Components_Thread",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "BodyClass",
                table: "Vehicles");

            migrationBuilder.DropColumn(
                name: "RollingClass",
                table: "Vehicles");

            migrationBuilder.DropColumn(
                name: "Gradient",
                table: "Goals");

            migrationBuilder.DropColumn(
                name: "Limit",
                table: "Goals");

            migrationBuilder.DropColumn(
                name: "Limited",
                table: "Goals");

            migrationBuilder.DropColumn(
                name: "ConverterLocksUp",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "DriveTeeth",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "DrivenTeeth",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "FrontDrive",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Induction",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "PassengerOnTruck",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Per",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Pickup",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Seat",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Studs",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "Thread",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "TwinRear",
                table: "Components");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Goals_Kind",
                table: "Goals",
                sql: "\"Kind\" IN ('cruise')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'RearAxle', 'FrontAxle', 'Tyres')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Components_Kind",
                table: "Components",
                sql: "\"Kind\" IN ('engine', 'transmission', 'overdrive', 'transfer case', 'axle', 'wheels')");
        }
    }
}
