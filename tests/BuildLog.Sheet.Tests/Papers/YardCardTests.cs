using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Sheet.Tests.Papers;

public sealed class YardCardTests
{
    // As much as the longest of the shop's cards says.
    private static readonly YardCard Full = new()
    {
        Id = new("3f0a4c51-6f54-4c0e-9a94-0d2a5c1d7e22"),
        Created = new(2026, 11, 25, 14, 30, 0, TimeSpan.Zero),
        PrintedOn = "25 November 2026",
        About = "Brindle",
        Part = "axle",
        Wanted = ["axle ratio 3.23 to 3.49", "not lower: cruise engine speed (2660 to 2940 rev/min)", "not higher: cruise engine speed (2660 to 2940 rev/min)"],
        Counted = "propshaft turns",
        Counts = [.. Enumerable.Repeat(new CardCount("one wheel held", "30 wheel turns", "48.75 to 52.00", "under 48.25, over 52.50"), 4)],
        Notes = ["First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.", "Teeth that would do: 42/13 43/13 37/11 36/11 47/14 33/10 49/15 46/14 39/12 62/19 55/17 58/18", "Tags and stampings are hearsay: count."],
        Blanks = [.. Enumerable.Repeat(new CardBlank("perch to perch", "mm", "ours 1070 mm"), 8)],
        Cautions = ["Never under a car on a jack. Stands, chocks, key out; not alone."],
    };

    // A6 is 105 × 148 mm, half a letter 5½ × 8½ in; a point is 1/72 in.
    [Theory]
    [InlineData(CardPaper.A6, 105 / 25.4 * 72, 148 / 25.4 * 72)]
    [InlineData(CardPaper.HalfLetter, 5.5 * 72, 8.5 * 72)]
    public void It_is_one_page_of_its_paper(CardPaper paper, double width, double height)
    {
        var page = Assert.Single(PaperWriter.Draw(Full with { Size = paper }).Pages);

        Assert.Equal(width, page.Width, 0.01);
        Assert.Equal(height, page.Height, 0.01);
    }
}
