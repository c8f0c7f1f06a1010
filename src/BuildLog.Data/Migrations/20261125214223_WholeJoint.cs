using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class WholeJoint : Migration
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

            migrationBuilder.AddColumn<string>(
                name: "Gear",
                table: "Sessions",
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

            migrationBuilder.CreateIndex(
                name: "IX_Traits_ComponentId_Trait",
                table: "Traits",
                columns: new[] { "ComponentId", "Trait" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Traits");

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

            migrationBuilder.DropColumn(
                name: "Gear",
                table: "Sessions");

            migrationBuilder.DropColumn(
                name: "GearTeeth",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "OverdriveRing",
                table: "Components");

            migrationBuilder.DropColumn(
                name: "OverdriveSun",
                table: "Components");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs",
                sql: "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Sessions_Method",
                table: "Sessions",
                sql: "\"Method\" IN ('turn count', 'roll-out')");
        }
    }
}
