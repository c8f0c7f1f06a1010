using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>One row of headings and, below it, one page at a time. Pages are chosen by Alt+digit, by click, or by whoever holds the digit keys.</summary>
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

    public void AddPage(string title, View page)
    {
        page.Title = title;
        page.Y = 1;
        page.Width = Dim.Fill();
        page.Height = Dim.Fill();
        page.CanFocus = true;
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
        for (var i = 0; i < Math.Min(9, pages.Count); i++)
        {
            if (key == new Key((char)('1' + i)).WithAlt) return ShowPage(i);
        }

        return base.OnKeyDownNotHandled(key);
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => headings.SetNeedsDraw();

    private static string Heading(int index, View page) => $" {index + 1} {page.Title} ";

    private bool ShowAt(int x)
    {
        var end = 0;
        for (var i = 0; i < pages.Count; i++)
        {
            end += Heading(i, pages[i]).Length + 1;
            if (x >= end) continue;
            SetFocus();
            return ShowPage(i);
        }

        return false;
    }

    // The page that is shown stands in brackets, so that it can be told without colours too.
    private void DrawHeadings()
    {
        var x = 0;
        for (var i = 0; i < pages.Count; i++)
        {
            var heading = Heading(i, pages[i]);
            if (i == Index)
            {
                heading = "[" + heading[1..^1] + "]";
                headings.Paint(x, 0, heading, HasFocus ? Theme.Palette.Cursor : Theme.Palette.Chosen);
            }
            else
            {
                headings.Paint(x, 0, heading, Tone.Plain);
            }

            x += heading.Length;
            headings.Paint(x++, 0, "─", Tone.Quiet);
        }

        if (x < headings.Viewport.Width) headings.Paint(x, 0, new string('─', headings.Viewport.Width - x), Tone.Quiet);
    }
}
