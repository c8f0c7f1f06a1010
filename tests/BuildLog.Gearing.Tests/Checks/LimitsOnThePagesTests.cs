using System.Globalization;
using System.Runtime.CompilerServices;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>A limit that is a constant of the source stands on the page of its check, docs/checks/ID.md, as a number or as per cent.</summary>
public sealed class LimitsOnThePagesTests
{
    private const double Degree = Math.PI / 180;

    public static TheoryData<string, string[]> Limits => new()
    {
        { "cruise-band", [Written(CruiseBandCheck.Low, "0.00"), Written(CruiseBandCheck.High, "0.00")] },
        { "lugging", [Written(LuggingCheck.ShareOfTorquePeak), PerCent(LuggingCheck.HighLoad)] },
        { "top-gear", [Written(TopGearCheck.MostInTop, "0.00"), Written(TopGearCheck.LeastBelowTop, "0.00")] },
        { "gear-steps", [PerCent(GearStepsCheck.Alike - 1), $"factor {Written(GearStepsCheck.Alike)}", PerCent(TorqueCurve.UsualSpread)] },
        { "hill", [PerCent(HillCheck.UsualReserve)] },
        { "hill-start", [Written(DryRoad.Grip.Value.Value, "0.00"), $"{Written(100 * Startability.Highway)} for the highway", $"{Written(100 * Startability.Moderate)} moderate", $"{Written(100 * Startability.Severe)} severe"] },
        { "clutch", [$"≥ {Written(ClutchCheck.Reserve)} fits"] },
        { "pilot", [$"≤ {Millimetres(PilotCheck.Loose)}"] },
        { "perches", [$"≤ {Millimetres(PerchesCheck.Takes)} fits"] },
        { "propshaft-speed", [Written(WorkingShare.Good), Written(WorkingShare.Limit)] },
        { "propshaft-half-critical", [Written(WorkingShare.HalfCritical.Low), Written(WorkingShare.HalfCritical.High)] },
        { "joint-angles", [Degrees(JointAngleChart.Smooth), Degrees(JointAngleChart.NeedlesRoll), Degrees(JointAngleChart.Limit(0).Value), Degrees(JointAngleChart.LastLimit)] },
        { "torsional-residual", [$"{Written(TorsionalAcceleration.Good)} rad/s²", $"above {Written(TorsionalAcceleration.Limit)}", $"more than {Degrees(TorsionalCheck.EndsApart)} apart"] },
        { "slip-travel", [$"≥ {Millimetres(SlipTravel.Clear)}", $"≥ {Millimetres(SlipTravel.Engaged)}"] },
        { "joint-torque", [.. Efficiencies, $"· {Written(ShaftTorque.TransferEfficiency)}"] },
        { "axle-torque", [.. Efficiencies, $"i_axle · {Written(ShaftTorque.AxleEfficiency)}"] },
        { "transfer-case-torque", [.. Efficiencies, $"η_axle {Written(ShaftTorque.AxleEfficiency)}"] },
        {
            "four-wheel-match",
            [
                $"always joined {Slow(FrontDrive.ThroughShaft)} and {Fast(FrontDrive.ThroughShaft)} %", $"engaged by hand {Slow(FrontDrive.Declutch)} and {Fast(FrontDrive.Declutch)} %",
                $"centre differential {Fast(FrontDrive.CentreDifferential)} %", $"clutch pack {Written(100 * FourWheelMatch.Limits(FrontDrive.ClutchPack).High, "0.00")} %",
            ]
        },
        { "wheel-bolts", [Millimetres(WheelBoltsCheck.Same), Millimetres(WheelBoltsCheck.Loose), Millimetres(WheelBoltsCheck.RingWall)] },
        { "tyre-load", [Written(TyreLoad.PassengerOnTruck, "0.00")] },
        { "speedometer", [Written(SpeedometerLaw.Share().High, "0.000"), $"up to {Written(SpeedometerLaw.To)} km/h"] },
        {
            "ratio",
            [
                $"axle without hubs {Between(RatioTraps.UsualAxle, "0.0")}", $"first gear {Between(RatioPlausibleCheck.UsualFirst, "0.0")}", $"top {Between(PartsMade.UsualTop, "0.00")}",
                $"else {Between(RatioPlausibleCheck.UsualReverse, "0.0")}", $"overdrive {Between(RatioPlausibleCheck.UsualOverdrive, "0.00")}", $"high {Between(RatioPlausibleCheck.UsualHigh, "0.00")}",
                $"low {Between(RatioPlausibleCheck.UsualLow, "0.0")}",
            ]
        },
        { "label", [$"half ({Written(LabelCheck.Dominant)})", $"{PerCent(LabelCheck.MostWear)} ({Written(LabelCheck.MostWear)}"] },
    };

    private static string[] Efficiencies => [$"{Written(ShaftTorque.ManualEfficiency, "0.00")} manual", $"{Written(ShaftTorque.AutomaticEfficiency, "0.00")} automatic"];

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_limit_is_named_as_the_source_has_it(string id, string[] limits)
    {
        var page = File.ReadAllText(Path.Combine(Root(), "docs", "checks", id + ".md"));
        Assert.All(limits, limit => Assert.Contains(limit, page, StringComparison.OrdinalIgnoreCase));
    }

    private static string Slow(FrontDrive drive) => Written(100 * FourWheelMatch.Limits(drive).Low, "0.0");

    private static string Fast(FrontDrive drive) => Written(100 * FourWheelMatch.Limits(drive).High, "0.0");

    private static string Between(Window window, string digits) => $"{Written(window.Low, digits)} to {Written(window.High, digits)}";

    private static string PerCent(double share) => $"{Written(100 * share)} %";

    private static string Millimetres(double metres) => $"{Written(1000 * metres)} mm";

    private static string Degrees(double radians) => $"{Written(radians / Degree)}°";

    private static string Written(double value, string digits = "0.##") => value.ToString(digits, CultureInfo.InvariantCulture);

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
