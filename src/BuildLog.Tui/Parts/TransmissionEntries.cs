using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class TransmissionEntries : PartEntries
{
    private const string Clutch = "clutch";
    private const string Locks = "locks";
    private const string Slips = "slips";

    private static readonly char[] Between = [' ', ';', '\n', '\t'];

    public override Component New() => new TransmissionComponent();

    protected override string NameHint => "such as Pinewood five-speed";

    private static readonly IReadOnlyList<SpecField<TransmissionComponent>> Numbers =
    [
        new(Spec.StallSpeed, "Stall speed", "such as 2100 rpm", t => t.StallSpeed, (t, n) => t.StallSpeed = n) { ShownWhen = HasConverter },
        new(Spec.StallTorqueRatio, "Stall torque ratio", "such as 2.1", t => t.StallTorqueRatio, (t, n) => t.StallTorqueRatio = n) { ShownWhen = HasConverter },
        new(Spec.TorqueRating, "Torque rating", "what its input may take, such as 300 Nm", t => t.TorqueRating, (t, n) => t.TorqueRating = n),
    ];

    private static bool HasConverter(FormValues values) => values["converter"] != Clutch;

    protected override IEnumerable<Entry> SpecEntries(Component part)
        =>
        [
            new TextEntry("gears", "Forward ratios")
            {
                Initial = string.Join(' ', ((TransmissionComponent)part).Gears.Select(gear => gear.Ratio.Text)),
                Hint = "first to top with spaces between: 3.64 2.09 1.38 1.00 0.82",
                Check = values => Ratios(values).Select(RatioRange.Gear.Read).Select(read => read.Refusal?.Sentence).FirstOrDefault(sentence => sentence is not null),
                Echo = values => Ratios(values) is { Count: > 0 } ratios ? FormattableString.Invariant($"{ratios.Count} gears") : null,
            },
            new ChoiceEntry("converter", "Behind it", [new(Clutch, "clutch"), new(Locks, "converter that locks up"), new(Slips, "converter without lock-up")])
            {
                Initial = ((TransmissionComponent)part).ConverterLocksUp switch { null => Clutch, true => Locks, false => Slips },
            },
            .. Numbers.Select(field => field.Entry((TransmissionComponent)part)),
        ];

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var transmission = (TransmissionComponent)part;
        transmission.ConverterLocksUp = values["converter"] switch { Locks => true, Slips => false, _ => null };
        foreach (var field in Numbers) field.Apply(values, transmission, source);

        var ratios = Ratios(values);

        // Unchanged ratios keep the names their gears were given.
        if (ratios.SequenceEqual(transmission.Gears.Select(gear => gear.Ratio.Text)) && SourceOf(part) == source) return;
        transmission.Gears = TransmissionComponent.GearsFrom(source, ratios);
    }

    protected override Source? SourceOf(Component part) => ((TransmissionComponent)part).Gears.Select(gear => (Source?)gear.Ratio.Source).FirstOrDefault();

    private static IReadOnlyList<string> Ratios(FormValues values)
        => [.. values["gears"].Replace(", ", " ", StringComparison.Ordinal).Split(Between, StringSplitOptions.RemoveEmptyEntries)];
}
