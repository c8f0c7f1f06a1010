using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class OverdriveEntries : PartEntries
{
    public override Component New() => new OverdriveComponent();

    protected override string NameHint => "such as Sorrel overdrive unit";

    protected override IEnumerable<Entry> SpecEntries(Component part)
        =>
        [
            new TextEntry("ratio", "Ratio")
            {
                Initial = ((OverdriveComponent)part).OverdriveRatio?.Text ?? "",
                Hint = "engaged, such as 0.78",
                Check = Forms.Checks.IfTyped("ratio", RatioRange.Overdrive.Read),
            },
        ];

    protected override void ApplySpec(FormValues values, Component part, Source source)
        => ((OverdriveComponent)part).OverdriveRatio = Note(((OverdriveComponent)part).OverdriveRatio, values["ratio"], text => Noted.Ratio(text, RatioRange.Overdrive, source));

    protected override Source? SourceOf(Component part) => ((OverdriveComponent)part).OverdriveRatio?.Source;
}
