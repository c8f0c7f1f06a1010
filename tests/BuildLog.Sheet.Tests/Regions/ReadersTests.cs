using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Reading;
using BuildLog.Sheet.Tests.Samples;
using UglyToad.PdfPig.Outline;

namespace BuildLog.Sheet.Tests.Regions;

public sealed class ReadersTests
{
    [Theory]
    [InlineData(SheetReader.Buyer, "Driveline, Key figures, Speeds in the gears, Pull and hills, Findings, Speedometer, Tyres, wheels and axle masses, Measurement evidence, Parts history, Work and hours, Costs, Open points and assumptions, Cautions, Signatures")]
    [InlineData(SheetReader.Inspector, "Driveline, Key figures, Findings, Speedometer, Tyres, wheels and axle masses, Propshafts, Measurement evidence, Parts history, Work and hours, Costs, Open points and assumptions, Cautions, Signatures")]
    [InlineData(SheetReader.Insurer, "Driveline, Key figures, Power and value, Tyres, wheels and axle masses, Parts history, Work and hours, Costs, Open points and assumptions, Cautions, Signatures")]
    [InlineData(SheetReader.Own, "Driveline, Key figures, Speeds in the gears, Pull and hills, Findings, Speedometer, Tyres, wheels and axle masses, Propshafts, Measurement evidence, Parts history, Work and hours, Costs, Open points and assumptions, Cautions, Signatures")]
    public void Each_gets_the_regions_meant_for_them(SheetReader reader, string regions)
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet with { Reader = reader });

        Assert.True(sheet.Pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(regions, string.Join(", ", bookmarks.Roots.Single().Children.OfType<DocumentBookmarkNode>().Select(node => node.Title)));
    }

    [Fact]
    public void Hours_costs_road_tests_and_photos_that_nobody_keeps_make_no_region()
    {
        using var sheet = ReadBack.Of(Sheets.Empty with { Reader = SheetReader.Own });

        Assert.DoesNotContain("Work and hours", sheet.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Costs", sheet.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Road tests", sheet.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Photos", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Signatures_never_stand_on_a_page_alone()
    {
        for (var rows = 0; rows < 40; rows++)
        {
            using var sheet = ReadBack.Of(Sheets.WithHistory(rows));

            Assert.All(sheet.Pages.Where(page => page.Contains("Signatures", StringComparison.Ordinal)), page => Assert.Contains("Cautions", page, StringComparison.Ordinal));
        }
    }
}
