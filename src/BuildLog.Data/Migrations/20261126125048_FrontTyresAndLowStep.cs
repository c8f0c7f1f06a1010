using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace BuildLog.Data.Migrations
{
    /// <inheritdoc />
    public partial class FrontTyresAndLowStep : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_PlannedChanges_Position",
                table: "PlannedChanges");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_LowStep",
                table: "Specs",
                sql: "\"Spec\" <> 'LowStep' OR \"NumberSi\" BETWEEN 1.05 AND 2.5");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Reverse",
                table: "Specs",
                sql: "\"Spec\" <> 'Reverse' OR \"NumberSi\" BETWEEN 0.3 AND 20.0");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs",
                sql: "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'CriticalAltitude', 'PilotBore', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'Spigot', 'ClutchRating', 'Reverse', 'LowStep', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'Perches', 'PinionToPerch', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'RearSprings', 'FrontPad', 'RearPad')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_PlannedChanges_Position",
                table: "PlannedChanges",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'FrontTyres', 'Speedometer')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'FrontTyres', 'Speedometer')");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_LowStep",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Reverse",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs");

            migrationBuilder.DropCheckConstraint(
                name: "CK_PlannedChanges_Position",
                table: "PlannedChanges");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Specs_Spec",
                table: "Specs",
                sql: "\"Spec\" IN ('TorquePoints', 'PeakTorque', 'PeakTorqueAt', 'PeakPower', 'PeakPowerAt', 'LowestPull', 'CriticalAltitude', 'PilotBore', 'StallSpeed', 'StallTorqueRatio', 'TorqueRating', 'Spigot', 'ClutchRating', 'PitchCircle', 'Bore', 'HubFaces', 'Droop', 'Bump', 'Perches', 'PinionToPerch', 'LoadedRadius', 'RimWidth', 'Offset', 'JointRating', 'SlipStroke', 'SlipOut', 'OutputSide', 'OutputPlan', 'PinionSide', 'PinionPlan', 'TurnsWanted', 'PulsesPerTurn', 'Correction', 'Mass', 'FrontAxleMass', 'RearAxleMass', 'DragArea', 'RollingResistance', 'DrivenShare', 'Altitude', 'GravityHeight', 'Wheelbase', 'FrontSprings', 'RearSprings', 'FrontPad', 'RearPad')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_PlannedChanges_Position",
                table: "PlannedChanges",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')");

            migrationBuilder.AddCheckConstraint(
                name: "CK_Fitments_Position",
                table: "Fitments",
                sql: "\"Position\" IN ('Engine', 'Transmission', 'Overdrive', 'TransferCase', 'Propshaft', 'FrontPropshaft', 'RearAxle', 'FrontAxle', 'Tyres', 'Speedometer')");
        }
    }
}
