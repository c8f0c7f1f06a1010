using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Changes;

/// <summary>What was changed, the latest first; below it each value before and after.</summary>
internal sealed class ChangesPage(ChangesActs acts) : ListPage("Changes", Spoken("Changes"), Spoken("Nothing has been changed yet."))
{
    private ChangesModel model = new([]);

    public override IReadOnlyList<PageAct> Acts => Chosen is null ? [] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct =>
        [new((Key)'-', Spoken("Take the chosen change back"), new("-", Spoken("take back")), (_, vehicle) => acts.TakeBack(vehicle.Id, Chosen!))];

    private ChangeLine? Chosen => model.Rows.ElementAtOrDefault(Row);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        Show([new(Spoken("when"), 17), new(Spoken("did")), new("", 10, FromWidth: 70)], model.Rows, Cells, (row, _) => Lines(row), fromTop);
    }

    private static TextRun[] Cells(ChangeLine row) =>
        [new(row.When, Tone.Quiet), new(row.Did, row.IsUndone ? Tone.Quiet : Tone.Plain), new(row.IsUndone ? Spoken("taken back") : "", Tone.Quiet)];

    private static IReadOnlyList<TextLine> Lines(ChangeLine row) =>
    [
        TextLine.Of(new TextRun(row.Did, Tone.Strong), new TextRun(Spoken($"  {row.When}, at the computer “{row.Machine}”"), Tone.Quiet)),
        .. row.Fields.Select(field => TextLine.Of(new TextRun($"{field.Name}  ", Tone.Quiet), new TextRun(InWords(field)))),
    ];

    private static string InWords(ChangedValue field) => (field.Before, field.After) switch
    {
        (null, { } after) => after,
        ({ } before, null) => Spoken($"{before} → nothing"),
        var (before, after) => $"{before} → {after}",
    };
}
