using System.Globalization;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class SpeedometerEntries : PartEntries
{
    private const string Gears = "gears";
    private const string Sender = "sender";

    private static readonly SpecField<SpeedometerComponent> Turns = new(
        Spec.TurnsWanted, new Later("Dial wants"), new Later("the small number on it: turns or pulses, such as 1000"), s => s.TurnsWanted, (s, n) => s.TurnsWanted = n);

    private static readonly SpecField<SpeedometerComponent> Pulses = new(
        Spec.PulsesPerTurn, new Later("Pulses a turn"), new Later("such as 16"), s => s.PulsesPerTurn, (s, n) => s.PulsesPerTurn = n)
    { ShownWhen = values => values["drive"] == Sender };

    private static readonly SpecField<SpeedometerComponent> Correction = new(
        Spec.Correction, new Later("Correction"), new Later("of a correction box, such as 0.917; empty for none"), s => s.Correction, (s, n) => s.Correction = n);

    public override Component New() => new SpeedometerComponent();

    protected override string NameHint => Spoken("such as the frame's own speedometer");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var dial = (SpeedometerComponent)part;
        return
        [
            Turns.Entry(dial),
            Choice("per", Spoken("  over a"), Spoken("not said"), dial.Per, (OdometerUnit.Kilometres, Spoken("kilometre")), (OdometerUnit.Miles, Spoken("mile"))),
            Choice("pickup", Spoken("Driven at"), Spoken("the propshaft (usual)"), dial.Pickup, (Pickup.GearboxOutput, Spoken("gearbox, before the transfer case")), (Pickup.Wheel, Spoken("a wheel"))),
            new ChoiceEntry("drive", Spoken("Drive"), [new(Gears, Spoken("gears and a cable")), new(Sender, Spoken("a sender's pulses"))]) { Initial = dial.PulsesPerTurn is null ? Gears : Sender },
            Teeth("driving", Spoken("Drive gear"), dial.DriveTeeth, Spoken("teeth, such as 8")),
            Teeth("driven", Spoken("Driven gear"), dial.DrivenTeeth, Spoken("teeth, such as 21")),
            Pulses.Entry(dial),
            Correction.Entry(dial),
            Choice("takes", Spoken("Behind the dial"), Spoken("not looked at"), dial.SpeedometerFeed, (SpeedometerFeed.Cable, Spoken("a cable's nut")), (SpeedometerFeed.Pulses, Spoken("a plug for pulses"))),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var dial = (SpeedometerComponent)part;
        foreach (var field in new[] { Turns, Pulses, Correction }) field.Apply(values, dial, told);
        dial.Per = Chosen<OdometerUnit>(values["per"]);
        dial.SpeedometerFeed = Chosen<SpeedometerFeed>(values["takes"]);
        dial.Pickup = Chosen<Pickup>(values["pickup"]);
        dial.DriveTeeth = TeethOf(values["driving"]);
        dial.DrivenTeeth = TeethOf(values["driven"]);
    }

    protected override Source? SourceOf(Component part) => ((SpeedometerComponent)part).TurnsWanted?.Source;

    private static TextEntry Teeth(string id, string caption, int? now, string hint) => new(id, caption)
    {
        Initial = now?.ToString(CultureInfo.InvariantCulture) ?? "",
        Hint = hint,
        Check = Forms.Checks.IfTyped(id, ReadTeeth),
        AnswersFor = ["teeth"],
        ShownWhen = values => values["drive"] == Gears,
    };

    private static int? TeethOf(string text) => text.Length == 0 ? null : ReadTeeth(text).OrRefuse();

    private static Parsed<int> ReadTeeth(string text)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var teeth) && teeth is >= 2 and <= 100
            ? teeth
            : new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is no number of teeth of a speedometer gear: 2 to 100."), "21");
}
