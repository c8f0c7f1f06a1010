using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Workbench;

/// <summary>The main screen: vehicles left, the chosen one's driveline right, its pages below.</summary>
internal sealed class WorkbenchScreen : Runnable, IWorkbenchView
{
    private readonly IWorkbenchActs acts;
    private readonly TopLine topLine = new();
    private readonly VehicleList vehicles = new() { Y = 1, Height = Dim.Fill(2) };
    private readonly View divider = new() { Y = 1, Width = 1, Height = Dim.Fill(2) };
    private readonly TextPage name = new() { Y = 1, Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly DrivelineStrip strip = new() { Y = 2, Width = Dim.Fill() };
    private readonly TextPage card = new() { Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly VehiclePages pages;
    private readonly TextPage firstStep = new() { Y = 3, Width = Dim.Fill(3), Height = Dim.Fill(2), CanFocus = false };
    private readonly StatusLine status = new();
    private readonly KeyLine keyLine = new();
    private readonly LeastSize leastSize = new();
    private readonly IReadOnlyList<KeyAct> keys;

    public WorkbenchScreen(IWorkbenchActs acts, IReadOnlyList<VehiclePage> vehiclePages)
    {
        this.acts = acts;
        pages = new(vehiclePages);
        Title = "BuildLog";
        Border.Settings &= ~BorderSettings.TerminalTitle; // the terminal's own title stays as it was
        Model = acts.Open();
        keys = KeysOf(acts);

        Add(topLine, vehicles, divider, name, strip, card, pages, firstStep, status, keyLine, leastSize);
        SubViewLayout += (_, _) => Arrange();
        divider.DrawingContent += (_, e) =>
        {
            for (var y = 0; y < divider.Viewport.Height; y++) divider.Paint(0, y, "│", Tone.Quiet);
            e.Cancel = true;
        };

        vehicles.VehicleChosen += (_, vehicle) => acts.ChooseVehicle(this, vehicle.Id);
        strip.BoxChosen += (_, _) => ShowCard();
        strip.CardAsked += (_, _) => ShowWholeCard();
        foreach (var pane in new View[] { vehicles, strip, pages }) pane.HasFocusChanged += (_, _) => FocusMoved();
        pages.PageShown += (_, _) => ShowKeys();
        foreach (var page in vehiclePages) page.ActAsked += (_, act) => Run(act);
        strip.BoxPicked += (_, _) => acts.FitPart(this, strip.Box?.Position);

        AddCommand(Command.Cancel, () => true); // Esc closes boxes, never the workbench
        KeyBindings.Add(Key.Esc, Command.Cancel);
        Show(Model);
    }

    public WorkbenchModel Model { get; private set; }

    /// <summary>What its keys do, from any pane.</summary>
    public IReadOnlyList<KeyAct> Keys => keys;

    /// <summary>Where half-filled forms are kept.</summary>
    public Scratchpad Pad { get; init; } = new();

    /// <summary>Everything said in the status line, newest first.</summary>
    public IReadOnlyList<string> Messages => status.Messages;

    public void Show(WorkbenchModel model)
    {
        Model = model;
        topLine.Show(model.Banner);
        vehicles.Show(model.Vehicles, model.Chosen?.Id);
        firstStep.Show(model.Vehicles.Count == 0 ? FirstStep.EmptyShop : FirstStep.NothingChosen);

        var hasVehicle = model.Chosen is not null;
        firstStep.Visible = !hasVehicle;
        foreach (var view in new View[] { name, strip, card, pages }) view.Visible = hasVehicle;
        if (model.Chosen is { } vehicle)
        {
            name.Show([TextLine.Of(new TextRun(" " + vehicle.Name, Tone.Strong), new TextRun("  " + vehicle.Facts, Tone.Quiet))]);
            pages.Show(vehicle);
        }

        ShowKeys();
        SetNeedsLayout();
    }

    public void Say(string message) => status.Say(message);

    public bool Fill(Form form) => FormScreen.Fill(App!, form, Pad);

    public bool Tally(TallyModel tally) => TallyScreen.Run(App!, tally);

    public bool Confirm(Question question) => Ask.Confirm(App!, question);

    public string? Choose(string title, IReadOnlyList<ChoiceOption> options) => Chooser.Choose(App!, title, options);

    public void Tell(string title, IReadOnlyList<string> lines) => Reader.Show(App!, title, [.. lines.Select(line => TextLine.Of(line))]);

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning) vehicles.SetFocus();
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (StopRequested) return true; // told to end: keys that were typed into a box meanwhile must not become acts
        if (PageActs.FirstOrDefault(act => act.Key == key) is { } onPage) Run(onPage);
        else if (keys.FirstOrDefault(act => act.Key == key) is { } everywhere) everywhere.Do();
        else return base.OnKeyDownNotHandled(key);
        return true;
    }

