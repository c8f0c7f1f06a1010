using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class TransferCaseEntries : PartEntries
{
    public override Component New() => new TransferCaseComponent();

    protected override string NameHint => "such as Brackenridge two-speed";

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var box = (TransferCaseComponent)part;
        return
        [
            new TextEntry("high", "High ratio") { Initial = box.High?.Text ?? "", Hint = "for the road, such as 1.00", Check = Forms.Checks.IfTyped("high", RatioRange.Transfer.Read) },
            new TextEntry("low", "Low ratio") { Initial = box.Low?.Text ?? "", Hint = "such as 2.30", Check = Forms.Checks.IfTyped("low", RatioRange.Transfer.Read) },
            Choice("front", "Front axle", "not said", box.FrontDrive,
                (FrontDrive.ThroughShaft, "always joined"), (FrontDrive.Declutch, "engaged by hand"),
                (FrontDrive.CentreDifferential, "centre differential"), (FrontDrive.ClutchPack, "clutch pack")),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var box = (TransferCaseComponent)part;
        box.FrontDrive = Chosen<FrontDrive>(values["front"]);
        box.High = Note(box.High, values["high"], text => Noted.Ratio(text, RatioRange.Transfer, source));
        box.Low = Note(box.Low, values["low"], text => Noted.Ratio(text, RatioRange.Transfer, source));
    }

    protected override Source? SourceOf(Component part) => part is TransferCaseComponent box ? (box.High ?? box.Low)?.Source : null;
}
