using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Hunting;

/// <summary>The parts that are hunted with their offers, each judged; below them what they must be, and why an offer would do or not.</summary>
internal sealed class WantedPage : ListPage
{
    private readonly IWantedActs acts;
    private WantedModel model = new([]);

    // What was hunted before a hunt was begun; null where none was.
    private HashSet<long>? before;

    public WantedPage(IWantedActs acts)
        : base("Wanted", Spoken("Wanted"), Spoken("Nothing is hunted. Press h, or h on a way out of the page Options."))
    {
        this.acts = acts;
        Acts =
        [
            new((Key)'h', Spoken("Hunt another part"), new("h", Spoken("hunt")), (view, vehicle) => Hunt(view, vehicle.Id)),
            new((Key)'o', Spoken("Enter an offer, judged as it is typed"), new("o", Spoken("offer")), (view, vehicle) => On(row => acts.Offer(view, vehicle.Id, row))),
            new((Key)'i', Spoken("Type in what was counted in the yard"), new("i", Spoken("counts")), (view, vehicle) => On(row => acts.Count(view, vehicle.Id, row))),
            new((Key)'c', Spoken("The yard card"), new("c", Spoken("card")), (view, vehicle) => On(row => acts.Card(view, vehicle.Id, row))),
            new(Key.Enter, Spoken("Change it"), new("Enter", Spoken("change")), (view, vehicle) => On(row => acts.Edit(view, vehicle.Id, row))),
            new((Key)'d', Spoken("Found, or wanted no more"), new("d", Spoken("done")), (view, vehicle) => On(row => acts.Close(view, vehicle.Id, row))),
            new((Key)'-', Spoken("Strike the chosen offer, count or hunt"), new("-", Spoken("strike")), (_, vehicle) => On(row => acts.Strike(vehicle.Id, row))),
        ];
    }

    public override IReadOnlyList<PageAct> Acts { get; }

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        int? begun = before is { } known && model.Rows.ToList().FindIndex(row => !known.Contains(row.WantedId)) is >= 0 and var at ? at : null;
        before = null;
        Show(
            [new(Spoken("wanted, and offered for it")), new(Spoken("window, claim"), 14), new(Spoken("price"), 14, Right: true), new(Spoken("the offer"), 9)],
            model.Rows, Cells, (row, _) => [TextLine.Of(row.What, Tone.Strong), .. row.Lines.Select(line => TextLine.Of(line))], fromTop, begun);
    }

    private static TextRun[] Cells(WantedRow row) =>
    [
        row is { OfferId: null, CountedId: null } ? new(row.What, Tone.Strong) : new($"  └ {row.What}"), new(AsWritten.Numbers(row.Says)), new(row.Price),
        row.Verdict is { } verdict ? new($"{verdict.Sign()} {row.State}", verdict.Tone()) : new(row.State, row.IsOverdue ? Tone.Clash : Tone.Quiet),
    ];

    // What is done next is about the new hunt.
    private string? Hunt(IWorkbenchView view, long vehicleId)
    {
        var known = model.Rows.Select(row => row.WantedId).ToHashSet();
        var said = acts.New(view, vehicleId);
        before = said is null ? null : known;
        return said;
    }

    private string? On(Func<WantedRow, string?> act) => model.Rows.ElementAtOrDefault(Row) is { } row ? act(row) : null;
}
