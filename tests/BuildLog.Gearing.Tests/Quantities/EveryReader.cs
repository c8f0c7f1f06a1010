using System.Runtime.CompilerServices;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Every public reader of the engine by name.</summary>
internal static class EveryReader
{
    /// <summary>What a reader says against a text; null where it understood it.</summary>
    public static IReadOnlyDictionary<string, Func<string, Refusal?>> Refusals { get; } = new Dictionary<string, Func<string, Refusal?>>
    {
        ["length"] = text => QuantityText.Read(text, Kind.Length).Refusal,
        ["number"] = text => QuantityText.ReadNumber(text).Refusal,
        ["share"] = text => QuantityText.Read(text, Kind.Share).Refusal,
        ["area"] = text => QuantityText.Read(text, Kind.Area).Refusal,
        ["torque"] = text => QuantityText.Read(text, Kind.Torque).Refusal,
        ["torque point"] = text => TorquePoint.Read(text).Refusal,
        ["hill"] = text => HillGoal.Read(text, "100 km/h").Refusal,
        ["hill start"] = text => HillStartGoal.Read(text).Refusal,
        ["top speed"] = text => TopSpeedGoal.Read(text).Refusal,
        ["overall low"] = text => OverallLowGoal.Read(text).Refusal,
        ["tyre diameter"] = text => LengthLimit.ReadTyreDiameter(text).Refusal,
        ["tyre width"] = text => LengthLimit.ReadTyreWidth(text).Refusal,
        ["track"] = text => LengthLimit.ReadTrack(text).Refusal,
        ["speed of a hill"] = text => HillGoal.Read("5 %", text).Refusal,
        ["angle"] = text => QuantityText.Read(text, Kind.Angle).Refusal,
        ["power"] = text => QuantityText.Read(text, Kind.Power).Refusal,
        ["mass"] = text => VehicleLoad.ReadMass(text).Refusal,
        ["drag area"] = text => VehicleLoad.ReadDragArea(text).Refusal,
        ["rolling resistance"] = text => VehicleLoad.ReadRollingResistance(text).Refusal,
        ["driven share"] = text => VehicleLoad.ReadDrivenShare(text).Refusal,
        ["altitude"] = text => VehicleLoad.ReadAltitude(text).Refusal,
        ["engine speed"] = text => CruiseGoal.ReadEngineSpeed(text).Refusal,
        ["road speed"] = text => CruiseGoal.ReadSpeed(text).Refusal,
        ["tolerance"] = text => CruiseGoal.Read("110 km/h", "2400", text).Refusal,
        ["count, one held"] = text => TurnReading.Read(text, Wheels.OneHeld).Refusal,
        ["count, each"] = text => TurnReading.Read(text, Wheels.Each).Refusal,
        ["roll"] = text => RollReading.Read(text).Refusal,
        ["tyre size"] = text => TyreSizeText.Read(text).Refusal,
        ["count of a gear"] = text => TurnReading.ReadGear(text).Refusal,
        ["gears in mesh"] = text => GearMesh.Read(text).Refusal,
        ["gear of two pairs"] = text => TwoStageGear.Read(text).Refusal,
        ["planetary set"] = text => Planetary.Read(text).Refusal,
        ["gear train"] = text => GearTrain.Read(text).Refusal,
        ["count, both alike"] = text => TurnReading.Read(text, Wheels.Together).Refusal,
        ["tolerance alone"] = text => CruiseGoal.ReadTolerance(text, CruiseGoal.ReadEngineSpeed("2400").OrRefuse()).Refusal,
        ["pressure"] = text => QuantityText.Read(text, Kind.Pressure).Refusal,
        ["force"] = text => QuantityText.Read(text, Kind.Force).Refusal,
        ["ratio of a gear"] = text => RatioRange.Gear.Read(text).Refusal,
        ["transfer case low"] = text => TransferCaseLow.Read(text).Refusal,
        ["air of a test"] = text => TestAir.Read(text).Refusal,
        ["step of a two-speed axle"] = text => TwoSpeedAxle.ReadStep(text).Refusal,
        ["axle as told"] = text => ToldPart.Axle(text, "axle", null).Refusal,
        ["overdrive as told"] = text => ToldPart.Overdrive(text, "unit").Refusal,
        ["gears as told"] = text => ToldGears.Read(text).Refusal,
        ["gearbox as told"] = text => ToldPart.Gearbox(text, "box", InventedCar.Plain.Transmission).Refusal,
        ["tyres as told"] = text => ToldPart.Tyres(text, "tyres", null).Refusal,
        ["length without ±"] = text => QuantityText.ReadPlain(text, Kind.Length).Refusal,
        ["rotation"] = text => QuantityText.Read(text, Kind.Rotation).Refusal,
        ["speed"] = text => QuantityText.Read(text, Kind.Speed).Refusal,
        ["overdrive unit"] = text => OverdriveUnit.Read(text).Refusal,
        ["run over a measured distance"] = text => RunReading.Read(text).Refusal,
        ["distance"] = text => RunReading.ReadDistance(text).Refusal,
        ["weighing"] = text => WeighReading.Read(text).Refusal,
        ["angle of a member"] = text => AngleReading.Read(text).Refusal,
        ["cruise in one line"] = text => CruiseGoal.ReadLine(text).Refusal,
        ["hill in one line"] = text => HillGoal.ReadLine(text).Refusal,
        ["teeth"] = text => Teeth.Read(text).Refusal,
        ["quoted ratio"] = text => QuotedRatio.Read(text, RatioRange.Axle).Refusal,
        ["quoted ratio with its rounding"] = text => QuotedRatio.ReadMeasured(text, RatioRange.Axle, "axle").Refusal,
    };

    /// <summary>This file, for the test that looks whether a reader is missing.</summary>
    public static string[] Source() => ThisFile();

    private static string[] ThisFile([CallerFilePath] string path = "") => File.ReadAllLines(path);
}
