using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Data.Drivelines;

/// <summary>A part as the driveline sees it, made of the numbers known of it.</summary>
/// <param name="numbers">Every number known of it.</param>
/// <param name="sessions">What was measured of it, the latest first.</param>
internal sealed class FittedParts(IReadOnlyList<NumberKnown> numbers, IReadOnlyList<Session> sessions)
{
    public Engine Of(EngineComponent engine) => new(engine.Name, Find(PartNumbers.Idle), Find(PartNumbers.Redline))
    {
        Torque = engine.Torque(),
        ToldTorque = Told(engine, engine.PeakTorque, engine.PeakTorqueAt),
        ToldPower = Told(engine, engine.PeakPower, engine.PeakPowerAt),
        LowestPull = Find(Spec.LowestPull.InWords()),
        Induction = engine.Induction ?? Induction.NaturallyAspirated,
        CriticalAltitude = Find(Spec.CriticalAltitude.InWords()),
        Rear = new()
        {
            BellHousing = engine.BellHousing,
            Plate = engine.Plate,
            PilotBore = Find(Spec.PilotBore.InWords()),
            Starter = engine.Starter,
            Turns = engine.Turns,
        },
    };

    // Of one that was bought with a few of its gears counted, the others are not known.
    public Transmission Of(TransmissionComponent box)
    {
        var gears = Gears();
        return new(box.Name, gears)
        {
            Untold = UntoldGears.Between(gears),
            Converter = box.ConverterLocksUp is { } locksUp ? new(locksUp, Find(Spec.StallSpeed.InWords()), Find(Spec.StallTorqueRatio.InWords())) : null,
            TorqueRating = Find(Spec.TorqueRating.InWords()),
            Reverse = Find(Spec.Reverse.InWords()),
            Front = new()
            {
                BellHousing = box.BellHousing,
                Spigot = Find(Spec.Spigot.InWords()),
                InputSpline = box.InputSpline,
                DiscSpline = box.DiscSpline,
                ClutchRating = Find(Spec.ClutchRating.InWords()),
                Starter = box.Starter,
                Turns = box.Turns,
            },
            Output = box.Output,
            SpeedometerFeed = box.SpeedometerFeed,
            ParkingBrake = box.ParkingBrake,
            ShiftLinkage = box.ShiftLinkage,
        };
    }

    public Overdrive Of(OverdriveComponent unit) => new(unit.Name, Find(PartNumbers.Ratio)) { Quoted = Quoted(PartNumbers.Ratio), Output = unit.Output };

    public TransferCase Of(TransferCaseComponent transfer) => new(transfer.Name, Find(PartNumbers.High), Find(PartNumbers.Low))
    {
        FrontDrive = transfer.FrontDrive,
        TorqueRating = Find(Spec.TorqueRating.InWords()),
        Output = transfer.Output,
        FrontOutput = transfer.FrontOutput,
        SpeedometerFeed = transfer.SpeedometerFeed,
        ParkingBrake = transfer.ParkingBrake,
    };

    public Axle Of(AxleComponent axle) => new(axle.Name, Find(PartNumbers.Ratio))
    {
        Hub = Bolted(axle),
        HubFaces = Find(Spec.HubFaces.InWords()),
        Travel = axle.Droop is null && axle.Bump is null ? null : new(Find(Spec.Droop.InWords()), Find(Spec.Bump.InWords())),
        TorqueRating = Find(Spec.TorqueRating.InWords()),
        Quoted = Quoted(PartNumbers.Ratio),
        HubReduction = Find(PartNumbers.HubReduction),
        LowStep = Find(Spec.LowStep.InWords()),
        PinionFlange = axle.PinionFlange,
        Perches = Find(Spec.Perches.InWords()),
        PinionToPerch = Find(Spec.PinionToPerch.InWords()),
        ParkingBrake = axle.ParkingBrake,
    };

