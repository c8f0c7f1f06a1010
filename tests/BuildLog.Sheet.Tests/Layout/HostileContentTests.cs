using System.Collections;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Layout;

public sealed class HostileContentTests
{
    private const double Rounding = 0.05;

    public static TheoryData<string, Content.Paper> Texts
    {
        get
        {
            string[] texts =
            [
                new('W', 10_000), new('i', 3000), string.Concat(Enumerable.Repeat("Wort-", 500)), string.Concat(Enumerable.Repeat("wide words ", 250)),
                string.Concat(Enumerable.Repeat("\u0301\u0308", 3000)), new('\n', 500), new(' ', 10_000), string.Concat(Enumerable.Repeat("\U0001F6FB", 1000)),
                "short",
            ];
            var data = new TheoryData<string, Content.Paper>();
            foreach (var text in texts)
                foreach (var paper in new[] { Content.Paper.A4, Content.Paper.Letter }) data.Add(text, paper); // a sheet is laid out for no other

            return data;
        }
    }

    // A new matter of the sheet is drawn with these texts from its first day on. The other two stand in place of something, or are no text.
    [Fact]
    public void Every_matter_of_a_sheet_is_in_it()
    {
        string[] others = [nameof(SheetContent.PullLacks), nameof(SheetContent.TitlePhoto)];
        var sheet = Sheets.Everywhere("short");
        var left = typeof(SheetContent).GetProperties().Where(matter => !others.Contains(matter.Name))
            .Where(matter => matter.GetValue(sheet) is null or ICollection { Count: 0 }).Select(matter => matter.Name).ToList();
        Assert.True(left.Count == 0, $"Sheets.Everywhere has no {string.Join(", ", left)}.");
    }

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void No_text_leaves_the_frame_wherever_it_stands(string text, Content.Paper paper)
    {
        var document = BuildSheet.Draw(Sheets.Everywhere(text) with { Paper = paper });
        var body = PageSetup.Of(paper).Body;

        foreach (var page in document.Pages)
        {
            Assert.All(page.Operations.OfType<DrawText>(), drawn =>
            {
                Assert.InRange(drawn.X, body.X - Rounding, body.Right + Rounding);
                Assert.InRange(drawn.Right, body.X - Rounding, body.Right + Rounding);
                Assert.InRange(drawn.Baseline, 0, page.Height - 20);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void No_text_runs_into_another(string text, Content.Paper paper)
    {
        var document = BuildSheet.Draw(Sheets.Everywhere(text) with { Paper = paper, Sawtooth = null });

        foreach (var page in document.Pages)
        {
            var rows = page.Operations.OfType<DrawText>().Where(drawn => drawn.Right > drawn.X)
                .GroupBy(drawn => Math.Round(drawn.Baseline, 2));
            foreach (var row in rows)
            {
                var inOrder = row.OrderBy(drawn => drawn.X).ToList();
                foreach (var (left, right) in inOrder.Zip(inOrder.Skip(1)))
                    Assert.True(left.Right <= right.X + Rounding, $"'{left.Text}' runs into '{right.Text}'.");
            }
        }
    }

    [Fact]
    public void All_ten_thousand_letters_are_printed()
    {
        var document = BuildSheet.Draw(Sheets.Empty with { OpenPoints = [new string('Q', 10_000)] });

        Assert.Equal(10_000, document.Pages.SelectMany(page => page.Operations).OfType<DrawText>().Sum(drawn => drawn.Text.Count(c => c == 'Q')));
    }
}
