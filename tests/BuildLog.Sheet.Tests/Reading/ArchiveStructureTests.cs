using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Photos;
using BuildLog.Sheet.Tests.Samples;
using UglyToad.PdfPig.Tokens;

namespace BuildLog.Sheet.Tests.Reading;

/// <summary>What PDF/A-2a (ISO 19005-2) asks of a file and a reader can see. What PDFBox finds stands in <see cref="SecondReadersTests"/>.</summary>
public sealed class ArchiveStructureTests
{
    private static readonly SheetContent Sheet = KestrelPickup.Sheet with { Reader = SheetReader.Own, TitlePhoto = new SheetPhoto("front.jpg", Pictures.FromCamera(1)) };

    [Fact]
    public void It_is_marked_names_its_colours_and_hides_nothing()
    {
        using var sheet = ReadBack.Of(Sheet);
        var catalog = sheet.Pdf.Structure.Catalog.CatalogDictionary;

        Assert.True(catalog.TryGet(NameToken.Create("OutputIntents"), out _));
        Assert.True(catalog.TryGet(NameToken.Create("Metadata"), out _));
        Assert.True(catalog.TryGet(NameToken.Create("MarkInfo"), out IndirectReferenceToken reference));
        var mark = Assert.IsType<DictionaryToken>(sheet.Pdf.Structure.GetObject(reference.Data).Data);
        Assert.True(mark.TryGet(NameToken.Create("Marked"), out BooleanToken marked) && marked.Data);
        Assert.False(sheet.Pdf.IsEncrypted);
        Assert.False(catalog.TryGet(NameToken.Create("OpenAction"), out _));
    }

    [Fact]
    public void No_picture_asks_to_be_smoothed_and_none_is_see_through()
    {
        using var sheet = ReadBack.Of(Sheet);
        var pictures = sheet.Pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(key => sheet.Pdf.Structure.GetObject(key).Data)
            .OfType<StreamToken>()
            .Where(stream => stream.StreamDictionary.TryGet(NameToken.Subtype, out NameToken kind) && kind.Data == "Image")
            .ToList();

        Assert.Single(pictures);
        Assert.All(pictures, picture =>
        {
            Assert.False(picture.StreamDictionary.TryGet(NameToken.Create("Interpolate"), out BooleanToken smoothed) && smoothed.Data);
            Assert.False(picture.StreamDictionary.ContainsKey(NameToken.Create("SMask")));
        });
    }
}
