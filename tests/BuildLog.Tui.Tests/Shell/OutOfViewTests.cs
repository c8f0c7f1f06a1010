using System.Globalization;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Tests.Shell;

/// <summary>What is longer than its window says so in words, whatever the colours, and how much of it is missing.</summary>
public sealed class OutOfViewTests : IDisposable
{
    private readonly HeadlessScreen screen = new(40, 10);
    private readonly Runnable window = new();

    public void Dispose()
    {
        window.Dispose();
        screen.Dispose();
    }

    // Ten rows of window: a heading, eight rows, and the line that counts the rest.
    [Fact]
    public void A_list_counts_the_rows_above_and_below()
    {
        using var list = new RowList { Width = Dim.Fill(), Height = Dim.Fill() };
        Show(list);
        list.Show([new("part")], [.. Enumerable.Range(1, 20).Select(k => new[] { new TextRun($"part {k}") })]);
        Assert.Contains("▼ 12 more", screen.Draw().Row(9), StringComparison.Ordinal);
        Assert.Contains("part 8", screen.Row(8), StringComparison.Ordinal);

        screen.Press(Key.PageDown, Key.CursorDown);
        Assert.Contains("▲ 2 above  ▼ 10 more", screen.Row(9), StringComparison.Ordinal);

        screen.Press(Key.End);
        Assert.Contains("▲ 12 above", screen.Row(9), StringComparison.Ordinal);
        Assert.DoesNotContain("more", screen.Row(9), StringComparison.Ordinal);
        Assert.Contains("part 20", screen.Row(8), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_fits_keeps_all_of_its_lines()
    {
        using var list = new RowList { Width = Dim.Fill(), Height = Dim.Fill() };
        Show(list);
        list.Show([new("part")], [.. Enumerable.Range(1, 9).Select(k => new[] { new TextRun($"part {k}") })]);
        Assert.Contains("part 9", screen.Draw().Row(9), StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_counts_its_lines_and_every_line_of_it_can_be_read()
    {
        var long30 = new string('x', 38);
        string[] lines = [.. Enumerable.Range(1, 25).Select(k => k % 2 == 0 ? $"{k:00} short" : $"{k:00}{long30[..36]}")];
        using var page = new TextPage { Width = Dim.Fill(), Height = Dim.Fill() };
        Show(page);
        page.Show([.. lines.Select(line => TextLine.Of(line))]);
        Assert.EndsWith("▼ 15 more", screen.Draw().Row(9), StringComparison.Ordinal);
        Assert.StartsWith("10 short", screen.Row(9), StringComparison.Ordinal);

        var seen = new HashSet<string>();
        for (var k = 0; k < 3; k++)
        {
            seen.UnionWith(Enumerable.Range(0, 10).Select(y => screen.Row(y).Split('▼', '▲')[0].Trim()));
            screen.Press(Key.PageDown);
        }

        Assert.Empty(lines.Except(seen));
        Assert.EndsWith("▲ 15 above", screen.Row(0), StringComparison.Ordinal);
        Assert.StartsWith("25", screen.Row(9), StringComparison.Ordinal);
    }

    [Fact]
    public void A_last_line_that_leaves_no_room_gives_way_and_is_counted()
    {
        using var page = new TextPage { Width = Dim.Fill(), Height = Dim.Fill() };
        Show(page);
        page.Show([.. Enumerable.Range(1, 12).Select(k => TextLine.Of($"{k:00} {new string('x', 35)}"))]);
        Assert.Equal("                                ▼ 3 more", screen.Draw().Row(9));
        screen.Press(Key.PageDown);
        Assert.StartsWith("03 ", screen.Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_beyond_their_box_are_counted_beside_it()
    {
        using var box = new LinesBox(string.Join('\n', Enumerable.Range(1, 9).Select(k => k.ToString(CultureInfo.InvariantCulture)))) { Width = Dim.Fill(), Height = 4 };
        Show(box);
        box.SetFocus();
        screen.Draw();
        for (var k = 0; k < 9; k++) screen.Press(Key.CursorUp);
        Assert.EndsWith("▼ 5 more", screen.Row(3), StringComparison.Ordinal);

        for (var k = 0; k < 9; k++) screen.Press(Key.CursorDown);
        Assert.EndsWith("▲ 5 above", screen.Row(0), StringComparison.Ordinal);
    }

    [Fact]
    public void A_poor_terminal_gets_the_same_in_ASCII()
        => Assert.Equal("^ 3 above  v 12 more", Characters.ToAscii(new OutOfView(3, 12).InWords));

    private void Show(View view)
    {
        window.BorderStyle = Terminal.Gui.Drawing.LineStyle.None;
        window.Add(view);
        screen.Show(window);
        view.SetFocus();
    }
}
