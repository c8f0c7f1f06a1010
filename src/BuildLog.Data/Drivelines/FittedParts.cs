using BuildLog.Data.Components;
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
/// <param name="find">The number of this name; null where it is not known.</param>
internal sealed class FittedParts(Func<string, Known?> find)
{
    public Engine Of(EngineComponent engine) => new(engine.Name, find(PartNumbers.Idle), find(PartNumbers.Redline))
    {
        Torque = engine.Torque(),
        LowestPull = find(Spec.LowestPull.InWords()),
        Induction = engine.Induction ?? Induction.NaturallyAspirated,
    };

    public Transmission Of(TransmissionComponent box) => new(box.Name, [.. box.Gears.Select(gear => new Gear(gear.Name, find(PartNumbers.Gear(gear))!))])
    {
        Converter = box.ConverterLocksUp is { } locksUp ? new(locksUp, find(Spec.StallSpeed.InWords()), find(Spec.StallTorqueRatio.InWords())) : null,
        TorqueRating = find(Spec.TorqueRating.InWords()),
    };

    public TransferCase Of(TransferCaseComponent transfer) => new(transfer.Name, find(PartNumbers.High), find(PartNumbers.Low)) { FrontDrive = transfer.FrontDrive };

    public Axle Of(AxleComponent axle) => new(axle.Name, find(PartNumbers.Ratio))
    {
        Hub = Bolted(axle),
        HubFaces = find(Spec.HubFaces.InWords()),
        Travel = axle.Droop is null && axle.Bump is null ? null : new(find(Spec.Droop.InWords()), find(Spec.Bump.InWords())),
        TorqueRating = find(Spec.TorqueRating.InWords()),
    };

    public TyreSet Of(WheelSetComponent set)
    {
        var bolting = Bolted(set);
        return new(set.Name, find(PartNumbers.Circumference), set.Size)
        {
            LoadedRadius = find(Spec.LoadedRadius.InWords()),
            Wheel = set.RimWidth is null && set.Offset is null && bolting is null ? null : new(find(Spec.RimWidth.InWords()), find(Spec.Offset.InWords()), bolting),
            PassengerOnTruck = set.PassengerOnTruck,
            TwinRear = set.TwinRear,
        };
    }

    public Propshaft Of(PropshaftComponent shaft) => new(shaft.Name, [.. shaft.Pieces.Select(Piece)])
    {
        Line = Line(shaft),
        JointRating = find(Spec.JointRating.InWords()),
        Slip = shaft.SlipStroke is null && shaft.SlipOut is null ? null : new(find(Spec.SlipStroke.InWords()), find(Spec.SlipOut.InWords())),
    };

    public Speedometer Of(SpeedometerComponent meter) => new(meter.Name, PerMetre(meter), meter.Drive());

    private Bolting? Bolted(BoltedComponent part)
        => part is { Studs: null, PitchCircle: null, Bore: null, Thread: null, Seat: null }
            ? null
            : new(part.Studs, find(Spec.PitchCircle.InWords()), find(Spec.Bore.InWords()), part.Thread, part.Seat);

    private ShaftPiece Piece(StatedPiece piece, int k) => new(
        find(SpecNumbers.OfPiece(k, SpecSheet.ShaftOuter)), find(SpecNumbers.OfPiece(k, SpecSheet.ShaftWall)), find(SpecNumbers.OfPiece(k, SpecSheet.ShaftLength)), piece.Yokes);

    // Null while no angle at all was taken.
    private IReadOnlyList<Inclination>? Line(PropshaftComponent shaft)
    {
        if (shaft is { OutputSide: null, PinionSide: null } && shaft.Pieces.All(piece => piece.Side is null)) return null;

        return
        [
            new(find(Spec.OutputSide.InWords()), find(Spec.OutputPlan.InWords())),
            .. shaft.Pieces.Select((_, k) => new Inclination(find(SpecNumbers.OfPiece(k, SpecSheet.ShaftSide)), find(SpecNumbers.OfPiece(k, SpecSheet.ShaftPlan)))),
            new(find(Spec.PinionSide.InWords()), find(Spec.PinionPlan.InWords())),
        ];
    }

    private Known? PerMetre(SpeedometerComponent meter)
        => find(Spec.TurnsWanted.InWords()) is { } turns && meter.Per is { } per
            ? turns with { Value = turns.Value / (per == OdometerUnit.Miles ? Units.Mile : Units.Kilometre).Factor, Says = $"{turns.Says} / {per.InWords()}" }
            : null;
}
