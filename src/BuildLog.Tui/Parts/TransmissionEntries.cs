using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class TransmissionEntries : PartEntries
{
    private static readonly char[] Between = [' ', ';', '\n', '\t'];

    public override Component New() => new TransmissionComponent();

    protected override string NameHint => "such as Pinewood five-speed";

    protected override IEnumerable<Entry> Spec(Component part)
        =>
        [
            new TextEntry("gears", "Forward ratios")
            {
                Initial = string.Join(' ', ((TransmissionComponent)part).Gears.Select(gear => gear.Ratio.Text)),
                Hint = "first to top with spaces between: 3.64 2.09 1.38 1.00 0.82",
                Check = values => Ratios(values).Select(RatioRange.Gear.Read).Select(read => read.Refusal?.Sentence).FirstOrDefault(sentence => sentence is not null),
                Echo = values => Ratios(values) is { Count: > 0 } ratios ? FormattableString.Invariant($"{ratios.Count} gears") : null,
            },
        ];

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var transmission = (TransmissionComponent)part;
        var ratios = Ratios(values);

        // Unchanged ratios keep the names their gears were given.
        if (ratios.SequenceEqual(transmission.Gears.Select(gear => gear.Ratio.Text)) && SourceOf(part) == source) return;
        transmission.Gears = TransmissionComponent.GearsFrom(source, ratios);
    }

    protected override Source? SourceOf(Component part) => ((TransmissionComponent)part).Gears.Select(gear => (Source?)gear.Ratio.Source).FirstOrDefault();

    private static IReadOnlyList<string> Ratios(FormValues values)
        => [.. values["gears"].Replace(", ", " ", StringComparison.Ordinal).Split(Between, StringSplitOptions.RemoveEmptyEntries)];
}
