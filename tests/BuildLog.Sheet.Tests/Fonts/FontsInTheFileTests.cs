using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Tests.Reading;
using BuildLog.Sheet.Tests.Samples;
using UglyToad.PdfPig.Tokens;

namespace BuildLog.Sheet.Tests.Fonts;

public sealed class FontsInTheFileTests
{
    [Fact]
    public void Every_font_is_embedded_as_a_subset()
    {
        using var sheet = ReadBack.Of(Sheets.Everywhere("Kestrel ☐"));

        var descriptors = sheet.Pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(key => sheet.Pdf.Structure.GetObject(key).Data)
            .OfType<DictionaryToken>()
            .Where(token => token.ContainsKey(NameToken.FontName))
            .ToList();

        Assert.Equal(4, descriptors.Count);                // Plex regular, semibold and italic; DejaVu for the box
        Assert.All(descriptors, token =>
        {
            Assert.True(token.ContainsKey(NameToken.FontFile2));
            Assert.True(token.TryGet(NameToken.FontName, out NameToken name));
            Assert.Matches(@"^[A-Z]{6}\+", name.Data);
        });
    }

    [Fact]
    public void The_file_sets_text_as_wide_as_layout_measured_it()
    {
        var drawn = BuildSheet.Draw(KestrelPickup.Sheet).Pages[0].Operations.OfType<DrawText>().ToList();
        using var sheet = ReadBack.Of(KestrelPickup.Sheet);
        var read = sheet.Pdf.GetPage(1).Letters;

        foreach (var text in drawn.Where(text => text.Text.Length > 10))
        {
            var baseline = sheet.Pdf.GetPage(1).Height - text.Baseline;
            var end = read.Where(letter => Math.Abs(letter.StartBaseLine.Y - baseline) < 0.1 && letter.StartBaseLine.X < text.Right && letter.Value != " ")
                .Max(letter => letter.EndBaseLine.X);
            Assert.Equal(text.Right, end, 0.1);
        }
    }

    [Fact]
    public void Figures_are_all_of_one_width_so_that_columns_line_up()
    {
        var widths = "0123456789".Select(digit => SheetFonts.Regular.Width(digit.ToString(), 10)).Distinct();

        Assert.Single(widths);
    }

    [Theory]
    [InlineData("IBMPlexSans-LICENSE", "SIL Open Font License")]
    [InlineData("DejaVuSans-LICENSE", "Bitstream Vera")]
    public void A_font_s_licence_travels_with_it(string name, string words)
    {
        using var resource = typeof(BuildSheetWriter).Assembly.GetManifestResourceStream("licence:" + name);
        using var reader = new StreamReader(resource!);

        Assert.Contains(words, reader.ReadToEnd(), StringComparison.OrdinalIgnoreCase);
    }
}
