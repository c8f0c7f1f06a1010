using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.WhatNow;

/// <summary>The first page: all vehicles, the one that needs somebody most at the top; a word typed after / leaves those it occurs in.</summary>
internal sealed class WhatNowPage : View
{
    private const int CardsFrom = 150;
    private const int CardsInARow = 3;
    private const int MostCards = 9;
    private const int NarrowFindings = 2; // the same as the column after it, for terminals with less room

    private readonly TextPage heading = new() { Width = Dim.Fill(), Height = 1, CanFocus = false };
    private readonly OneLineField filter = new() { X = 10, Y = 1, Width = Dim.Fill(1), Visible = false };
    private readonly TextPage filterCaption = new() { Y = 1, Width = 10, Height = 1, CanFocus = false, Visible = false };
    private readonly ListAndText content = new() { Y = 1, Width = Dim.Fill(), Height = Dim.Fill(), StaysBelow = true };
    private readonly Dictionary<long, WhatNowRow> read = [];
    private IReadOnlyList<WhatNowRow> shown = [];
    private long? chosen;
    private bool isWhole;

    public WhatNowPage()
    {
        CanFocus = true;
        filterCaption.Show([TextLine.Of(Spoken(" Holding "), Tone.Quiet)]);
        content.List.WhenEmpty = Spoken("Reading the record …");
        content.List.RowPicked += (_, _) => Pick();
        content.List.RowChosen += (_, _) => chosen = shown[content.List.Row].VehicleId;
        filter.ValueChanged += (_, _) => ShowRows(fromTop: true);
        filter.KeyDown += OnFilterKey;
        filter.HasFocusChanged += (_, _) => FilterEntered?.Invoke(this, EventArgs.Empty);
        Add(heading, filterCaption, filter, content);
    }

    /// <summary>Enter or a double click on a vehicle.</summary>
    public event EventHandler<WhatNowRow>? VehiclePicked;

    /// <summary>The filter has been entered or left: other keys work.</summary>
    public event EventHandler? FilterEntered;

    /// <summary>The key of the filter was pressed once more, before anything was typed: it is not among the vehicles that is looked.</summary>
    public event EventHandler? FindAsked;

    /// <summary>Back to the vehicle that was open before.</summary>
    public event EventHandler? Left;

    /// <summary>The vehicles in view, to be copied, with every column; null while there are none.</summary>
    public TableText? Table => shown.Count == 0 ? null : new(
        [Spoken("vehicle"), Spoken("state"), Spoken("findings"), Spoken("most pressing"), Spoken("cruise"), Spoken("idle"), Spoken("worked"), Spoken("spent")],
        [.. shown.Select(row => Cells(row).Where((_, column) => column != NarrowFindings).Select(run => run.Text).ToArray())]);

    /// <summary>What is typed goes into the filter.</summary>
    public bool IsFiltering => filter.HasFocus;

    public IReadOnlyList<KeyHint> Hints => IsFiltering
        ? [new("type", Spoken("narrow")), new("↑↓", Spoken("list")), new("Enter", Spoken("open")), new("/", Spoken("whole shop")), new("Esc", Spoken("all"))]
        : [new("Enter", Spoken("open")), new("/", Spoken("filter")), .. LeadsBack ? (KeyHint[])[new("Esc", Spoken("back"))] : []];

    /// <summary>Whether a vehicle was open before, to which Esc goes back.</summary>
    public bool LeadsBack { get; set; }

    /// <summary>The vehicle under the cursor; null while there is none.</summary>
    public WhatNowRow? Row => shown.ElementAtOrDefault(content.List.Row);

    /// <summary>Some vehicles have been read; they may have been shown before.</summary>
    public void Take(IReadOnlyList<WhatNowRow> rows)
    {
        foreach (var row in rows) read[row.VehicleId] = row;
        ShowRows(fromTop: false);
    }

    /// <summary>All have been read.</summary>
    public void TakeEnd(IReadOnlySet<long> vehicles)
    {
        isWhole = true;
        foreach (var gone in read.Keys.Where(id => !vehicles.Contains(id)).ToList()) read.Remove(gone);
        ShowRows(fromTop: false);
    }

    /// <summary>Takes the cursor to the filter.</summary>
    public void AskFilter()
    {
        filter.Visible = filterCaption.Visible = true;
        content.Y = 2;
        filter.SetFocus();
        SetNeedsLayout();
    }

    /// <summary>Shows all vehicles again.</summary>
    public void EndFilter()
    {
        filter.Text = "";
        filter.Visible = filterCaption.Visible = false;
        content.Y = 1;
        content.List.SetFocus();
        SetNeedsLayout();
    }

