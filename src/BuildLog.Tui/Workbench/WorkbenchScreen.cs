using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Search;
using BuildLog.Tui.Shell;
using BuildLog.Tui.WhatNow;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Workbench;

/// <summary>The main screen: vehicles left, the chosen one's driveline right, its pages below.</summary>
internal sealed class WorkbenchScreen : Runnable, IWorkbenchView
{
    private const int SpeedsFromHeight = 46;
    private const int SpeedsFromWidth = 100;
    private const int SpeedsRows = 12;

    private enum Panes
    {
        All,
        Vehicles,
        Strip,
        Page,
    }

    private readonly IWorkbenchActs acts;
    private readonly TopLine topLine = new();
    private readonly VehicleList vehicles = new() { Y = 1, Height = Dim.Fill(2) };
    private readonly View divider = new() { Y = 1, Width = 1, Height = Dim.Fill(2) };
    private readonly TextPage name = new() { Y = 1, Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly DrivelineStrip strip = new() { Y = 2, Width = Dim.Fill() };
    private readonly TextPage card = new() { Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly VehiclePages pages;
    private readonly IReadOnlyList<VehiclePage> vehiclePages;
    private readonly TextPage life = new() { Indent = 1, Width = Dim.Fill(), Visible = false, CanFocus = false };
    private readonly TextPage speedsLine = new() { Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly SawtoothChart speeds = new() { Width = Dim.Fill(), CanFocus = false };
    private readonly TextPage firstStep = new() { Y = 3, Width = Dim.Fill(3), Height = Dim.Fill(2), CanFocus = false };
    private readonly WhatNowPage whatNow = new() { Y = 1, Width = Dim.Fill(), Height = Dim.Fill(2), Visible = false };
    private readonly StatusLine status = new();
    private readonly KeyLine keyLine = new();
    private readonly LeastSize leastSize = new() { KeepsKeysOut = false };
    private readonly IReadOnlyList<KeyAct> keys;
    private Panes arranged;
    private Beside<WhatNowRow>? beside; // once it runs

    /// <param name="acts">What its keys do.</param>
    /// <param name="vehiclePages">The pages below the strip.</param>
    /// <param name="first">What it shows at first; null to ask the acts.</param>
    public WorkbenchScreen(IWorkbenchActs acts, IReadOnlyList<VehiclePage> vehiclePages, WorkbenchModel? first = null)
    {
        this.acts = acts;
        this.vehiclePages = vehiclePages;
        pages = new(vehiclePages);
        Title = "BuildLog";
        Border.Settings &= ~BorderSettings.TerminalTitle; // the terminal's own title stays as it was
        Model = first ?? acts.Open();
        keys = KeysOf(acts);

        Add(topLine, vehicles, divider, name, strip, card, pages, speedsLine, speeds, life, firstStep, whatNow, status, keyLine, leastSize);
        SubViewLayout += (_, _) => Arrange();
        divider.DrawingContent += (_, e) =>
        {
            for (var y = 0; y < divider.Viewport.Height; y++) divider.Paint(0, y, "│", Tone.Quiet);
            e.Cancel = true;
        };

        vehicles.VehicleChosen += (_, vehicle) =>
        {
            App?.LayoutAndDraw(); // the cursor first: reading and judging takes longer than a key may
            Choose(vehicle.Id);
        };
        strip.BoxChosen += (_, _) => ShowCard();
        strip.BoxChosen += (_, _) => ShowLife();
        strip.CardAsked += (_, _) => Try(ShowWholeCard);
        foreach (var pane in new View[] { vehicles, strip, pages, whatNow }) pane.HasFocusChanged += (_, _) => FocusMoved();
        pages.PageShown += (_, _) => Try(FillPage);
        pages.PageShown += (_, _) => SetNeedsLayout();
        foreach (var page in vehiclePages)
        {
            page.ActAsked += (_, act) => Run(act);
            page.Progressed += (_, text) => status.SayMeanwhile(text);
        }

        whatNow.FilterEntered += (_, _) => ShowKeys();
        whatNow.FindAsked += (_, _) => Try(Find);
        whatNow.VehiclePicked += (_, row) => GoToVehicle(row.VehicleId);
        whatNow.Left += (_, _) =>
        {
            if (Model.Chosen is { } open) GoToVehicle(open.Id);
        };
        strip.BoxPicked += (_, _) => Try(() => acts.FitPart(this, strip.Box?.Position));

        AddCommand(Command.Cancel, EndWhatTakesLong);
        KeyBindings.Add(Key.Esc, Command.Cancel);
        Show(Model);
    }

    public WorkbenchModel Model { get; private set; }

    /// <summary>What its keys do, from any pane.</summary>
    public IReadOnlyList<KeyAct> Keys => keys;

    /// <summary>Where half-filled forms are kept.</summary>
    public Scratchpad Pad { get; init; } = new();

    /// <summary>Where each vehicle stands, as far as it is being read already; null where nobody began.</summary>
    public Func<IEnumerable<WhatNowRow>>? ReadAlready { get; init; }

    /// <summary>Everything said in the status line, newest first.</summary>
    public IReadOnlyList<string> Messages => status.Messages;

    public void Show(WorkbenchModel model)
    {
        var hasChanged = Model.Revision != model.Revision;
        Model = model;
        topLine.Show(model.Banner);
        vehicles.Show(model.Vehicles, model.Chosen?.Id);
        firstStep.Show(model.Vehicles.Count == 0 ? FirstStep.EmptyShop : FirstStep.NothingChosen);

        ShowPanes();
        if (model.Chosen is { } vehicle)
        {
            name.Show([TextLine.Of(new TextRun(" " + vehicle.Name, Tone.Strong), new TextRun("  " + vehicle.Facts, Tone.Quiet))]);
            pages.Show(vehicle);
            speedsLine.Show([TextLine.Of(" " + vehicle.Speeds.Headline, Tone.Quiet)]);
            speeds.Show(vehicle.Speeds.Chart);
            ShowLife();
        }

        ShowKeys();
        SetNeedsLayout();
        if (hasChanged) ReadShop();
    }

    /// <summary>Shows the first page, of all vehicles; an empty shop has none.</summary>
    public void GoToWhatNow()
    {
        if (Model.Vehicles.Count == 0) return;
        whatNow.LeadsBack = IsRunning && Model.Chosen is not null; // not where the program begins
        whatNow.Visible = true;
        ShowPanes();
        whatNow.SetFocus();
        ShowKeys();
    }

    public void Say(string message) => status.Say(message);

    public bool Fill(Form form)
    {
        var about = OfTheChosen(form);
        var wasLeft = Pad.Left.Contains(about.KeptAs);
        var saved = FormScreen.Fill(App!, about, Pad, Say);
        if (wasLeft && !saved && !Pad.Left.Contains(about.KeptAs)) Say(Spoken($"Thrown away: {about.KeptAs}."));
        return saved;
    }

    // "Cruise goal" half filled on one vehicle is nothing to another.
    private Form OfTheChosen(Form form)
        => !form.IsOfTheShop && Model.Chosen is { } vehicle && !form.Title.Contains(vehicle.Name, StringComparison.CurrentCulture)
            ? form with { KeptAs = Spoken($"{form.Title} ({vehicle.Name})") }
            : form;

    public bool Tally(TallyModel tally) => TallyScreen.Run(App!, tally);

    public bool Confirm(Question question) => Ask.Confirm(App!, question, HelpInView);

    public string? Choose(string title, IReadOnlyList<ChoiceOption> options, string? at = null, string? help = null) => Chooser.Choose(App!, title, options, at, help ?? HelpInView);

    public void Tell(string title, IReadOnlyList<string> lines) => Reader.Show(App!, title, [.. lines.Select(line => TextLine.Of(line))], HelpInView);

    public void Tell(string title, Func<int, IReadOnlyList<TextLine>> linesAt) => Reader.Show(App!, title, linesAt, HelpInView);

    public bool TellOrPrint(string title, IReadOnlyList<string> lines, string? help = null) => Reader.Show(App!, title, [.. lines.Select(line => TextLine.Of(line))], (Key)'p', new("p", Spoken("print it")), help ?? HelpInView);

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        App!.Keyboard.KeyDown -= Forget;
        if (!newIsRunning) return;
        App.Keyboard.KeyDown += Forget;
        if (whatNow.Visible) whatNow.SetFocus();
        else vehicles.SetFocus();
        beside = new(App!, Take, Say);
        ReadShop(ReadAlready);
    }

    private void Forget(object? sender, Key key) => status.SayUntilNextKey("");

    // The first page leaves no cell to the screen behind it.
    protected override bool OnClearingViewport() => whatNow.Visible || base.OnClearingViewport();

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (StopRequested) return true; // told to end: keys that were typed into a box meanwhile must not become acts
        if (leastSize.Visible && key != (Key)'q') return true; // nobody sees what it would do
        if (key == Key.Delete && TakeOut()) return true;
        if (InView?.Acts.FirstOrDefault(act => act.Key == key) is { } onPage) DoOnPage(onPage);
        else if (keys.FirstOrDefault(act => act.Key == key) is { } everywhere) Run(everywhere);
        else return base.OnKeyDownNotHandled(key) || SayWhyNothing(key);
        return true;
    }

    // A page's keys work from the strip and the vehicles too, after what these know themselves; the cursor goes to the page where the act needs its row.
    // What is about the cursor is only shown the way to from there, and so is what is about a row nobody saw: the next press does it.
    private void DoOnPage(PageAct act)
    {
        var (hadFocus, wasSeen) = (pages.HasFocus, Pane is Panes.All or Panes.Page);
        if (!hadFocus && !(act.AtOnce && wasSeen)) pages.InView.GoToBeginning();
        if (hadFocus || (!act.IsOfTheCursor && (act.AtOnce || wasSeen))) Run(act);
        else SayOnThisPage(act);
    }

    private void SayOnThisPage(PageAct act) => Say(Spoken($"{act.Hint.Key} on this page: {act.Says}."));

    // Not kept, only until the next key.
    private bool SayWhyNothing(Key key)
    {
        if (UnusedKey.NameOf(key) is not { } name) return false;
        status.SayUntilNextKey(InView?.EveryAct.Any(act => act.Key == key) == true ? Spoken($"{name}: there is nothing on this page to do that with.") : Spoken($"{name} does nothing here; a lists all keys."));
        return true;
    }

    private List<KeyAct> KeysOf(IWorkbenchActs does)
    {
        var list = new List<KeyAct>
        {
            new((Key)'n', Spoken("Add a vehicle"), new("n", Spoken("new")), AddVehicle),
            new((Key)'e', Spoken("Edit the vehicle's own facts"), new("e", Spoken("edit")), () => does.EditVehicle(this)) { OfVehicle = true },
            new((Key)'f', Spoken("Fit, swap or take off a part"), new("f", Spoken("fit")), () => does.FitPart(this, strip.HasFocus ? strip.Box?.Position : null)) { OfVehicle = true },
            new((Key)'t', Spoken("Count turns: an axle's ratio"), new("t", Spoken("turns")), () => does.CountTurns(this)) { OfVehicle = true },
            new((Key)'r', Spoken("Roll the tyres out: their circumference"), new("r", Spoken("roll")), () => does.RollOut(this)) { OfVehicle = true },
            new((Key)'k', Spoken("Measure anything else: a guided session"), null, () => does.Measure(this)) { OfVehicle = true },
            new((Key)'g', Spoken("Set what the owner wants"), new("g", Spoken("goal")), () => does.EditGoal(this)) { OfVehicle = true },
            new((Key)'s', Spoken("Write the build sheet"), new("s", Spoken("sheet")), () => does.WriteSheet(this)) { OfVehicle = true, AlsoCalled = Spoken("print, paper, PDF") },
            new(Key.Delete, Spoken("Remove the vehicle or a part on the shelf, or bring it back"), null, () => does.Remove(this)) { OfVehicle = true, AlsoCalled = Spoken("delete, restore") },
            new((Key)'w', Spoken("What now: all vehicles, the most pressing first"), null, GoToWhatNow),
            new((Key)'z', Spoken("Take the latest change back"), null, () => does.Undo(this)) { AlsoCalled = Spoken("undo") },
            new((Key)'y', Spoken("Do again what was taken back"), null, () => does.Redo(this)) { AlsoCalled = Spoken("redo") },
            new((Key)'/', Spoken("Find words anywhere in the shop"), null, Find) { AlsoCalled = Spoken("search") },
            new((Key)'u', Spoken("Switch between metric and inches and miles"), null, () => does.SwitchUnits(this)),
            new((Key)'x', Spoken("Copy the table in view"), null, CopyTable) { AlsoCalled = Spoken("clipboard, CSV, spreadsheet") },
            new((Key)'a', Spoken("All acts with their keys"), null, ShowActs),
            new((Key)'m', Spoken("Read what was said earlier in the status line"), null, ShowMessages),
            new(Key.F1, Spoken("Help for what has the focus"), null, ShowHelp),
            new((Key)'q', Spoken("Quit"), null, () => App?.RequestStop(this)),
            new(Key.Empty, Spoken("Back the record up: a command outside the workbench"), null, () => Say(Spoken("Outside the workbench: buildlog backup FILE writes a copy of the record."))) { AlsoCalled = Spoken("backup, copy") },
        };
        // Pages beyond the tenth have no digit: arrows go on to them, and so does the list of all acts.
        for (var i = 0; i < pages.Count; i++)
        {
            var page = i;
            list.Add(new KeyAct(PageDigits.Of(i) is { } digit ? new Key(digit) : Key.Empty, Spoken($"Go to the page {pages.Titles[page]}"), null, () => GoToPage(page)));
        }

        return list;
    }

    // Delete is about what is chosen in the pane with the focus: a row of the page, or the part in the strip. False in the list of vehicles.
    private bool TakeOut()
    {
        if (Model.Chosen is null || whatNow.Visible || vehicles.HasFocus) return false;
        if (strip.HasFocus) Try(() => acts.TakeOff(this, strip.Box?.Position));
        else if (InView?.Acts.FirstOrDefault(act => act.Key == (Key)'-') is { } strike) Run(strike);
        else Say(Spoken("Nothing is chosen here that could be struck. A vehicle is removed with Del in the list of vehicles."));
        return true;
    }

    // What was added is on the bench, from the first page too: there, the next act would be about the vehicle under its cursor.
    private void AddVehicle()
    {
        var before = Model.Chosen?.Id;
        acts.NewVehicle(this);
        if (Model.Chosen is { } added && added.Id != before) GoToVehicle(added.Id);
    }

    private void Find()
    {
        if (FindBox.Ask(App!, acts.Find, HelpScreen.OfTheWhole) is not { } place) return;
        if (place.VehicleId is not { } vehicle)
        {
            Tell(place.Kind, [place.Says, Spoken("It is on no vehicle now.")]);
            return;
        }

        GoToVehicle(vehicle);
        if (place.Position is { } position) strip.GoTo(position);
        GoToPage(Math.Max(0, pages.Titles.ToList().IndexOf(place.Page)));
    }

    private void ShowActs()
    {
        if (ActList.Ask(App!, AllActs(), HelpScreen.OfTheWhole) is { } taken) taken.Do();
    }

    // What works now, then the sessions behind their one key, then what other pages know.
    private List<ListedAct> AllActs() =>
    [
        .. whatNow.Visible ? [new("/", Spoken("Leave only the vehicles that hold a word"), Spoken("filter"), whatNow.AskFilter)] : Array.Empty<ListedAct>(),
        .. ActsInView.Select(act => new ListedAct(act.Hint.Key, act.Says, "", () => DoOnPage(act))),
        .. keys.Select(act => new ListedAct(whatNow.Visible && act.Key == (Key)'/' ? "//" : act.Key == Key.Delete && !whatNow.Visible && !vehicles.HasFocus ? "" : act.KeyName, act.Says, act.AlsoCalled, () => Run(act))),
        .. SessionKind.All.Select(kind => new ListedAct("k", Spoken($"Measure: {kind.Words}"), "", () => Run(MeasureOne(kind)))),
        .. Enumerable.Range(0, pages.Count).Where(page => ActsInView.Count == 0 || page != pages.Index)
            .SelectMany(page => vehiclePages[page].EveryAct.Select(act => new ListedAct("", $"{pages.Titles[page]}: {act.Hint.Key} {act.Says}", "", () => GoAndDo(page, act.Key)))),
    ];

    private KeyAct MeasureOne(SessionKind kind) => new(Key.Empty, kind.Words, null, () => acts.Measure(this, kind)) { OfVehicle = true };

    // What is about a row is only shown the way to: nobody has chosen the row yet.
    private void GoAndDo(int page, Key key)
    {
        GoToPage(page);
        if (!pages.HasFocus || pages.InView.Acts.FirstOrDefault(act => act.Key == key) is not { } act) return;
        if (act.AtOnce) Run(act);
        else SayOnThisPage(act);
    }

    private void CopyTable()
    {
        if (whatNow.Visible && whatNow.Table is { } ofShop)
            TableCopy.Ask(App!, this, ofShop, Spoken("what-now.csv"));
        else if (!whatNow.Visible && Model.Chosen is { } vehicle && pages.InView.Table is { } table)
            TableCopy.Ask(App!, this, table, Spoken($"{vehicle.Name}-{pages.InView.Title}.csv").Replace(' ', '-'));
        else Say(Spoken("There is no table in view to copy: choose a page with one."));
    }

    private void ShowPanes()
    {
        var ofVehicle = !whatNow.Visible && Model.Chosen is not null;
        foreach (var view in new View[] { vehicles, divider }) view.Visible = !whatNow.Visible;
        foreach (var view in new View[] { name, strip, card, pages }) view.Visible = ofVehicle;
        foreach (var view in new View[] { speedsLine, speeds, life }) view.Visible &= ofVehicle;
        SetNeedsLayout();
        firstStep.Visible = !whatNow.Visible && Model.Chosen is null;
    }

    // Where it cannot be read the list goes back to the one on the bench: no act may meet another than it seems to.
    private void Choose(long vehicleId)
    {
        status.SayNoMore();
        Try(() => acts.ChooseVehicle(this, vehicleId));
        if (Model.Chosen?.Id != vehicleId) vehicles.Show(Model.Vehicles, Model.Chosen?.Id);
    }

    // A page's keys depend on what is in it.
    private void FillPage()
    {
        pages.Fill();
        ShowKeys();
    }

    private void GoToVehicle(long vehicleId)
    {
        whatNow.Visible = false;
        ShowPanes();
        vehicles.SetFocus();
        if (vehicleId != Model.Chosen?.Id) Choose(vehicleId);
        else ShowKeys();
    }

    private void ReadShop(Func<IEnumerable<WhatNowRow>>? rows = null) => beside?.Read(rows ?? acts.WhatNow, () => whatNow.TakeEnd(Model.Vehicles.Select(vehicle => vehicle.Id).ToHashSet()));

    /// <summary>Shows where some vehicles stand.</summary>
    public void Take(IReadOnlyList<WhatNowRow> rows)
    {
        var counts = rows.ToDictionary(row => row.VehicleId, row => row.Counts);
        Model = Model with { Vehicles = [.. Model.Vehicles.Select(vehicle => counts.TryGetValue(vehicle.Id, out var read) ? vehicle with { Counts = read } : vehicle)] };
        vehicles.Show(Model.Vehicles, Model.Chosen?.Id);
        whatNow.Take(rows);
    }

    private void GoToPage(int page)
    {
        LeaveWhatNow();
        if (Model.Chosen is null) return;
        pages.ShowPage(page);
        pages.InView.GoToBeginning();
    }

    // First what only this pane knows, then what works in all of them, then what the page in view knows beside that.
    private void ShowKeys() => keyLine.Show([
        .. KeysOfPane(),
        .. whatNow is { Visible: true, IsFiltering: true } ? [] : keys.Select(key => key.Hint).OfType<KeyHint>(),
        .. pages.HasFocus ? [] : ActsInView.Where(act => !act.IsOfTheCursor).Select(act => act.Hint),
    ]);

    private IReadOnlyList<KeyHint> KeysOfPane()
    {
        if (whatNow.Visible) return whatNow.Hints;
        if (Model.Chosen is null) return [];
        KeyHint pane = new("Tab", Pane switch { Panes.Vehicles => Spoken("strip"), Panes.Strip => Spoken("page"), Panes.Page => Spoken("vehicles"), _ => Spoken("pane") });
        KeyHint[] first = Pane == Panes.All ? [] : [pane];
        if (strip.HasFocus) return [.. first, new("Enter", Spoken("swap")), new("Space", Spoken("card"))];
        KeyHint page = new(PageDigits.Range(pages.Count), Spoken("page"));
        var own = pages.HasFocus ? ActsInView : [];
        return [.. first, .. own.Select(act => act.Hint), .. own.Count == 0 && first.Length == 0 ? [pane, page] : new[] { page }];
    }

    // The page below the strip; null where there is none to be seen.
    private VehiclePage? InView => Model.Chosen is null || whatNow.Visible ? null : pages.InView;

    private IReadOnlyList<PageAct> ActsInView => InView?.Acts ?? [];

    // From the first page an act is about the vehicle under its cursor.
    private void Run(KeyAct act)
    {
        if (act.OfVehicle && !LeaveWhatNow()) return;
        Try(act.Do);
    }

    // A record that is locked, full or read-only just now, or a rule that forbids it: a sentence, and on.
    private void Try(Action act)
    {
        try
        {
            act();
        }
        catch (RefusedException refused)
        {
            Say(refused.Refusal.Sentence);
        }
        catch (RecordException record)
        {
            Say(record.Message);
        }
    }

    // False where the vehicle under its cursor could not be read.
    private bool LeaveWhatNow()
    {
        if (!whatNow.Visible || whatNow.Row is not { } row) return true;
        GoToVehicle(row.VehicleId);
        return Model.Chosen?.Id == row.VehicleId;
    }

    private void Run(PageAct act) => Try(() =>
    {
        if (Model.Chosen is { } vehicle && act.Do(this, vehicle) is { } said) acts.ShowAgain(this, said);
    });

    private void Arrange()
    {
        var width = Viewport.Width;
        leastSize.Fit(Viewport.Size);
        var pane = Pane;
        if (pane != arranged)
        {
            arranged = pane;
            ShowKeys();
            ShowLife();
        }

        var listWidth = pane switch { Panes.All => Math.Clamp((width / 4) - 2, 18, 30), Panes.Vehicles => width, _ => 0 };
        var left = pane == Panes.All ? listWidth + 1 : listWidth;
        divider.Visible = pane == Panes.All && !whatNow.Visible;
        vehicles.Width = listWidth;
        divider.X = listWidth;
        foreach (var view in new View[] { name, strip, card, pages, speedsLine, speeds, life }) view.X = left;
        firstStep.X = left + 2;
        strip.X = left + 1;
        strip.Width = Math.Max(0, width - left - 1);

        if (Model.Chosen is not { } vehicle || left >= width) return;
        var height = strip.Show(vehicle.Driveline, width - left - 1, maxHeight: pane == Panes.Strip ? Viewport.Height / 2 : Viewport.Height * 2 / 9);
        strip.Height = pane == Panes.Page ? 0 : height;
        card.Y = 2 + height;
        card.Height = pane == Panes.All ? 1 : 0; // the strip alone has room for the whole of it
        pages.Y = pane == Panes.Page ? 2 : 3 + height;
        pages.Width = Dim.Fill();
        ShowCard();
        ArrangeSpeeds(vehicle, width - left);
    }

    // In a small terminal one pane has all the room: the one with the focus, and the page while none has it.
    private Panes Pane =>
        !LeastSize.FitsOnePaneOnly(Viewport.Size) ? Panes.All
        : vehicles.HasFocus && Model.Chosen is not null ? Panes.Vehicles
        : strip.HasFocus ? Panes.Strip
        : Panes.Page;

    // A large terminal keeps the gears in sight below every page but their own; from the strip, all about the part under its cursor.
    private void ArrangeSpeeds(VehicleModel vehicle, int width)
    {
        if (Pane == Panes.Strip)
        {
            speedsLine.Visible = speeds.Visible = false;
            life.Visible = !whatNow.Visible;
            pages.Height = 0;
            life.Y = Pos.Bottom(strip) + 1;
            life.Height = Dim.Fill(2);
            return;
        }

        var hasRoom = HasRoomBelow(width);
        life.Visible = hasRoom && strip.HasFocus;
        var inView = hasRoom && !life.Visible && vehicle.Speeds.Chart is not null && pages.InView is not SpeedsPage;
        speedsLine.Visible = speeds.Visible = inView;
        pages.Height = Dim.Fill(inView || life.Visible ? 2 + SpeedsRows + 1 : 2);
        life.Y = speedsLine.Y = Pos.AnchorEnd(2 + SpeedsRows + 1);
        life.Height = SpeedsRows + 1;
        speeds.Y = Pos.AnchorEnd(2 + SpeedsRows);
        speeds.Height = SpeedsRows;
    }

    private bool HasRoomBelow(int width) => !whatNow.Visible && Viewport.Height >= SpeedsFromHeight && width >= SpeedsFromWidth;

    // Where one pane is shown at a time, it is the one with the focus; in a large terminal the strip has the room below the page.
    private void FocusMoved()
    {
        ShowKeys();
        ShowLife();
        if (LeastSize.FitsOnePaneOnly(Viewport.Size) || Viewport.Height >= SpeedsFromHeight) SetNeedsLayout();
    }

    // Reading it costs: only where and while it is seen.
    private void ShowLife()
    {
        if (!strip.HasFocus || Model.Chosen is not { } vehicle || strip.Box is not { } box || (Pane != Panes.Strip && !HasRoomBelow(strip.Frame.Width))) return;
        Try(() => life.Show([
            TextLine.Of(new TextRun(TextFit.Capital(box.Caption), Tone.Strong), new TextRun("  " + BoxText.Part(box))),
            .. CardOf(vehicle, box).Select(line => TextLine.Of(line)),
        ]));
    }

    private IReadOnlyList<string> CardOf(VehicleModel vehicle, DrivelineBox box) => acts.Card(vehicle.Id, box) is [_, ..] known ? known : BoxText.WholeCard(box);

    private void ShowCard()
    {
        var text = strip.Box is { } box ? " " + BoxText.Card(box) : "";
        card.Show([TextLine.Of(TextFit.Cut(text, strip.Frame.Width), Tone.Quiet)]);
    }

    private void ShowWholeCard()
    {
        if (strip.Box is not { } box || Model.Chosen is not { } vehicle) return;
        Tell(BoxText.Part(box), CardOf(vehicle, box));
    }

    // Of what has the focus first, and from there that of the page in view, or of the whole: F1 twice is the other one.
    private void ShowHelp() => HelpScreen.Show(App!, HelpInView, HelpInView != HelpScreen.OfTheWhole ? HelpScreen.OfTheWhole : InView?.HelpPage);

    private string HelpInView
        => whatNow.Visible ? "WhatNow" : InView is null || vehicles.HasFocus || strip.HasFocus ? HelpScreen.OfTheWhole : pages.InView.HelpPage;

    // Esc ends a search or closes a box, never the workbench.
    private bool? EndWhatTakesLong()
    {
        if (!whatNow.Visible && Model.Chosen is not null && pages.InView.End()) Say(Spoken("Ended."));
        return true;
    }

    private void ShowMessages() =>
        Tell(Spoken("What happened"), status.Messages.Count > 0 ? status.Messages : [Spoken("Nothing has happened yet.")]);
}
