using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Plans;

/// <summary>What if: other numbers on the bench without storing them, and the plans that were kept of it.</summary>
internal sealed class PlansPage : ListPage
{
    private static string NothingYet => Spoken("No plan yet. Press i to try other numbers: everything moves, nothing is stored.");

    private readonly IPlansActs acts;
    private PlansModel model = new([]);

    public PlansPage(IPlansActs acts)
        : base("Plans", Spoken("Plans"), NothingYet)
    {
        this.acts = acts;
        Acts =
        [
            new((Key)'i', Spoken("What if: try other numbers"), new("i", Spoken("what if")), (view, vehicle) => acts.Try(view, vehicle.Id)),
            new(Key.Enter, Spoken("Try the chosen plan"), new("Enter", Spoken("try")), (_, vehicle) => On(row => acts.TryPlan(vehicle.Id, row))),
            new((Key)'p', Spoken("Keep what is tried as a plan"), new("p", Spoken("keep")), (view, vehicle) => acts.Keep(view, vehicle.Id)),
            new((Key)'d', Spoken("Drop what is tried"), new("d", Spoken("drop")), (view, vehicle) => acts.Drop(view, vehicle.Id)),
            new((Key)'h', Spoken("Carry it out: hunt its parts, or fit those of the shop"), new("h", Spoken("carry out")), (view, vehicle) => On(row => acts.CarryOut(view, vehicle.Id, row))),
            new((Key)'o', Spoken("Say what became of the plan"), new("o", Spoken("decide")), (view, vehicle) => On(row => acts.Decide(view, vehicle.Id, row))),
            new((Key)'-', Spoken("Strike the chosen plan"), new("-", Spoken("strike")), (_, vehicle) => On(row => acts.Strike(vehicle.Id, row))),
        ];
    }

    public override IReadOnlyList<PageAct> Acts { get; }

    public override void Show(VehicleModel vehicle, bool fromTop)
    {
        model = acts.Read(vehicle.Id);
        WhenEmpty = model.Trying.Length > 0 ? Spoken($"On the bench, not stored: {model.Trying}. p keeps it as a plan, d drops it.") : NothingYet;
        Show([new(Spoken("plan")), new("", 9), new(Spoken("findings"), 17), new(Spoken("cruise"), 18, Right: true, FromWidth: 76)], model.Rows, Cells, TextOf, fromTop);
    }

    private static TextRun[] Cells(PlanRow row) =>
    [
        new(row.Name, Tone.Strong), new(row.State, Tone.Quiet),
        row.Worst is { } worst ? new($"{worst.Sign()} {row.Counts}", worst.Tone()) : new(row.Counts), new(row.Cruise),
    ];

    private IReadOnlyList<TextLine> TextOf(PlanRow row, int width) =>
    [
        TextLine.Of(new TextRun(row.Name, Tone.Strong), new TextRun($"  {row.Date}", Tone.Quiet)),
        .. row.Lines.Select(line => TextLine.Of(line)),
        .. model.Trying.Length > 0 ? [TextLine.Of(Spoken($"On the bench, not stored: {model.Trying}"), Tone.Watch)] : Array.Empty<TextLine>(),
    ];

    private string? On(Func<PlanRow, string?> act) => model.Rows.ElementAtOrDefault(Row) is { } row ? act(row) : null;
}
