using BuildLog.Data.Attachments;
using BuildLog.Data.Decisions;
using BuildLog.Data.Notes;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Notes;

public sealed class NotesAboutAnything : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Hang_on_a_vehicle_a_part_a_fitment_or_a_decision()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("axle"));
        var fitment = test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3));
        var decision = test.Shop.Add(new Decision(vehicle) { Date = new(2026, 5, 3), What = "3.08", Why = "quiet", AgreedBy = "Agnes Thorley" });
        foreach (var about in (Kept[])[vehicle, axle, fitment, decision])
            test.Shop.Add(new Note(about) { Date = new(2026, 5, 4), Title = $"of {about}", Body = "two\nlines" });
        test.Reopen();
        Assert.Equal("of axle", Assert.Single(test.Shop.NotesOf(axle)).Title);
        Assert.Equal(Matter.Fitment, Assert.Single(test.Shop.NotesOf(fitment)).About);
        Assert.Equal("two\nlines", Assert.Single(test.Shop.NotesOf(decision)).Body);
    }

    [Theory]
    [InlineData("", " ", "The note is empty.")]
    [InlineData("a", "b\u001b[2J", "The note holds signs that are no text; paste it as plain text.")]
    [InlineData("a\nb", "", "The title of the note is one line of at most 200 characters.")]
    public void Are_refused_where_they_are_no_text(string title, string body, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusedException>(() => test.Shop.Add(new Note(test.Vehicle("Brindle")) { Date = new(2026, 5, 4), Title = title, Body = body })).Message);

    [Fact]
    public void Are_about_something_in_the_record()
        => Assert.Equal(
            "The supplier is not in the record; add it first.",
            Assert.Throws<RefusedException>(() => test.Shop.Add(new Note(new Supplier { Name = "Tolland yard" }) { Date = new(2026, 5, 4), Title = "closed" })).Message);

    [Fact]
    public void Go_with_what_they_are_about()
    {
        var supplier = test.Shop.Add(new Supplier { Name = "Tolland yard" });
        test.Shop.Add(new Note(supplier) { Date = new(2026, 5, 4), Title = "closed on Mondays" });
        test.Shop.Add(new Attachment(supplier) { FileName = "card.jpg", MediaType = "image/jpeg", Length = 3, Sha256 = new('a', 64) });
        test.Shop.Remove(supplier);
        Assert.Equal(0L, test.Ask("SELECT (SELECT count(*) FROM Notes) + (SELECT count(*) FROM Attachments)"));
    }

    [Theory]
    [InlineData("../card.jpg", "a")]
    [InlineData("..", "a")]
    [InlineData("card.jpg", "A")]
    [InlineData("card.jpg", "g")]
    [InlineData("", "a")]
    public void Have_papers_with_a_plain_name_under_their_hash(string name, string digit)
    {
        var vehicle = test.Vehicle("Brindle");
        Assert.Throws<RefusedException>(() => test.Shop.Add(new Attachment(vehicle) { FileName = name, Sha256 = string.Concat(Enumerable.Repeat(digit, 64)) }));
        Assert.Empty(test.Shop.AttachmentsOf(vehicle));
    }
}
