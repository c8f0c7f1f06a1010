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

    // What was there before something was done, and on what it was done; null where nothing was.
    private (Dictionary<RowId, string> Before, RowId? On)? done;

    public WantedPage(IWantedActs acts)
        : base("Wanted", Spoken("Wanted"), Spoken("Nothing is hunted. Press h, or h on a way out of the page Options."))
    {
        this.acts = acts;
        Acts =
        [
            new((Key)'h', Spoken("Hunt another part"), new("h", Spoken("hunt")), (view, vehicle) => Do(null, () => acts.New(view, vehicle.Id))),
            new((Key)'o', Spoken("Enter an offer, judged as it is typed"), new("o", Spoken("offer")), (view, vehicle) => On(row => acts.Offer(view, vehicle.Id, row))),
            new((Key)'i', Spoken("Type in what was counted in the yard"), new("i", Spoken("counts")), (view, vehicle) => On(row => acts.Count(view, vehicle.Id, row))),
            new((Key)'c', Spoken("The yard card"), new("c", Spoken("card")), (view, vehicle) => On(row => acts.Card(view, vehicle.Id, row))),
            new(Key.Enter, Spoken("Change it"), new("Enter", Spoken("change")), (view, vehicle) => On(row => acts.Edit(view, vehicle.Id, row))),
            new((Key)'d', Spoken("Found, or wanted no more"), new("d", Spoken("done")), (view, vehicle) => On(row => acts.Close(view, vehicle.Id, row))),
            new((Key)'-', Spoken("Strike the chosen offer, count or hunt"), new("-", Spoken("strike")), (_, vehicle) => On(row => acts.Strike(vehicle.Id, row))),
            new((Key)'j', Spoken("Join a count that stands by itself to the offer it was made on"), new("j", Spoken("join")), (view, vehicle) => On(row => acts.Join(view, vehicle.Id, row))),
        ];
    }

    public override IReadOnlyList<PageAct> Acts { get; }

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        var at = Done();
        done = null;
        Show(
            [new(Spoken("wanted, and offered for it")), new(Spoken("window, claim"), 14), new(Spoken("price"), 14, Right: true), new(Spoken("the offer"), 9)],
            model.Rows, Cells, (row, _) => [TextLine.Of(row.What, Tone.Strong), .. row.Lines.Select(line => TextLine.Of(line))], fromTop, at);
    }

    private static TextRun[] Cells(WantedRow row) =>
    [
        row is { OfferId: null, CountedId: null } ? new(row.What, Tone.Strong) : new($"  └ {row.What}"), new(AsWritten.Numbers(row.Says)), new(row.Price),
        row.Verdict is { } verdict ? new($"{verdict.Sign()} {row.State}", verdict.Tone()) : new(row.State, row.IsOverdue ? Tone.Clash : Tone.Quiet),
    ];

    private string? On(Func<WantedRow, string?> act) => model.Rows.ElementAtOrDefault(Row) is { } row ? Do(row, () => act(row)) : null;

    private string? Do(WantedRow? row, Func<string?> act)
    {
        var before = model.Rows.ToDictionary(IdOf, each => each.Says);
        var said = act();
        done = said is null ? null : (before, row is null ? null : IdOf(row));
        return said;
    }

    // What is done next is about what was entered, or else what was changed, wherever it stands now; a count that was joined stands in its offer.
    private int? Done()
    {
        if (done is not var (before, on)) return null;
        var ids = model.Rows.Select(IdOf).ToList();
        var entered = ids.FindIndex(id => !before.ContainsKey(id));
        var changed = model.Rows.ToList().FindIndex(row => before.TryGetValue(IdOf(row), out var said) && said != row.Says);
        return new[] { entered, on is null ? -1 : ids.IndexOf(on), changed }.Where(at => at >= 0).Select(at => (int?)at).FirstOrDefault();
    }

    private static RowId IdOf(WantedRow row) => new(row.WantedId, row.OfferId, row.CountedId);

    private sealed record RowId(long Wanted, long? Offer, long? Counted);
}
