namespace BuildLog.Tui.Shell;

/// <summary>One heading in its place on the line of headings.</summary>
internal sealed record PlacedTab(int Page, string Text, int X);

/// <summary>Which headings stand on the line of headings, and where. Plain numbers, so that it can be tested without a terminal.</summary>
/// <param name="MoreBefore">Whether headings are left out at the left.</param>
internal sealed record TabLine(IReadOnlyList<PlacedTab> Tabs, bool MoreBefore, bool MoreAfter)
{
    /// <summary>A mark and the line that goes on to it.</summary>
    public const int MarkWidth = 2;

    /// <summary>All headings where they have room; else the chosen one with as many neighbours as fit, from the left as long as that shows it.</summary>
    public static TabLine For(IReadOnlyList<string> titles, int chosen, int width)
    {
        var texts = titles.Select((title, page) => Heading(title, page, page == chosen)).ToList();
        if (Needed(texts, 0, texts.Count) <= width) return Placed(texts, 0, texts.Count, width);

        var first = 0;
        while (first < chosen && Needed(texts, first, chosen + 1) > width) first++;
        var end = chosen + 1;
        while (end < texts.Count && Needed(texts, first, end + 1) <= width) end++;
        return Placed(texts, first, end, width);
    }

    // The chosen page stands in brackets, so that it can be told without colours too.
    private static string Heading(string title, int page, bool chosen)
    {
        var name = PageDigits.Of(page) is { } digit ? $"{digit} {title}" : title;
        return chosen ? $"[{name}]" : $" {name} ";
    }

    private static int Needed(List<string> texts, int first, int end)
        => (first > 0 ? MarkWidth : 0) + texts[first..end].Sum(text => TextFit.Width(text) + 1) - 1 + (end < texts.Count ? MarkWidth : 0);

    private static TabLine Placed(List<string> texts, int first, int end, int width)
    {
        var tabs = new List<PlacedTab>();
        var x = first > 0 ? MarkWidth : 0;
        for (var page = first; page < end && x < width; page++)
        {
            var text = TextFit.Cut(texts[page], width - x);
            tabs.Add(new(page, text, x));
            x += TextFit.Width(text) + 1;
        }

        return new(tabs, first > 0, end < texts.Count);
    }
}
