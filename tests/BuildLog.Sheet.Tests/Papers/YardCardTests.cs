using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Sheet.Preview;

namespace BuildLog.Sheet.Tests.Papers;

public sealed class YardCardTests
{
    // As much as the longest card of a shop says.
    private static readonly YardCard Full = new()
    {
        Id = new("3f0a4c51-6f54-4c0e-9a94-0d2a5c1d7e22"),
        Created = new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero),
        PrintedOn = "25 November 2026",
        About = "Kestrel",
        Part = "axle",
        Wanted = ["wanted: axle ratio 3.23 to 3.49", "  not lower: cruise engine speed (2660 to 2940 rev/min)", "  not higher: cruise engine speed (2660 to 2940 rev/min)"],
        Ways =
        [
            new("One wheel held (open differential)", "propshaft turns", [new("10 wheel turns", "16.25 to 17.25", "under 15.75, over 17.75"), new("30 wheel turns", "48.75 to 52.00", "under 48.25, over 52.50")]),
            new("Both wheels turned alike", "propshaft turns", [new("10 wheel turns", null, "under 32.00, over 35.25"), new("30 wheel turns", "97.50 to 104.00", "under 96.50, over 105.00")]),
        ],
        Notes =
        [
            "First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.",
            "Teeth that would do: 42/13 43/13 37/11 36/11 47/14 33/10 49/15 46/14 39/12 62/19 55/17 58/18",
            "Tags and stampings are hearsay: count.",
        ],
        Blanks = [.. Enumerable.Range(1, 9).Select(k => new CardBlank(FormattableString.Invariant($"measure {k}"), "mm", "springs 1070 mm"))],
        Cautions =
        [
            "A lifted vehicle: stands on firm ground, never under a car on a jack; wheels on the ground chocked; key out; not alone.",
            "A lifted axle's handbrake holds nothing. Do not lever one wheel against a limited slip: lift both.",
        ],
    };

    // ISO 216: A6 is 105 × 148 mm; half of 8½ × 11 in is 5½ × 8½ in. A point is 1/72 in.
    [Theory]
    [InlineData(Content.Paper.A6, 105 / 25.4 * 72, 148 / 25.4 * 72)]
    [InlineData(Content.Paper.HalfLetter, 5.5 * 72, 8.5 * 72)]
    public void It_is_one_page_of_its_paper(Content.Paper paper, double width, double height)
    {
        var page = Assert.Single(PaperWriter.Draw(Full with { Paper = paper }).Pages);

        Assert.Equal(width, page.Width, 0.01);
        Assert.Equal(height, page.Height, 0.01);
    }

    // Printers leave about 4 mm at the edges.
    [Theory]
    [InlineData(Content.Paper.A6)]
    [InlineData(Content.Paper.HalfLetter)]
    public void No_printer_cuts_its_edges(Content.Paper paper)
    {
        const double Edge = 4 / 25.4 * 72;
        var page = PaperWriter.Draw(Full with { Paper = paper }).Pages[0];

        Assert.All(page.Operations.OfType<Drawing.DrawText>(), text =>
        {
            Assert.InRange(text.X, Edge, page.Width - Edge);
            Assert.InRange(text.Right, Edge, page.Width - Edge);
            Assert.InRange(text.Baseline, Edge, page.Height - Edge);
        });
    }

    [Fact]
    public void Everything_on_it_can_be_read_back_in_order()
    {
        var text = string.Join(' ', PaperWriter.Preview(Full with { Paper = Content.Paper.A6 }).Lines(PreviewSetup.Usual));

        string[] parts = ["YARD CARD", "Axle for Kestrel", "16.25 to 17.25", "none is sure", "count further", "42/13", "hearsay", "measure 9", "limited slip: lift"];
        Assert.Equal(parts.Order(Comparer<string>.Create((one, other) => text.IndexOf(one, StringComparison.Ordinal) - text.IndexOf(other, StringComparison.Ordinal))), parts);
        Assert.All(parts, part => Assert.Contains(part, text, StringComparison.Ordinal));
    }
}
