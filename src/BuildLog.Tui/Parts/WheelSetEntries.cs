using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class WheelSetEntries : PartEntries
{
    public override Component New() => new WheelSetComponent();

    protected override string NameHint => "such as steel wheels, all-season";

    protected override IEnumerable<Entry> Spec(Component part)
    {
        var wheels = (WheelSetComponent)part;
        return
        [
            new TextEntry("size", "Tyre size")
            {
                Initial = wheels.SizeText,
                Hint = "as marked, such as 205/65R15 94H",
                Check = Forms.Checks.IfTyped("size", TyreSizeText.Read),
                Echo = values => TyreSizeText.Read(values["size"]).Understood(out var size)
                    ? $"{Rounded.Fixed(size.OverallDiameter * 1000, 0)} mm high, {Rounded.Fixed(size.OverallDiameter / 0.0254, 1)} in; rolls {Rounded.WithInterval(size.RollingCircumference, Units.Metre)}"
                    : null,
            },
            new TextEntry("worn", "Tread worn by") { Initial = wheels.Worn?.Text ?? "", Hint = "such as 3 mm; empty for none", Check = Forms.Checks.IfTyped("worn", ReadDepth) },
            new TextEntry("circumference", "Circumference") { Initial = wheels.StatedCircumference?.Text ?? "", Hint = "only if stated, such as 2.04 m; a roll-out is better", Check = Forms.Checks.IfTyped("circumference", ReadLength) },
            new ChoiceEntry("construction", "Construction", [new(nameof(Construction.Radial), "radial"), new(nameof(Construction.Bias), "bias")])
            {
                Initial = wheels.Construction.ToString(),
                ShownWhen = values => values.IsEmpty("size"),
            },
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var wheels = (WheelSetComponent)part;
        wheels.SizeText = values["size"];
        wheels.Worn = Note(values["worn"], text => Noted.Length(text, source, Units.Millimetre));
        wheels.StatedCircumference = Note(values["circumference"], text => Noted.Length(text, source));

        // A marking says how the cords lie; without one the person does.
        wheels.Construction = TyreSizeText.Read(wheels.SizeText).Understood(out var size) ? size.Construction
            : Enum.TryParse<Construction>(values["construction"], out var construction) ? construction
            : Construction.Radial;
    }

    protected override Source? SourceOf(Component part) => ((WheelSetComponent)part).StatedCircumference?.Source;

    private static Parsed<Typed> ReadDepth(string text) => QuantityText.Read(text, Kind.Length, Units.Millimetre);

    private static Parsed<Typed> ReadLength(string text) => QuantityText.Read(text, Kind.Length);
}
