using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class WheelSetEntries : PartEntries
{
    private static IReadOnlyList<SpecField<WheelSetComponent>> Numbers =>
    [
        new(Spec.LoadedRadius, Spoken("Loaded radius"), Spoken("axle to ground, such as 312 mm"), w => w.LoadedRadius, (w, n) => w.LoadedRadius = n),
        new(Spec.RimWidth, Spoken("Rim width"), Spoken("between the beads, such as 6 in"), w => w.RimWidth, (w, n) => w.RimWidth = n) { Against = NoRimOfIt },
        new(Spec.Offset, Spoken("Offset"), Spoken("face to rim middle, such as 25 mm"), w => w.Offset, (w, n) => w.Offset = n),
    ];

    public override Component New() => new WheelSetComponent();

    protected override string NameHint => Spoken("such as steel wheels, all-season");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var wheels = (WheelSetComponent)part;
        return
        [
            new TextEntry("size", Spoken("Tyre size"))
            {
                Initial = wheels.SizeText,
                Hint = Spoken("as marked, such as 205/65R15 94H"),
                Check = Forms.Checks.IfTyped("size", TyreSizeText.Read),
                Echo = values => TyreSizeText.Read(values["size"]).Understood(out var size)
                    ? Spoken($"{Rounded.Fixed(size.OverallDiameter * 1000, 0)} mm high, {Rounded.Fixed(size.OverallDiameter / 0.0254, 1)} in; rolls {Rounded.WithInterval(size.RollingCircumference, Units.Metre)}")
                    : null,
            },
            new TextEntry("worn", Spoken("Tread worn by"))
            {
                Initial = wheels.Worn?.Text ?? "",
                Hint = Spoken("such as 3 mm; empty for none"),
                Check = Forms.Checks.IfTyped("worn", ReadDepth, values => WornTooFar(values["size"], values["worn"])),
                Echo = OtherUnits.Of("worn", ReadDepth),
            },
            new TextEntry("circumference", Spoken("Circumference"))
            {
                Initial = wheels.StatedCircumference?.Text ?? "",
                Hint = Spoken("only if stated, such as 2.04 m; a roll-out is better"),
                Check = Forms.Checks.IfTyped("circumference", ReadLength),
                Echo = OtherUnits.Of("circumference", ReadLength),
            },
            new ChoiceEntry("construction", Spoken("Construction"), [new(nameof(Construction.Radial), Spoken("radial")), new(nameof(Construction.Bias), Spoken("bias"))])
            {
                Initial = wheels.Construction.ToString(),
                ShownWhen = values => values.IsEmpty("size"),
            },
            .. Numbers.Select(field => field.Entry(wheels)),
            .. BoltingEntries.Entries(wheels),
            new YesNoEntry("truck", Spoken("Car tyres on a truck")) { IsYes = wheels.PassengerOnTruck, Hint = Spoken("they carry a tenth less there") },
            new YesNoEntry("twin", Spoken("Twin rear tyres")) { IsYes = wheels.TwinRear },
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var wheels = (WheelSetComponent)part;
        wheels.SizeText = values["size"];
        foreach (var field in Numbers) field.Apply(values, wheels, told);
        BoltingEntries.Apply(values, wheels, told);
        wheels.PassengerOnTruck = values.IsYes("truck");
        wheels.TwinRear = values.IsYes("twin");
        wheels.Worn = told.Of(wheels.Worn, values["worn"], text => Noted.Length(text, told, Units.Millimetre));
        wheels.StatedCircumference = told.Of(wheels.StatedCircumference, values["circumference"], text => Noted.Length(text, told));

        // A marking says how the cords lie; without one the person does.
        wheels.Construction = TyreSizeText.Read(wheels.SizeText).Understood(out var size) ? size.Construction
            : Enum.TryParse<Construction>(values["construction"], out var construction) ? construction
            : Construction.Radial;
    }

    // A marking is read off the tyre.
    protected override Source? SourceOf(Component part)
        => part is WheelSetComponent wheels ? (wheels.StatedCircumference ?? wheels.Worn)?.Source ?? (wheels.SizeText.Length > 0 ? Source.Tag : null) : null;

    private static string? WornTooFar(string size, string worn)
        => TyreSizeText.Read(size).Understood(out var marked) && ReadDepth(worn).Understood(out var depth) ? marked.WornBy(depth).Refusal?.Sentence : null;

    // A bead does not reach further; what is only unwise to mount is the rim check's matter.
    private static string? NoRimOfIt(FormValues values)
    {
        const double Narrowest = 0.5, Widest = 1.3;
        if (!TyreSizeText.Read(values["size"]).Understood(out var size) || !Spec.RimWidth.Line().Read(values[nameof(Spec.RimWidth)]).Understood(out var rim)) return null;

        var share = rim.Value / size.SectionWidth;
        return share is >= Narrowest and <= Widest
            ? null
            : Spoken($"A tyre {Rounded.Fixed(size.SectionWidth * 1000, 0)} mm wide sits on no rim of {Shown.Cut(rim.Text)}: its rims are some {Rounded.Exact(size.RimWidth.Low)} to {Rounded.Exact(size.RimWidth.High)} in wide. Example: {Rounded.Exact(size.RimWidth.Measuring)} in");
    }

    private static Parsed<Typed> ReadDepth(string text) => QuantityText.Read(text, Kind.Length, Units.Millimetre).Showing("3 mm");

    private static Parsed<Typed> ReadLength(string text) => QuantityText.Read(text, Kind.Length);
}
