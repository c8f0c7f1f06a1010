using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Options;

/// <summary>The ways out, what leaves no clash first and what only helps below a line; below them what the chosen one comes to. The search runs beside the screen and can be ended.</summary>
internal sealed class OptionsPage : ListPage
{
    private const int MostBeside = 3;
    private static string Ended => Spoken("The search was ended. i searches again.");

    private readonly IOptionsActs acts;
    private readonly HashSet<int> marked = [];
    private OptionsModel model = OptionsModel.None;

    // As they stand on the page; null for the line between what leaves no clash and what only helps.
    private IReadOnlyList<OptionRow?> rows = [];
    private CancellationTokenSource? running; // while it searches
    private long vehicleId;

    public OptionsPage(IOptionsActs acts)
        : base("Options", Spoken("Options"), "")
    {
        this.acts = acts;
        Acts =
        [
            new((Key)'h', Spoken("Hunt the part of the chosen way out"), new("h", Spoken("hunt")), (view, _) => OfChosen(row => acts.Want(view, row.Place))),
            new((Key)'c', Spoken("The yard card for it"), new("c", Spoken("card")), (view, _) => OfChosen(row => acts.Card(view, row.Place))),
            new((Key)'v', Spoken("Mark it, to be put beside others"), new("v", Spoken("mark")), (_, _) => Mark()),
            new((Key)'b', Spoken("What is fitted beside the marked ones"), new("b", Spoken("beside")), (view, _) => Beside(view)),
            new((Key)'o', Spoken("Tyre size, overdrive or axle, cruise or launch: the usual questions"), new("o", Spoken("trade-offs")), (view, vehicle) => acts.TradeOff(view, vehicle.Id)),
            new((Key)'l', Spoken("The map of axle against tyre"), new("l", Spoken("map")), (view, _) => ShowMap(view)),
            new((Key)'p', Spoken("Keep it as a plan"), new("p", Spoken("plan")), (view, _) => OfChosen(row => acts.Plan(view, row.Place))),
            new((Key)'d', Spoken("Choose where parts come from, and which may change"), new("d", Spoken("pools")), (view, _) => acts.Choose(view)),
            new((Key)'i', Spoken("End the search, or search again"), new("i", Spoken("stop")), (_, _) => EndOrBegin()),
        ];
    }

    public override IReadOnlyList<PageAct> Acts { get; }

    private OptionRow? Chosen => rows.ElementAtOrDefault(Row);

    private string? OfChosen(Func<OptionRow, string?> act)
        => Chosen is { } row ? act(row) : rows.Count > 0 ? Spoken("This line only parts the ways out: choose one above or below it.") : null;

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        vehicleId = vehicle.Id;
        Begin(fromTop);
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing) Stop();
        base.Dispose(disposing);
    }

    /// <summary>Ends the search.</summary>
    public override bool End()
    {
        if (running is null) return false;

        Stop();
        if (model.Rows.Count == 0) Put(new([], Missing: Ended), fromTop: true);
        return true;
    }

    private void Begin(bool fromTop)
    {
        Stop();
        marked.Clear();
        running = new();
        var cancel = running.Token;
        if (fromTop || model.Rows.Count == 0) Put(new([], Missing: Spoken("Searching …")), fromTop); // else the last answer stays in view until the new one
        var found = acts.Find(vehicleId, new Told(share => OnScreen(() => SayHowFar(Spoken($"Searching … {share * 100:0} %; Esc ends it.")), cancel)), cancel);
        if (found.IsCompletedSuccessfully) Found(found.Result, fromTop);
        else found.ContinueWith(done => OnScreen(() => Found(done.GetAwaiter().GetResult(), fromTop), cancel), cancel, TaskContinuationOptions.None, TaskScheduler.Default);
    }

    private void Found(OptionsModel ways, bool fromTop)
    {
        Stop();
        Put(ways, fromTop);
    }

    // What comes after the search was ended, or after another began, is nobody's any more.
    private void OnScreen(Action show, CancellationToken cancel) => App?.Invoke(() =>
    {
        if (!cancel.IsCancellationRequested) show();
    });

    private void Stop()
    {
        running?.Cancel();
        running?.Dispose();
        running = null;
        SayHowFar("");
    }

    private string? EndOrBegin()
    {
        if (!End()) Begin(fromTop: true);
        return null;
    }

    private string? Mark()
    {
        if (Chosen is { } row && !marked.Remove(row.Place))
        {
            if (marked.Count == MostBeside) return Spoken($"{MostBeside} are marked already: v on one of them takes its mark off.");
            marked.Add(row.Place);
        }

        Put(model, fromTop: false);
        return null;
    }

    private string? Beside(IWorkbenchView view)
    {
        var places = marked.Count > 0 ? marked.Order().ToList() : Chosen is { } row ? [row.Place] : [];
        return places.Count > 0 ? acts.Beside(view, places) : null;
    }

    private string? ShowMap(IWorkbenchView view)
    {
        acts.Map(view);
        return null;
    }

    private void Put(OptionsModel newModel, bool fromTop)
    {
        model = newModel;
        var sound = model.Rows.TakeWhile(row => !row.StillClashes).ToList();
        rows = sound.Count == 0 || sound.Count == model.Rows.Count ? [.. model.Rows] : [.. sound, null, .. model.Rows.Skip(sound.Count)];
        WhenEmpty = string.Join("\n", [model.Missing, .. model.Clashes, .. model.Notes ?? []]);
        Show(
            [new(Spoken("no."), 4, Right: true), new(Spoken("parts"), 5, Right: true), new(Spoken("way out")), new(Spoken("cruise"), 18, Right: true, FromWidth: 76), new(Spoken("worst"), Math.Min(12, model.Rows.Select(row => TextFit.Width(Worst(row))).Append(9).Max())), new(Spoken("besides"), 14, FromWidth: 110), new(Spoken("cost"), 15, Right: true)],
            rows, Cells, (row, _) => row is null ? OptionText.OfTheRest(model) : OptionText.Of(model, row), fromTop);
        SetNeedsDraw();
    }

    private TextRun[] Cells(OptionRow? row) => row is null ? [new(""), new(""), new(Spoken("Still clashes:"), Tone.Quiet), new(""), new(""), new(""), new("")] :
    [
        new(FormattableString.Invariant($"{(marked.Contains(row.Place) ? "*" : "")}{row.Place}"), Tone.Strong), new(FormattableString.Invariant($"{row.Changes}")), new(row.Short, row.Rejected?.AreTheseParts != true ? Tone.Strong : Tone.Quiet), new(row.Cruise),
        row.Rejected?.AreTheseParts != true ? new(Worst(row), row.Worst.Tone()) : new(Spoken("rejected"), Tone.Clash), new(string.Join(' ', row.Verdicts.Skip(1))), new(row.CostInShort),
    ];

    // Of "1 clash 3 open 1 watch" the first; the rest stands in a column of its own.
    private static string Worst(OptionRow row) => $"{row.Worst.Sign()} {row.Verdicts.FirstOrDefault()}";

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
