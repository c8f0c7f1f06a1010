using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class TransferCaseEntries : PartEntries
{
    private static IReadOnlyList<TraitField<TransferCaseComponent>> Outputs =>
    [
        new(Trait.Output, Spoken("Rear output"), Spoken("flange or spline, such as flange 4 × 80 mm"), t => t.Output, (t, w) => t.Output = w),
        new(Trait.FrontOutput, Spoken("Front output"), Spoken("towards the front axle"), t => t.FrontOutput, (t, w) => t.FrontOutput = w),
    ];

    private static SpecField<TransferCaseComponent> Rating => new(Spec.TorqueRating, Spoken("Torque rating"), Spoken("what its input may take, such as 1200 Nm"), t => t.TorqueRating, (t, n) => t.TorqueRating = n);

    public override Component New() => new TransferCaseComponent();

    protected override string NameHint => Spoken("such as Brackenridge two-speed");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var box = (TransferCaseComponent)part;
        return
        [
            new TextEntry("high", Spoken("High ratio")) { Initial = box.High?.Text ?? "", Hint = Spoken("for the road, such as 1.00"), Check = Forms.Checks.IfTyped("high", RatioRange.Transfer.Read) },
            new TextEntry("low", Spoken("Low ratio")) { AnswersFor = ["transfer"], Initial = box.Low?.Text ?? "", Hint = Spoken("such as 2.30, or its teeth: planetary 62/36"), Check = Forms.Checks.IfTyped("low", TransferCaseLow.Read) },
            Choice("front", Spoken("Front axle"), Spoken("not said"), box.FrontDrive,
                (FrontDrive.ThroughShaft, Spoken("always joined")), (FrontDrive.Declutch, Spoken("engaged by hand")),
                (FrontDrive.CentreDifferential, Spoken("centre differential")), (FrontDrive.ClutchPack, Spoken("clutch pack"))),
            Rating.Entry(box),
            .. Outputs.Select(field => field.Entry(box)),
            SpeedometerFeedEntry("feed", Spoken("Speedometer drive"), box.SpeedometerFeed),
            Present("brake", Spoken("Parking brake"), box.ParkingBrake),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var box = (TransferCaseComponent)part;
        box.FrontDrive = Chosen<FrontDrive>(values["front"]);
        Rating.Apply(values, box, told);
        foreach (var field in Outputs) field.Apply(values, box);
        box.SpeedometerFeed = Chosen<SpeedometerFeed>(values["feed"]);
        box.ParkingBrake = Chosen<Presence>(values["brake"]);
        box.High = told.Of(box.High, values["high"], text => Noted.Ratio(text, RatioRange.Transfer, told));
        box.Low = told.Of(box.Low, values["low"], text => Noted.TransferLow(text, told));
    }

    protected override Source? SourceOf(Component part) => part is TransferCaseComponent box ? (box.High ?? box.Low)?.Source : null;
}
