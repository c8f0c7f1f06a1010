using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class AxleEntries : PartEntries
{
    public override Component New() => new AxleComponent();

    protected override string NameHint => "such as Harrow banjo axle";

    protected override IEnumerable<Entry> Spec(Component part)
    {
        var axle = (AxleComponent)part;
        return
        [
            new TextEntry("teeth", "Teeth, if counted")
            {
                Initial = axle.Teeth?.ToString() ?? "",
                Hint = "ring/pinion, such as 41/10",
                Check = Forms.Checks.IfTyped("teeth", Teeth.Read),
                Echo = values => Teeth.Read(values["teeth"]).Understood(out var teeth) ? $"ratio {Rounded.Fixed(teeth.Ratio, 3)}, exact" : null,
            },
            new TextEntry("ratio", "Ratio, if stated")
            {
                Initial = axle.StatedRatio?.Text ?? "",
                Hint = "such as 4.10; leave empty and count turns",
                Check = Forms.Checks.IfTyped("ratio", RatioRange.Axle.Read),
            },
            new TextEntry("hub", "Hub reduction") { Initial = axle.HubReduction?.Text ?? "", Hint = "empty for none", Check = Forms.Checks.IfTyped("hub", RatioRange.Hub.Read) },
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var axle = (AxleComponent)part;
        axle.Teeth = values.IsEmpty("teeth") ? null : Teeth.Read(values["teeth"]).OrRefuse();
        axle.StatedRatio = Note(values["ratio"], text => Noted.Ratio(text, RatioRange.Axle, source));
        axle.HubReduction = Note(values["hub"], text => Noted.Ratio(text, RatioRange.Hub, source));
    }

    protected override Source? SourceOf(Component part) => part is AxleComponent axle ? (axle.StatedRatio ?? axle.HubReduction)?.Source : null;
}