    // Heading and content write every cell; what is right of the filter they leave.
    protected override bool OnClearingViewport() => !filter.Visible || base.OnClearingViewport();

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key == (Key)'/') AskFilter();
        else if (key == Key.Esc && LeadsBack) Left?.Invoke(this, EventArgs.Empty);
        else return base.OnKeyDownNotHandled(key);
        return true;
    }

    private void OnFilterKey(object? sender, Key key)
    {
        if (key == Key.Esc) EndFilter();
        else if (key == Key.Enter) Pick();
        else if (key == (Key)'/' && filter.Text.Length == 0) FindElsewhere();
        else if (key == Key.CursorDown || key == Key.CursorUp) content.List.SetFocus();
        else return;
        key.Handled = true;
    }

    private void FindElsewhere()
    {
        EndFilter();
        FindAsked?.Invoke(this, EventArgs.Empty);
    }

    private void Pick()
    {
        if (Row is { } row) VehiclePicked?.Invoke(this, row);
    }

    // As wide as its longest word in the language spoken.
    private static int States => Enum.GetValues<VehicleState>().Max(state => TextFit.Width(state.InWords()));

    private void ShowRows(bool fromTop)
    {
        shown = WhatNowOrder.Matching(WhatNowOrder.Sorted(read.Values), filter.Text);
        content.List.WhenEmpty = !isWhole ? Spoken("Reading the record …") : filter.Text.Length > 0 ? Spoken("No vehicle holds these words. Esc shows all.") : Spoken("No vehicle yet: press n.");
        var at = fromTop ? 0 : Math.Max(0, shown.ToList().FindIndex(row => row.VehicleId == chosen));
        content.Show(
            [
                new(Spoken("vehicle"), 16), new(Spoken("state"), States), new(Spoken("findings"), 16, BelowWidth: 130), new(Spoken("findings"), 22, FromWidth: 130), new(Spoken("most pressing")),
                new(Spoken("cruise"), 22, FromWidth: 110), new(Spoken("idle"), 15, FromWidth: 130), new(Spoken("worked"), 9, Right: true, FromWidth: 130), new(Spoken("spent"), 14, Right: true, FromWidth: 130),
            ],
            [.. shown.Select(Cells)],
            TextOf,
            at);
        ShowHeading();
    }

    // With room, those that follow in the list stand beside the one under the cursor; in full as far as all of them still have their place.
    private IReadOnlyList<TextLine> TextOf(int row, int width)
    {
        if (width < CardsFrom) return WhatNowText.InFull(shown[row]);

        IReadOnlyList<WhatNowRow> cards = [.. shown.Skip(row).Concat(shown.Take(row)).Take(MostCards)];
        return Enumerable.Range(0, cards.Count).Reverse().Select(rest => Cards(cards, cards.Count - 1 - rest, width))
            .LastOrDefault(lines => lines.Count <= content.TextRows) ?? Cards(cards, 1, width);
    }

    private static IReadOnlyList<TextLine> Cards(IReadOnlyList<WhatNowRow> cards, int inFull, int width)
        => TextColumns.Of([.. cards.Select((card, k) => k < inFull ? WhatNowText.InFull(card) : WhatNowText.Of(card))], CardsInARow, width);

    private void ShowHeading()
    {
        var needy = read.Values.Count(row => row.NeedsSomebody);
        var counted = read.Count == 1 ? Spoken("1 vehicle") : Spoken($"{read.Count} vehicles");
        heading.Show([TextLine.Of(
            new TextRun(Spoken(" What now? "), Tone.Strong),
            new TextRun($" {counted}{(isWhole ? "" : Spoken(" so far"))}, {(needy == 0 ? Spoken("none needs you") : needy == 1 ? Spoken("1 needs you") : Spoken($"{needy} need you"))}", Tone.Quiet))]);
    }

    private static TextRun[] Cells(WhatNowRow row) =>
    [
        new(row.Name, Tone.Strong),
        new(row.State),
        new(row.Counts.Summary(16), row.Counts.Worst?.Tone() ?? Tone.Quiet),
        new(row.Counts.Summary(22), row.Counts.Worst?.Tone() ?? Tone.Quiet),
        new((row.Late.Count > 0 ? Spoken("late: ") : "") + row.Pressing, row.Late.Count > 0 ? Tone.Clash : Tone.Plain),
        new(row.Cruise),
        new(WhatNowText.Idle(row)),
        new(row.Hours),
        new(row.Spent),
    ];
}
