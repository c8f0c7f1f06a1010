using System.Globalization;
using System.Text;
using System.Xml.Linq;
using BuildLog.Sheet.Tests.Samples;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace BuildLog.Sheet.Tests.Reading;

public sealed class FilePropertiesTests
{
    private const string AwkwardName = "Rust & Sons <\"Kestrel\"> (№ 1) /ABCDEF+Plex";

    [Fact]
    public void The_title_names_the_vehicle_whatever_signs_are_in_it()
    {
        using var sheet = ReadBack.Of(Sheets.Named(AwkwardName));

        Assert.Equal($"{AwkwardName}: build sheet", sheet.Pdf.Information.Title);
    }

    [Fact]
    public void The_xmp_packet_is_well_formed_and_says_the_same()
    {
        using var sheet = ReadBack.Of(Sheets.Named(AwkwardName));

        Assert.True(sheet.Pdf.TryGetXmpMetadata(out var xmp));
        var packet = XDocument.Parse(Encoding.UTF8.GetString(xmp.GetXmlBytes().ToArray()));
        var title = packet.Descendants(XName.Get("title", "http://purl.org/dc/elements/1.1/")).Single();
        var created = packet.Descendants(XName.Get("CreateDate", "http://ns.adobe.com/xap/1.0/")).Single();
        Assert.Equal($"{AwkwardName}: build sheet", title.Value);
        Assert.Equal("2026-01-02T03:04:05+00:00", created.Value);
    }

    [Theory]
    [InlineData("Kestrel", true)]
    [InlineData("Kestrel \U0001F6FB", false)]
    public void The_file_calls_itself_an_archive_file_only_when_no_sign_is_missing(string name, bool claims)
    {
        using var sheet = ReadBack.Of(Sheets.Named(name));

        Assert.True(sheet.Pdf.TryGetXmpMetadata(out var xmp));
        Assert.Equal(claims, Encoding.UTF8.GetString(xmp.GetXmlBytes().ToArray()).Contains("pdfaid:part", StringComparison.Ordinal));
    }

    [Fact]
    public void The_bookmarks_are_the_vehicle_and_its_regions()
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet);

        Assert.True(sheet.Pdf.TryGetBookmarks(out var bookmarks));
        var vehicle = Assert.Single(bookmarks.Roots);
        Assert.Equal("Kestrel pickup", vehicle.Title);
        Assert.Equal(
            [
                ("Driveline", 1), ("Key figures", 1), ("Speeds in the gears", 1), ("Pull and hills", 2), ("Findings", 2), ("Speedometer", 2),
                ("Tyres, wheels and axle masses", 2), ("Measurement evidence", 3), ("Parts history", 3), ("Work and hours", 3), ("Costs", 3),
                ("Open points and assumptions", 3), ("Cautions", 3), ("Signatures", 3),
            ],
            vehicle.Children.OfType<DocumentBookmarkNode>().Select(node => (node.Title, node.PageNumber)));
    }

    [Fact]
    public void The_file_is_tagged_and_names_its_language()
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet);
        var catalog = sheet.Pdf.Structure.Catalog.CatalogDictionary;

        Assert.True(catalog.TryGet(NameToken.Create("StructTreeRoot"), out _));
        Assert.True(catalog.TryGet(NameToken.Create("MarkInfo"), out _));
        Assert.True(catalog.TryGet(NameToken.Lang, out var language));
        Assert.Equal("en-GB", Assert.IsType<StringToken>(language).Data);
    }

    [Fact]
    public void The_same_content_gives_the_same_bytes()
    {
        using var first = ReadBack.Of(KestrelPickup.Sheet);
        using var second = ReadBack.Of(KestrelPickup.Sheet with { });

        Assert.Equal(first.File, second.File);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_reader_s_country_changes_no_byte(string culture)
    {
        using var here = ReadBack.Of(KestrelPickup.Sheet);
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            using var there = ReadBack.Of(KestrelPickup.Sheet);
            Assert.Equal(here.File, there.File);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Another_id_is_another_file()
    {
        using var first = ReadBack.Of(KestrelPickup.Sheet);
        using var second = ReadBack.Of(KestrelPickup.Sheet with { Id = Guid.Empty });

        Assert.NotEqual(first.File, second.File);
    }
}
