using System.Text.RegularExpressions;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed partial class TransmissionEntries : PartEntries
{
    private const string Clutch = "clutch";
    private const string Locks = "locks";
    private const string Slips = "slips";

    private static readonly char[] Between = [' ', ';', '\n', '\t'];

    public override Component New() => new TransmissionComponent();

    protected override string NameHint => Spoken("such as Pinewood five-speed");

    private static readonly SpecField<TransmissionComponent> Reverse = new(Spec.Reverse, new Later("Reverse"), new Later("as a plain number, such as 2.20"), t => t.Reverse, (t, n) => t.Reverse = n);

    private static IReadOnlyList<SpecField<TransmissionComponent>> Numbers =>
    [
        new(Spec.StallSpeed, Spoken("Stall speed"), Spoken("such as 2100 rpm"), t => t.StallSpeed, (t, n) => t.StallSpeed = n) { ShownWhen = HasConverter },
        new(Spec.StallTorqueRatio, Spoken("Stall torque ratio"), Spoken("such as 2.1"), t => t.StallTorqueRatio, (t, n) => t.StallTorqueRatio = n) { ShownWhen = HasConverter },
        new(Spec.TorqueRating, Spoken("Torque rating"), Spoken("what its input may take, such as 300 Nm"), t => t.TorqueRating, (t, n) => t.TorqueRating = n),
        new(Spec.ClutchRating, Spoken("Clutch rating"), Spoken("or the flexplate's, such as 320 Nm"), t => t.ClutchRating, (t, n) => t.ClutchRating = n),
        new(Spec.Spigot, Spoken("Spigot"), Spoken("in the crankshaft's pilot, such as 15.00 mm"), t => t.Spigot, (t, n) => t.Spigot = n),
    ];

    private static IReadOnlyList<TraitField<TransmissionComponent>> Ends =>
    [
        new(Trait.BellHousing, Spoken("Bell housing"), Spoken("its pattern, adapter plate on, such as Corvane six"), t => t.BellHousing, (t, w) => t.BellHousing = w),
        new(Trait.InputSpline, Spoken("Input spline"), Spoken("such as 26 × 1 1/8 in"), t => t.InputSpline, (t, w) => t.InputSpline = w),
        new(Trait.DiscSpline, Spoken("Disc spline"), Spoken("of the clutch disc or converter"), t => t.DiscSpline, (t, w) => t.DiscSpline = w),
        new(Trait.Output, Spoken("Output"), Spoken("flange or spline, such as flange 4 × 80 mm"), t => t.Output, (t, w) => t.Output = w),
    ];

    private static bool HasConverter(FormValues values) => values["converter"] != Clutch;

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var box = (TransmissionComponent)part;
        return
        [
            new TextEntry("gears", Spoken("Forward ratios"))
            {
                AnswersFor = ["gear"],
                Initial = string.Join(' ', box.Gears.Select(gear => gear.Ratio.Text)),
                Hint = Spoken("first to top with spaces between: 3.64 2.09 1.38 1.00 0.82"),
                Check = values => Ratios(values).Select(RatioRange.Gear.Read).Select(read => read.Refusal?.Sentence).FirstOrDefault(sentence => sentence is not null),
                Echo = values => Ratios(values) switch { [] => null, [_] => Spoken("1 gear"), var ratios => Spoken($"{ratios.Count} gears") },
            },
            Reverse.Entry(box) with { Echo = OfOneTrain },
            new TextEntry("teeth", Spoken("Teeth, if counted"))
            {
                Initial = box.GearTeeth ?? "",
                Hint = Spoken("constant mesh, then each gear's pair: 29/19 31/14 25/18 1"),
                Check = Forms.Checks.IfTyped("teeth", GearTrain.Read),
                Echo = values => GearTrain.Read(values["teeth"]).Understood(out var train) ? Spoken($"{string.Join(' ', train.Gears.Select(gear => Rounded.Fixed(gear.Ratio, 3)))}{ReverseOf(train)}, exact{MeshTurned(train)}{Apart(train, Ratios(values))}{ReverseApart(train, values)}") : null,
            },
            new ChoiceEntry("converter", Spoken("Behind it"), [new(Clutch, Spoken("clutch")), new(Locks, Spoken("converter that locks up")), new(Slips, Spoken("converter without lock-up"))])
            {
                Initial = box.ConverterLocksUp switch { null => Clutch, true => Locks, false => Slips },
            },
            .. Numbers.Select(field => field.Entry(box)),
            .. Ends.Select(field => field.Entry(box)),
            Choice("starter", Spoken("Starter opening"), Spoken("not looked at"), box.Starter, (StarterSide.Left, Spoken("left, from the driver's seat")), (StarterSide.Right, Spoken("right, from the driver's seat"))),
            Choice("turns", Spoken("Made to turn"), Spoken("not looked at"), box.Turns, (Sense.Clockwise, Spoken("clockwise, from in front")), (Sense.Anticlockwise, Spoken("anticlockwise, from in front"))),
            SpeedometerFeedEntry("feed", Spoken("Speedometer drive"), box.SpeedometerFeed),
            Present("brake", Spoken("Parking brake"), box.ParkingBrake),
            Present("linkage", Spoken("Shift linkage"), box.ShiftLinkage),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var transmission = (TransmissionComponent)part;
        transmission.ConverterLocksUp = values["converter"] switch { Locks => true, Slips => false, _ => null };
        foreach (var field in Numbers.Prepend(Reverse)) field.Apply(values, transmission, told);
        foreach (var field in Ends) field.Apply(values, transmission);
        transmission.Starter = Chosen<StarterSide>(values["starter"]);
        transmission.Turns = Chosen<Sense>(values["turns"]);
        transmission.SpeedometerFeed = Chosen<SpeedometerFeed>(values["feed"]);
        transmission.ParkingBrake = Chosen<Presence>(values["brake"]);
        transmission.ShiftLinkage = Chosen<Presence>(values["linkage"]);
        transmission.GearTeeth = values.IsEmpty("teeth") ? null : values["teeth"];

        var ratios = Ratios(values);

        // Unchanged ratios keep the names their gears were given.
        if (ratios.SequenceEqual(transmission.Gears.Select(gear => gear.Ratio.Text)) && SourceOf(part) == told.Now) return;
        transmission.Gears = TransmissionComponent.GearsFrom(told, ratios);
    }

    protected override Source? SourceOf(Component part) => ((TransmissionComponent)part).Gears.Select(gear => (Source?)gear.Ratio.Source).FirstOrDefault();

    // The question is put while both are on the screen; the finding comes later.
    private static string Apart(GearTrain train, IReadOnlyList<string> ratios)
    {
        if (ratios.Count == 0) return "";
        if (ratios.Count != train.Gears.Count) return Spoken($"; but {ratios.Count} ratios are typed");

        var apart = ratios.Select((text, k) => (Text: text, Gear: k + 1, Agrees: QuotedRatio.Read(text, RatioRange.Gear) is var read && read.Understood(out var quoted) && quoted.Agrees(train.Gears[k].Ratio))).FirstOrDefault(gear => !gear.Agrees);
        return apart.Text is null ? Spoken(", as typed") : Spoken($"; is gear {apart.Gear} really {apart.Text}?");
    }

    private static string MeshTurned(GearTrain train) => RatioTraps.OfConstantMesh(train) is { } question ? $"; {char.ToLowerInvariant(question.Asks[0])}{question.Asks[1..]}" : "";

    private static string ReverseOf(GearTrain train) => train.Reverse is { } reverse ? Spoken($", reverse {Rounded.Fixed(reverse, 3)}") : "";

    private static string ReverseApart(GearTrain train, FormValues values)
        => train.Reverse is { } reverse && QuotedRatio.Read(values[nameof(Spec.Reverse)], RatioRange.Gear).Understood(out var typed) && !typed.Agrees(reverse)
            ? Spoken($"; is reverse really {typed.InWords}?")
            : "";

    // First, second and reverse of two planetary sets bind each other.
    private static string? OfOneTrain(FormValues values)
        => values["converter"] != Clutch && Ratios(values) is [var one, var two, var three]
            && QuotedRatio.Read(one, RatioRange.Gear).Understood(out var first) && QuotedRatio.Read(two, RatioRange.Gear).Understood(out var second)
            && QuotedRatio.Read(three, RatioRange.Gear).Understood(out var top) && top.Ratio == 1
            && QuotedRatio.Read(values[nameof(Spec.Reverse)], RatioRange.Gear).Understood(out var reverse)
                ? SimpsonTrain.CanBe(first, second, reverse)
                    ? Spoken("agrees with first and second as of two planetary sets")
                    : Spoken($"two planetary sets would make first {Rounded.Fixed(SimpsonTrain.FirstBeside(second.Ratio, reverse.Ratio).Value, 2)}, not {first.InWords}: one is mistyped, or another build")
                : null;

    // A number with its point has no comma of its own: in "3.56,2.12" it parts two.
    private static IReadOnlyList<string> Ratios(FormValues values)
        => [.. PartingComma().Replace(values["gears"], " ").Split(Between, StringSplitOptions.RemoveEmptyEntries)];

    [GeneratedRegex(@", |(?<=\.\d+),", RegexOptions.CultureInvariant)]
    private static partial Regex PartingComma();
}
