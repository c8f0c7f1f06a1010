using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>Every check there is, in the order of the driveline.</summary>
public static class AllChecks
{
    /// <summary>The checks themselves, for who wants one of them or their ids; each is without state.</summary>
    public static readonly IReadOnlyList<ICheck> List =
    [
        new CruiseCheck(),
        new CruiseBandCheck(),
        new LuggingCheck(),
        new HillCheck(),
        new TopSpeedCheck(),
        new TopGearCheck(),
        new HillStartCheck(),
        new OverallLowCheck(),
        new GearStepsCheck(),
        new ConverterCheck(),
        new GearboxTorqueCheck(),
        new BellHousingCheck(),
        new FlywheelCheck(),
        new ClutchCheck(),
        new PilotCheck(),
        new InputSplineCheck(),
        new StarterCheck(),
        new RotationCheck(),
        new ShiftLinkageCheck(),
        new OutputFlangeCheck(),
        new PinionFlangeCheck(),
        new AxleTorqueCheck(),
        new PropshaftSpeedCheck(),
        new HalfCriticalCheck(),
        new JointAngleCheck(),
        new TorsionalCheck(),
        new PhasingCheck(),
        new SlipTravelCheck(),
        new PinionAngleCheck(),
        new PerchesCheck(),
        new ParkingBrakeCheck(),
        new JointTorqueCheck(),
        new FourWheelMatchCheck(),
        new WheelBoltsCheck(),
        new TrackCheck(),
        new RearTyresCheck(),
        new RimWidthCheck(),
        new TyreLoadCheck(),
        new TyreSpeedCheck(),
        new TyreDiameterCheck(),
        new TyreWidthCheck(),
        new SpeedometerCheck(),
        new SpeedometerDriveCheck(),
        new RatioPlausibleCheck(),
        new NumbersAgreeCheck(),
        new TagCheck(),
        new MeasuredTwiceCheck(),
        new LabelCheck(),
        new OwnersWordCheck(),
        new NotLookedAtCheck(),
    ];

    /// <summary>The findings of all checks, the worst first; within a verdict in the order of <see cref="List"/>.</summary>
    public static IReadOnlyList<Finding> Look(Driveline driveline, OwnersGoals goals)
        => [.. List.SelectMany(check => check.Look(driveline, goals)).Select(finding => AsMadeFor(driveline, finding)).OrderBy(finding => finding.Verdict)];

    private static Finding AsMadeFor(Driveline driveline, Finding finding)
        => finding.Windows.Count == 0 ? finding : finding with { Windows = [.. finding.Windows.Select(window => window with { Made = PartsMade.Of(window.Position, driveline) })] };
}
