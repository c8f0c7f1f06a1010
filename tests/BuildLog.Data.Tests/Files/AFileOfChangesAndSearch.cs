using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>ChangesAndSearch.sql is the demo shop as the fourth schema held it: the third with its log of changes and its search.</summary>
public sealed class AFileOfChangesAndSearch : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly string path;
    private readonly Lazy<Shop> shop;

    public AFileOfChangesAndSearch()
    {
        path = Path.Combine(folder, "shop.db");
        EarlierRecord.Make("ChangesAndSearch.sql", path);
        shop = new(() => ShopFile.Open(path));
    }

    public void Dispose()
    {
        if (shop.IsValueCreated) shop.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    // The last two changes in the dump.
    [Fact]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date()
    {
        Assert.Equal(114, shop.Value.Changes(most: 1000).Count);
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", shop.Value.Undo());
        Assert.Equal("fitted van's own axle, no tag to Pellow", shop.Value.Undo());
        Assert.Equal("fitted van's own axle, no tag to Pellow", shop.Value.Redo());
        Assert.Empty(RecordCheck.Of(path).Troubles());
    }

    [Fact]
    public void Finds_the_same_words()
        => Assert.Contains(shop.Value.Find("pinion chipped"), found => found is { Kind: "axle", Title: "Harrow axle, the frame's own" });

    [Fact]
    public void Takes_the_pictures_among_its_papers_for_photos()
    {
        using (var connection = ShopConnection.OpenAlone(path))
        {
            foreach (var (name, type) in (ValueTuple<string, string>[])[("pinion.jpg", "image/jpeg"), ("receipt.pdf", "application/pdf")])
            {
                connection.Run($"""
                    INSERT INTO "Attachments" ("About", "AboutUid", "Sha256", "FileName", "MediaType", "Length", "Caption", "Uid", "Version")
                    SELECT 'Vehicle', "Uid", '{new string('a', 64)}', '{name}', '{type}', 3, '', '{Guid.CreateVersion7()}', 0 FROM "Vehicles" WHERE "Name" = 'Brindle'
                    """);
            }
        }

        var attachments = shop.Value.AttachmentsOf(shop.Value.FindVehicle("Brindle"));
        Assert.Equal(
            [("pinion.jpg", AttachmentKind.Photo), ("receipt.pdf", AttachmentKind.Paper)],
            attachments.Select(attachment => (attachment.FileName, attachment.What)).Order());
    }

    // Counted in the dump.
    [Fact]
    public void Loses_no_row_and_keeps_its_rules()
    {
        _ = shop.Value.Vehicles();
        using var connection = ShopConnection.OpenAlone(path);
        Assert.Equal(
            [6L, 35L, 36L, 11L, 26L, 114L, 265L, 114L],
            new[] { "Vehicles", "Components", "Fitments", "Sessions", "Readings", "ChangeSets", "Changes", "Findables" }.Select(table => (long)connection.Ask($"SELECT count(*) FROM {table}")!));
        Assert.Empty(RecordCheck.Of(path).Troubles());

        using var test = new TestShop();
        Assert.Equal(test.Ask(EarlierRecord.Schema), connection.Ask(EarlierRecord.Schema));
    }
}
