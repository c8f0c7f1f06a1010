using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Decisions;

/// <summary>What was decided and noted, the latest first; below it why.</summary>
internal sealed class DecisionsPage(DecisionsActs acts) : ListPage("Decisions", Spoken("Decisions"), Spoken("Nothing decided or noted yet. Press + and later years will know why."))
{
    private DecisionsModel model = new([]);

    public override IReadOnlyList<PageAct> Acts => Chosen is null ? [AddOne] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct =>
    [
        AddOne,
        new(Key.Enter, Spoken("Edit the chosen decision or note"), new("Enter", Spoken("edit")), (view, vehicle) => acts.Edit(view, vehicle.Id, Chosen!)),
        new((Key)'-', Spoken("Strike the chosen decision or note"), new("-", Spoken("strike")), (_, vehicle) => acts.Strike(vehicle.Id, Chosen!)),
    ];

    private PageAct AddOne => new((Key)'+', Spoken("Write down a decision or a note"), new("+", Spoken("add")), (view, vehicle) => acts.Add(view, vehicle.Id)) { AtOnce = true };

    private DecisionRow? Chosen => model.Rows.ElementAtOrDefault(Row);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        Show([new(Spoken("date"), 11), new("", 8), new(Spoken("what")), new(Spoken("agreed by"), 18, FromWidth: 60)], model.Rows, Cells, (row, _) => Lines(row), fromTop);
    }

    private static TextRun[] Cells(DecisionRow row) =>
    [
        new(DayText.InShort(row.Day)),
        new(row.Kind.InWords(), Tone.Quiet),
        new(row.Title.Length > 0 ? row.Title : row.Text.Split('\n')[0], Tone.Strong),
        new(row.AgreedBy),
    ];

    private static IReadOnlyList<TextLine> Lines(DecisionRow row) =>
    [
        TextLine.Of(row.Title, Tone.Strong),
        .. row.AgreedBy.Length > 0 ? [TextLine.Of(new TextRun(Spoken("Agreed by "), Tone.Quiet), new TextRun(row.AgreedBy))] : Array.Empty<TextLine>(),
        .. row.Text.Split('\n').Select(line => TextLine.Of(line)),
    ];
}