    private List<KeyAct> KeysOf(IWorkbenchActs does)
    {
        var list = new List<KeyAct>
        {
            new((Key)'n', "Add a vehicle", new("n", "new"), () => does.NewVehicle(this)),
            new((Key)'e', "Edit the vehicle's own facts", new("e", "edit"), () => does.EditVehicle(this)),
            new((Key)'f', "Fit, swap or take off a part", new("f", "fit"), () => does.FitPart(this, strip.HasFocus ? strip.Box?.Position : null)),
            new((Key)'t', "Count turns: an axle's ratio", new("t", "turns"), () => does.CountTurns(this)),
            new((Key)'r', "Roll the tyres out: their circumference", new("r", "roll"), () => does.RollOut(this)),
            new((Key)'k', "Measure anything else: a guided session", null, () => does.Measure(this)),
            new((Key)'g', "Set what the owner wants", new("g", "goal"), () => does.EditGoal(this)),
            new((Key)'s', "Write the build sheet", new("s", "sheet"), () => does.WriteSheet(this)),
            new((Key)'m', "Read what was said earlier in the status line", null, ShowMessages),
            new(Key.F1, "Help for what has the focus", null, ShowHelp),
            new((Key)'q', "Quit", null, () => App?.RequestStop(this)),
        };
        for (var i = 0; i < pages.Count && PageDigits.Of(i) is { } digit; i++)
        {
            var page = i;
            list.Add(new KeyAct(new Key(digit), $"Go to the page {pages.Titles[page]}", null, () => GoToPage(page)));
        }

        return list;
    }

    private void GoToPage(int page)
    {
        if (Model.Chosen is null) return;
        pages.ShowPage(page);
        pages.SetFocus();
    }

    // First what only this pane knows, then what works in all of them.
    private void ShowKeys() => keyLine.Show([.. KeysOfPane(), .. keys.Select(key => key.Hint).OfType<KeyHint>()]);

    private IReadOnlyList<KeyHint> KeysOfPane()
    {
        if (Model.Chosen is null) return [];
        if (strip.HasFocus) return [new("Enter", "swap"), new("Space", "card")];
        KeyHint[] ways = [new("Tab", "pane"), new(PageDigits.Range(pages.Count), "page")];
        return [.. PageActs.Select(act => act.Hint), .. PageActs.Count == 0 ? ways : ways[1..]];
    }

    // A page's own keys work while it has the focus.
    private IReadOnlyList<PageAct> PageActs => Model.Chosen is not null && pages.HasFocus ? pages.InView.Acts : [];

    private void Run(PageAct act)
    {
        if (Model.Chosen is { } vehicle && act.Do(this, vehicle) is { } said) acts.ShowAgain(this, said);
    }

    private void Arrange()
    {
        var width = Viewport.Width;
        leastSize.Fit(Viewport.Size);
        var onePane = LeastSize.FitsOnePaneOnly(Viewport.Size);
        var listWidth = !onePane ? Math.Clamp((width / 4) - 2, 18, 30) : vehicles.HasFocus && Model.Chosen is not null ? width : 0;
        var left = onePane ? listWidth : listWidth + 1;
        divider.Visible = !onePane;
        vehicles.Width = listWidth;
        divider.X = listWidth;
        foreach (var view in new View[] { name, strip, card, pages }) view.X = left;
        firstStep.X = left + 2;
        strip.X = left + 1;
        strip.Width = Math.Max(0, width - left - 1);

        if (Model.Chosen is not { } vehicle || left >= width) return;
        var height = strip.Show(vehicle.Driveline, width - left - 1, maxHeight: Viewport.Height * 2 / 5);
        strip.Height = height;
        card.Y = 2 + height;
        pages.Y = 3 + height;
        pages.Width = Dim.Fill();
        pages.Height = Dim.Fill(2);
        ShowCard();
    }

    // Where one pane is shown at a time, it is the one with the focus.
    private void FocusMoved()
    {
        ShowKeys();
        if (LeastSize.FitsOnePaneOnly(Viewport.Size)) SetNeedsLayout();
    }

    private void ShowCard()
    {
        var text = strip.Box is { } box ? " " + BoxText.Card(box) : "";
        card.Show([TextLine.Of(TextFit.Cut(text, strip.Frame.Width), Tone.Quiet)]);
    }

    private void ShowWholeCard()
    {
        if (strip.Box is { } box) Tell(BoxText.Part(box), BoxText.WholeCard(box));
    }

    private void ShowHelp() => HelpScreen.Show(App!, Model.Chosen is null || vehicles.HasFocus || strip.HasFocus ? "Workbench" : pages.InView.HelpPage);

    private void ShowMessages() =>
        Tell("What happened", status.Messages.Count > 0 ? status.Messages : ["Nothing has happened yet."]);
}
