using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class AxleEntries : PartEntries
{
    private static IReadOnlyList<SpecField<AxleComponent>> Numbers =>
    [
        new(Spec.LowStep, Spoken("Two-speed"), Spoken("low over high 1.39, 9.04/6.50 or planetary 46/18"), a => a.LowStep, (a, n) => a.LowStep = n),
        new(Spec.TorqueRating, Spoken("Torque rating"), Spoken("at the wheels, both shafts, such as 2500 Nm"), a => a.TorqueRating, (a, n) => a.TorqueRating = n),
        new(Spec.HubFaces, Spoken("Hub to hub"), Spoken("face to face, such as 1480 mm"), a => a.HubFaces, (a, n) => a.HubFaces = n),
        new(Spec.Droop, Spoken("Droop"), Spoken("down from ride height, such as 90 mm"), a => a.Droop, (a, n) => a.Droop = n),
        new(Spec.Bump, Spoken("Bump"), Spoken("up to the stop, such as 80 mm"), a => a.Bump, (a, n) => a.Bump = n),
        new(Spec.Perches, Spoken("Perches apart"), Spoken("spring to spring, such as 1020 mm"), a => a.Perches, (a, n) => a.Perches = n),
        new(Spec.PinionToPerch, Spoken("Pinion to perch"), Spoken("pinion against the perches, nose high is +, such as 3 deg"), a => a.PinionToPerch, (a, n) => a.PinionToPerch = n),
    ];

    private static readonly TraitField<AxleComponent> Flange = new(Trait.PinionFlange, new Later("Pinion flange"), new Later("such as flange 4 × 80 mm"), a => a.PinionFlange, (a, w) => a.PinionFlange = w);

    public override Component New() => new AxleComponent();

    protected override string NameHint => Spoken("such as Harrow banjo axle");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var axle = (AxleComponent)part;
        return
        [
            new TextEntry("teeth", Spoken("Teeth, if counted"))
            {
                Initial = axle.Teeth?.ToString() ?? "",
                Hint = Spoken("ring/pinion, such as 41/10"),
                Check = Forms.Checks.IfTyped("teeth", Teeth.Read),
                Echo = values => Teeth.Read(values["teeth"]).Understood(out var teeth)
                    ? Spoken($"ratio {Rounded.Fixed(teeth.Ratio, 3)}, exact{(QuotedRatio.Read(values["ratio"], RatioRange.Axle).Understood(out var stated) && !stated.Agrees(teeth.Ratio) ? Spoken($"; is it really {stated.InWords}?") : "")}")
                    : null,
            },
            new TextEntry("ratio", Spoken("Ratio, if stated"))
            {
                Initial = axle.StatedRatio?.Text ?? "",
                Hint = Spoken("such as 4.10; leave empty and count turns"),
                Check = Forms.Checks.IfTyped("ratio", RatioRange.Axle.Read),
            },
            new TextEntry("hub", Spoken("Hub reduction")) { Initial = axle.HubReduction?.Text ?? "", Hint = Spoken("empty for none"), Check = Forms.Checks.IfTyped("hub", RatioRange.Hub.Read) },
            .. Numbers.Select(field => field.Entry(axle)),
            Flange.Entry(axle),
            Present("brake", Spoken("Parking brake"), axle.ParkingBrake),
            .. BoltingEntries.Entries(axle),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var axle = (AxleComponent)part;
        axle.Teeth = values.IsEmpty("teeth") ? null : Teeth.Read(values["teeth"]).OrRefuse();
        foreach (var field in Numbers) field.Apply(values, axle, told);
        Flange.Apply(values, axle);
        axle.ParkingBrake = Chosen<Presence>(values["brake"]);
        BoltingEntries.Apply(values, axle, told);
        axle.StatedRatio = told.Of(axle.StatedRatio, values["ratio"], text => Noted.Ratio(text, RatioRange.Axle, told));
        axle.HubReduction = told.Of(axle.HubReduction, values["hub"], text => Noted.Ratio(text, RatioRange.Hub, told));
    }

    protected override Source? SourceOf(Component part) => part is AxleComponent axle ? (axle.StatedRatio ?? axle.HubReduction)?.Source : null;
}
