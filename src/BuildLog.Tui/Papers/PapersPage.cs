using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Papers;

/// <summary>Photos, receipts and papers; one that is missing or damaged says so.</summary>
internal sealed class PapersPage(PapersActs acts) : ListPage("Papers", Spoken("Papers"), Spoken("No paper is kept yet. Press + to keep a photo, a receipt or a certificate with the vehicle."))
{
    private PapersModel model = new([]);

    public override IReadOnlyList<PageAct> Acts => Chosen is null ? [AddOne] : EveryAct;

    public override IReadOnlyList<PageAct> EveryAct =>
    [
        new(Key.Enter, Spoken("Open the paper with the system's viewer"), new("Enter", Spoken("open")), (view, vehicle) => Told(view, acts.Open(vehicle.Id, Chosen!))),
        AddOne,
        new((Key)'c', Spoken("Save a copy of the paper"), new("c", Spoken("copy")), (view, vehicle) => acts.SaveCopy(view, vehicle.Id, Chosen!)),
        new((Key)'l', Spoken("Edit the paper's caption"), new("l", Spoken("label")), (view, vehicle) => acts.Edit(view, vehicle.Id, Chosen!)),
        new((Key)'-', Spoken("Strike the paper"), new("-", Spoken("strike")), (_, vehicle) => acts.Strike(vehicle.Id, Chosen!)),
    ];

    private PageAct AddOne => new((Key)'+', Spoken("Keep a photo or a paper with the vehicle"), new("+", Spoken("add")), (view, vehicle) => acts.Attach(view, vehicle.Id)) { AtOnce = true };

    private PaperRow? Chosen => model.Rows.ElementAtOrDefault(Row);

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        Show([new(Spoken("file"), 24), new(Spoken("shows")), new(Spoken("taken"), 14, FromWidth: 60), new(Spoken("size"), 9, Right: true)], model.Rows, Cells, (row, _) => Lines(row), fromTop);
    }

    private static string? Told(IWorkbenchView view, string said)
    {
        view.Say(said);
        return null;
    }

    private static TextRun[] Cells(PaperRow row) =>
        [new(row.FileName, Tone.Strong), row.Trouble is null ? new(row.Caption) : new(Spoken("× missing or damaged"), Tone.Clash), new(row.Taken), new(row.Size)];

    private static IReadOnlyList<TextLine> Lines(PaperRow row) =>
    [
        TextLine.Of(new TextRun(row.FileName, Tone.Strong), new TextRun($"  {row.Kind}, {row.Size}{(row.About.Length > 0 ? Spoken(", of the ") + row.About : "")}", Tone.Quiet)),
        .. row.Trouble is { } trouble ? [TextLine.Of(trouble, Tone.Clash)] : Array.Empty<TextLine>(),
        row.Caption,
        .. row.Taken.Length > 0 ? [TextLine.Of(new TextRun(Spoken("Taken "), Tone.Quiet), new TextRun(row.Taken))] : Array.Empty<TextLine>(),
    ];
}
