using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>One row of headings and, below it, one page at a time. Pages are turned by Left and Right, by Alt+digit, by click, or by whoever holds the digit keys.</summary>
internal class PageSwitcher : View
{
    private readonly List<View> pages = [];
    private readonly View headings;

    public PageSwitcher()
    {
        CanFocus = true;
        headings = new View { Height = 1, Width = Dim.Fill() };
        headings.DrawingContent += (_, e) =>
        {
            DrawHeadings();
            e.Cancel = true;
        };
        headings.MouseEvent += (_, mouse) => mouse.Handled = mouse.IsSingleClicked && mouse.Position is { } at && ShowAt(at.X);
        Add(headings);
    }

    /// <summary>Another page is shown.</summary>
    public event EventHandler? PageShown;

    public int Index { get; private set; } = -1;

    public View Page => pages[Index];

    public int Count => pages.Count;

    /// <summary>The titles of all pages in their order.</summary>
    public IReadOnlyList<string> Titles => pages.ConvertAll(page => page.Title);

    private TabLine Tabs => TabLine.For(Titles, Index, headings.Viewport.Width);

    public void AddPage(View page)
    {
        page.Y = 1;
        page.Width = Dim.Fill();
        page.Height = Dim.Fill();
        page.Visible = false;
        pages.Add(page);
        Add(page);
        if (Index < 0) ShowPage(0);
    }

    public bool ShowPage(int index)
    {
        if (index < 0 || index >= pages.Count) return false;
        if (index == Index) return true;

        var hadFocus = HasFocus;
        var before = Index;
        Index = index;
        pages[index].Visible = true;
        if (before >= 0) pages[before].Visible = false;
        if (hadFocus) pages[index].SetFocus();
        headings.SetNeedsDraw();
        PageShown?.Invoke(this, EventArgs.Empty);
        return true;
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key == Key.CursorLeft) return ShowPage((Index + Count - 1) % Count);
        if (key == Key.CursorRight) return ShowPage((Index + 1) % Count);
        for (var page = 0; page < Count && PageDigits.Of(page) is { } digit; page++)
        {
            if (key == new Key(digit).WithAlt) return ShowPage(page);
        }

        return base.OnKeyDownNotHandled(key);
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => headings.SetNeedsDraw();

    private bool ShowAt(int x)
    {
        var tabs = Tabs;
        SetFocus();
        if (tabs.MoreBefore && x < TabLine.MarkWidth) return ShowPage(Index - 1);
        var clicked = tabs.Tabs.FirstOrDefault(tab => x >= tab.X && x <= tab.X + TextFit.Width(tab.Text));
        return ShowPage(clicked?.Page ?? (tabs.MoreAfter ? Index + 1 : Index));
    }

    private void DrawHeadings()
    {
        var tabs = Tabs;
        var width = headings.Viewport.Width;
        headings.Paint(0, 0, new string('─', width), Tone.Quiet);
        if (tabs.MoreBefore) headings.Paint(0, 0, "‹", Tone.Heading);
        foreach (var tab in tabs.Tabs)
        {
            if (tab.Page == Index) headings.Paint(tab.X, 0, tab.Text, HasFocus ? Theme.Palette.Cursor : Theme.Palette.Chosen);
            else headings.Paint(tab.X, 0, tab.Text, Tone.Plain);
        }

        if (tabs.MoreAfter) headings.Paint(width - 1, 0, "›", Tone.Heading);
    }
}
