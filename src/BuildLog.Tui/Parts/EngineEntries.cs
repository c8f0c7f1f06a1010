using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class EngineEntries : PartEntries
{
    private static IReadOnlyList<SpecField<EngineComponent>> Peaks =>
    [
        new(Spec.TorquePoints, Spoken("Torque points"), Spoken("1500:180 Nm; 3000:210 Nm; as read: air 95 kPa 30 °C"), e => e.TorquePoints, (e, n) => e.TorquePoints = n)
        {
            Echo = values => TorqueText.Read(values[nameof(Spec.TorquePoints)]).Understood(out _) ? InWords(TorqueText.Curve(values[nameof(Spec.TorquePoints)], Source.MakersData)) : null,
        },
        new(Spec.PeakTorque, Spoken("Peak torque"), Spoken("such as 210 Nm"), e => e.PeakTorque, (e, n) => e.PeakTorque = n),
        new(Spec.PeakTorqueAt, Spoken("  at"), Spoken("such as 2600 rpm"), e => e.PeakTorqueAt, (e, n) => e.PeakTorqueAt = n),
        new(Spec.PeakPower, Spoken("Peak power"), Spoken("such as 77 kW or 105 hp"), e => e.PeakPower, (e, n) => e.PeakPower = n),
        new(Spec.PeakPowerAt, Spoken("  at"), Spoken("such as 4600 rpm"), e => e.PeakPowerAt, (e, n) => e.PeakPowerAt = n),
        new(Spec.LowestPull, Spoken("Lowest pull"), Spoken("lowest speed it pulls from cleanly, such as 1300 rpm"), e => e.LowestPull, (e, n) => e.LowestPull = n),
    ];

    private static IReadOnlyList<SpecField<EngineComponent>> Others =>
    [
        new(Spec.CriticalAltitude, Spoken("  up to"), Spoken("above sea level, such as 2500 m"), e => e.CriticalAltitude, (e, n) => e.CriticalAltitude = n)
        {
            ShownWhen = values => values["induction"] == nameof(Induction.Charged),
        },
        new(Spec.PilotBore, Spoken("Pilot bore"), Spoken("in the crankshaft, such as 15.05 mm"), e => e.PilotBore, (e, n) => e.PilotBore = n),
    ];

    private static readonly TraitField<EngineComponent> BellHousing = new(Trait.BellHousing, new Later("Bell housing"), new Later("the block's pattern, such as Corvane six"), e => e.BellHousing, (e, t) => e.BellHousing = t);

    public override Component New() => new EngineComponent();

    protected override string NameHint => Spoken("such as Harrow 2.4 straight four");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var engine = (EngineComponent)part;
        return
        [
            new TextEntry("idle", Spoken("Idle"))
            {
                Initial = engine.Idle?.Text ?? "",
                Hint = Spoken("such as 800 rpm"),
                Check = Forms.Checks.IfTyped("idle", CruiseGoal.ReadEngineSpeed),
                Echo = OtherUnits.Of("idle", CruiseGoal.ReadEngineSpeed),
            },
            new TextEntry("redline", Spoken("Redline"))
            {
                Initial = engine.Redline?.Text ?? "",
                Hint = Spoken("such as 5200 rpm; upshifts in the tables"),
                Check = Forms.Checks.IfTyped("redline", CruiseGoal.ReadEngineSpeed),
                Echo = OtherUnits.Of("redline", CruiseGoal.ReadEngineSpeed),
            },
            .. Peaks.Select(field => field.Entry(engine)),
            Choice("induction", Spoken("Breathes"), Spoken("not said"), engine.Induction, (Induction.NaturallyAspirated, Spoken("by itself")), (Induction.Charged, Spoken("charged"))),
            .. Others.Select(field => field.Entry(engine)),
            BellHousing.Entry(engine),
            Choice("plate", Spoken("On the crank"), Spoken("not looked at"), engine.Plate, (Plate.Flywheel, Spoken("flywheel")), (Plate.Flexplate, Spoken("flexplate"))),
            Choice("starter", Spoken("Starter"), Spoken("not looked at"), engine.Starter, (StarterSide.Left, Spoken("left, from the driver's seat")), (StarterSide.Right, Spoken("right, from the driver's seat"))),
            Choice("turns", Spoken("Turns"), Spoken("not looked at"), engine.Turns, (Sense.Clockwise, Spoken("clockwise, from in front")), (Sense.Anticlockwise, Spoken("anticlockwise, from in front"))),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var engine = (EngineComponent)part;
        foreach (var field in Peaks.Concat(Others)) field.Apply(values, engine, told);
        BellHousing.Apply(values, engine);
        engine.Plate = Chosen<Plate>(values["plate"]);
        engine.Starter = Chosen<StarterSide>(values["starter"]);
        engine.Turns = Chosen<Sense>(values["turns"]);
        engine.Induction = Chosen<Induction>(values["induction"]);
        engine.Idle = told.Of(engine.Idle, values["idle"], text => Noted.EngineSpeed(text, told));
        engine.Redline = told.Of(engine.Redline, values["redline"], text => Noted.EngineSpeed(text, told));
    }

    private static string InWords(TorqueCurve curve)
    {
        var (peak, most) = (curve.StrongestPoint, curve.MostPowerful);
        return Spoken($"{curve.Points.Count} points, most {Rounded.WithUnit(Rounded.Fixed(peak.Torque, 0), Units.NewtonMetre)} at {Turning(peak)}, {Rounded.WithUnit(Rounded.Fixed(most.Power / 1000, 0), Units.Kilowatt)} at {Turning(most)}");
    }

    private static string Turning(TorquePoint point) => Rounded.WithUnit(Rounded.Fixed(Units.RevolutionPerMinute.FromBase(point.EngineSpeed), 0), Units.RevolutionPerMinute);

    protected override Source? SourceOf(Component part) => part is EngineComponent engine ? (engine.Redline ?? engine.Idle)?.Source : null;
}
