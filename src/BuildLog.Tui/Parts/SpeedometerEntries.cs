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
        Spec.TurnsWanted, "Dial wants", "the small number on it: turns or pulses, such as 1000", s => s.TurnsWanted, (s, n) => s.TurnsWanted = n);

    private static readonly SpecField<SpeedometerComponent> Pulses = new(
        Spec.PulsesPerTurn, "Pulses a turn", "such as 16", s => s.PulsesPerTurn, (s, n) => s.PulsesPerTurn = n)
    { ShownWhen = values => values["drive"] == Sender };

    private static readonly SpecField<SpeedometerComponent> Correction = new(
        Spec.Correction, "Correction", "of a correction box, such as 0.917; empty for none", s => s.Correction, (s, n) => s.Correction = n);

    public override Component New() => new SpeedometerComponent();

    protected override string NameHint => "such as the frame's own speedometer";

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var dial = (SpeedometerComponent)part;
        return
        [
            Turns.Entry(dial),
            Choice("per", "  over a", "not said", dial.Per, (OdometerUnit.Kilometres, "kilometre"), (OdometerUnit.Miles, "mile")),
            Choice("pickup", "Driven at", "the propshaft (usual)", dial.Pickup, (Pickup.GearboxOutput, "gearbox, before the transfer case"), (Pickup.Wheel, "a wheel")),
            new ChoiceEntry("drive", "By", [new(Gears, "gears and a cable"), new(Sender, "a sender's pulses")]) { Initial = dial.PulsesPerTurn is null ? Gears : Sender },
            Teeth("driving", "Drive gear", dial.DriveTeeth, "teeth, such as 8"),
            Teeth("driven", "Driven gear", dial.DrivenTeeth, "teeth, such as 21"),
            Pulses.Entry(dial),
            Correction.Entry(dial),
            Choice("takes", "Behind the dial", "not looked at", dial.SpeedometerFeed, (SpeedometerFeed.Cable, "a cable's nut"), (SpeedometerFeed.Pulses, "a plug for pulses")),
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
        ShownWhen = values => values["drive"] == Gears,
    };

    private static int? TeethOf(string text) => text.Length == 0 ? null : ReadTeeth(text).OrRefuse();

    private static Parsed<int> ReadTeeth(string text)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var teeth) && teeth is >= 2 and <= 100
            ? teeth
            : new Refusal("teeth", $"{Shown.Quoted(text)} is no number of teeth of a speedometer gear: 2 to 100.", "21");
}
