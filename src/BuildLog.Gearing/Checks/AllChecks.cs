using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>Every check there is, in the order of the driveline.</summary>
public static class AllChecks
{
    /// <summary>The checks themselves, for who wants one of them or their ids; each is without state.</summary>
    public static readonly IReadOnlyList<ICheck> List =
    [
        new CruiseCheck(),
        new EngineRangeCheck(),
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
        new TransferCaseTorqueCheck(),
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
    {
        IReadOnlyList<Finding> findings = [];

        // A search looks at a thousand drivelines for their verdicts alone; only who reads the cures asks for this.
        var together = new Lazy<IReadOnlyList<WindowOfPart>>(() => DrivelineWindows.Of(driveline, goals, findings));
        findings = [.. List.SelectMany(check => check.Look(driveline, goals)).Select(finding => AsMadeFor(driveline, finding, together)).OrderBy(finding => finding.Verdict)];
        return findings;
    }

    private static Finding AsMadeFor(Driveline driveline, Finding finding, Lazy<IReadOnlyList<WindowOfPart>> together)
        => finding.Windows.Count == 0 ? finding : finding with { Together = together, Windows = [.. finding.Windows.Select(window => BothAlike(driveline, finding, window) with { Made = PartsMade.Of(window, driveline) })] };

    // Whoever changes the gears of one axle of a four-wheel drive changes those of both, unless it is their match that is wrong.
    private static PartWindow BothAlike(Driveline driveline, Finding finding, PartWindow window)
        => window.Position == driveline.DrivingPosition && DrivenWheels.JoinsBothAxles(driveline) && !finding.Between.Contains(driveline.OtherPosition)
            ? window with { Quantity = Spoken($"{window.Quantity} of both axles") }
            : window;
}
