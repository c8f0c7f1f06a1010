using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>ChangesAndSearch.sql is the demo shop as the fourth schema held it: the third with its log of changes and its search.</summary>
public sealed class AFileOfChangesAndSearch : IDisposable
{
    private readonly EarlierShop earlier = new("ChangesAndSearch.sql");

    public void Dispose() => earlier.Dispose();

    // The last two changes in the dump.
    [Fact]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date()
    {
        Assert.Equal(114, earlier.Shop.Changes(most: 1000).Count);
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", earlier.Shop.Undo());
        Assert.Equal("fitted van's own axle, no tag to Pellow", earlier.Shop.Undo());
        Assert.Equal("fitted van's own axle, no tag to Pellow", earlier.Shop.Redo());
        Assert.Empty(RecordCheck.Of(earlier.Path).Troubles());
    }

    [Fact]
    public void Finds_the_same_words()
        => Assert.Contains(earlier.Shop.Find("pinion chipped"), found => found is { Kind: "axle", Title: "Harrow axle, the frame's own" });

    [Fact]
    public void Takes_the_pictures_among_its_papers_for_photos()
    {
        using (var connection = ShopConnection.OpenAlone(earlier.Path))
        {
            foreach (var (name, type) in (ValueTuple<string, string>[])[("pinion.jpg", "image/jpeg"), ("receipt.pdf", "application/pdf")])
            {
                connection.Run($"""
                    INSERT INTO "Attachments" ("About", "AboutUid", "Sha256", "FileName", "MediaType", "Length", "Caption", "Uid", "Version")
                    SELECT 'Vehicle', "Uid", '{new string('a', 64)}', '{name}', '{type}', 3, '', '{Guid.CreateVersion7()}', 0 FROM "Vehicles" WHERE "Name" = 'Brindle'
                    """);
            }
        }

        var attachments = earlier.Shop.AttachmentsOf(earlier.Shop.FindVehicle("Brindle"));
        Assert.Equal(
            [("pinion.jpg", AttachmentKind.Photo), ("receipt.pdf", AttachmentKind.Paper)],
            attachments.Select(attachment => (attachment.FileName, attachment.What)).Order());
    }
}