    public TyreSet Of(WheelSetComponent set)
    {
        var bolting = Bolted(set);
        return new(set.Name, Find(PartNumbers.Circumference), set.Size)
        {
            FreeCircumference = TyreNumbers.Free(sessions.OfType<RollOutSession>()),
            LoadedRadius = Find(Spec.LoadedRadius.InWords()),
            Wheel = set.RimWidth is null && set.Offset is null && bolting is null ? null : new(Find(Spec.RimWidth.InWords()), Find(Spec.Offset.InWords()), bolting),
            PassengerOnTruck = set.PassengerOnTruck,
            TwinRear = set.TwinRear,
        };
    }

    public Propshaft Of(PropshaftComponent shaft) => new(shaft.Name, [.. shaft.Pieces.Select(Piece)])
    {
        Line = Line(shaft),
        JointRating = Find(Spec.JointRating.InWords()),
        Slip = shaft.SlipStroke is null && shaft.SlipOut is null ? null : new(Find(Spec.SlipStroke.InWords()), Find(Spec.SlipOut.InWords())),
        FrontEnd = shaft.FrontEnd,
        RearEnd = shaft.RearEnd,
    };

    public Speedometer Of(SpeedometerComponent meter) => new(meter.Name, PerMetre(meter), meter.Drive()) { Takes = meter.SpeedometerFeed };

    private IReadOnlyList<Gear> Gears()
        => [.. numbers.Where(known => known.Number.StartsWith(PartNumbers.GearPrefix, StringComparison.Ordinal))
            .Select(known => new Gear(known.Number[PartNumbers.GearPrefix.Length..], known.Used) { Quoted = Quoted(known.Number) })];

    /// <summary>What somebody says of the number, where something stronger counts.</summary>
    private Known? Quoted(string number) => numbers.FirstOrDefault(known => known.Number == number)?.PassedOver.FirstOrDefault(IsQuoted);

    private Bolting? Bolted(BoltedComponent part)
    {
        var bolting = new Bolting(sessions.OfType<BoltCircleSession>().FirstOrDefault()?.Studs ?? part.Studs, Find(Spec.PitchCircle.InWords()), Find(Spec.Bore.InWords()), part.Thread, part.Seat);
        return bolting is { Studs: null, PitchCircle: null, Bore: null, Thread: null, Seat: null } ? null : bolting;
    }

    private ShaftPiece Piece(StatedPiece piece, int k) => new(
        Find(SpecNumbers.OfPiece(k, SpecSheet.ShaftOuter)), Find(SpecNumbers.OfPiece(k, SpecSheet.ShaftWall)), Find(SpecNumbers.OfPiece(k, SpecSheet.ShaftLength)), piece.Yokes);

    // Null while no angle at all was taken.
    private IReadOnlyList<Inclination>? Line(PropshaftComponent shaft)
    {
        IReadOnlyList<Inclination> line =
        [
            new(Find(Spec.OutputSide.InWords()), Find(Spec.OutputPlan.InWords())),
            .. shaft.Pieces.Select((_, k) => new Inclination(Find(SpecNumbers.OfPiece(k, SpecSheet.ShaftSide)), Find(SpecNumbers.OfPiece(k, SpecSheet.ShaftPlan)))),
            new(Find(Spec.PinionSide.InWords()), Find(Spec.PinionPlan.InWords())),
        ];
        return line.All(member => member.Side is null) ? null : line;
    }

    private Known? PerMetre(SpeedometerComponent meter)
        => Find(Spec.TurnsWanted.InWords()) is { } turns && meter.Per is { } per
            ? turns with { Value = turns.Value / (per == OdometerUnit.Miles ? Units.Mile : Units.Kilometre).Factor, Says = $"{turns.Says} / {per.InWords()}" }
            : null;

    // An earlier count is no quotation.
    private static bool IsQuoted(Known known) => known.Source is Source.MakersData or Source.Tag or Source.OwnersWord or Source.Assumed;

    // A curve that is drawn through the peaks says them itself.
    private static ToldPeak? Told(EngineComponent engine, Noted? peak, Noted? at)
        => peak is null || (engine.TorquePoints is null && engine.Torque() is not null) ? null : new(peak.Si, at?.Si, peak.Source);

    /// <summary>The number of this name; null where it is not known.</summary>
    private Known? Find(string number) => numbers.FirstOrDefault(known => known.Number == number)?.Used;
}
