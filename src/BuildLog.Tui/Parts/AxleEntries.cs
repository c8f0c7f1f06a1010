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
    private static readonly IReadOnlyList<SpecField<AxleComponent>> Numbers =
    [
        new(Spec.LowStep, "Two-speed", "low over high 1.39, 9.04/6.50 or planetary 46/18", a => a.LowStep, (a, n) => a.LowStep = n),
        new(Spec.TorqueRating, "Torque rating", "at the wheels, both shafts, such as 2500 Nm", a => a.TorqueRating, (a, n) => a.TorqueRating = n),
        new(Spec.HubFaces, "Hub to hub", "face to face, such as 1480 mm", a => a.HubFaces, (a, n) => a.HubFaces = n),
        new(Spec.Droop, "Droop", "down from ride height, such as 90 mm", a => a.Droop, (a, n) => a.Droop = n),
        new(Spec.Bump, "Bump", "up to the stop, such as 80 mm", a => a.Bump, (a, n) => a.Bump = n),
        new(Spec.Perches, "Perches apart", "spring to spring, such as 1020 mm", a => a.Perches, (a, n) => a.Perches = n),
        new(Spec.PinionToPerch, "Pinion to perch", "pinion against the perches, nose high is +, such as 3 deg", a => a.PinionToPerch, (a, n) => a.PinionToPerch = n),
    ];

    private static readonly TraitField<AxleComponent> Flange = new(Trait.PinionFlange, "Pinion flange", "such as flange 4 × 80 mm", a => a.PinionFlange, (a, w) => a.PinionFlange = w);

    public override Component New() => new AxleComponent();

    protected override string NameHint => "such as Harrow banjo axle";

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var axle = (AxleComponent)part;
        return
        [
            new TextEntry("teeth", "Teeth, if counted")
            {
                Initial = axle.Teeth?.ToString() ?? "",
                Hint = "ring/pinion, such as 41/10",
                Check = Forms.Checks.IfTyped("teeth", Teeth.Read),
                Echo = values => Teeth.Read(values["teeth"]).Understood(out var teeth)
                    ? $"ratio {Rounded.Fixed(teeth.Ratio, 3)}, exact{(QuotedRatio.Read(values["ratio"], RatioRange.Axle).Understood(out var stated) && !stated.Agrees(teeth.Ratio) ? $"; is it really {stated.Text}?" : "")}"
                    : null,
            },
            new TextEntry("ratio", "Ratio, if stated")
            {
                Initial = axle.StatedRatio?.Text ?? "",
                Hint = "such as 4.10; leave empty and count turns",
                Check = Forms.Checks.IfTyped("ratio", RatioRange.Axle.Read),
            },
            new TextEntry("hub", "Hub reduction") { Initial = axle.HubReduction?.Text ?? "", Hint = "empty for none", Check = Forms.Checks.IfTyped("hub", RatioRange.Hub.Read) },
            .. Numbers.Select(field => field.Entry(axle)),
            Flange.Entry(axle),
            Present("brake", "Parking brake", axle.ParkingBrake),
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
