using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Reading;

public sealed class TextOfASheetTests
{
    [Fact]
    public void Regions_follow_each_other_in_page_order()
    {
        using var sheet = ReadBack.Of(KestrelPickup.Sheet);
        string[] inOrder =
        [
            "BUILD SHEET", "Kestrel pickup", "Harrow Lane Restomods", "KW-L-104 882", "Driveline", "3.545 ± 0.004 : 1", "Key figures",
            "2486 ± 11 rev/min", "Cruise goal", "Speeds in the gears", "engine speed, rev/min", "Findings", "Tyre against wheel arch",
            "Measurement evidence", "35 3/8 turns for 20", "Parts history", "6.00-16 cross-ply", "Open points and assumptions",
            "Cautions", "Signatures", "Received by",
        ];

        var places = inOrder.Select(text => sheet.Text.IndexOf(text, StringComparison.Ordinal)).ToList();

        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Theory]
    [InlineData("fits")]
    [InlineData("watch")]
    [InlineData("clash")]
    [InlineData("open")]
    [InlineData("perhaps")]
    public void A_verdict_is_there_as_a_word(string verdict)
    {
        using var sheet = ReadBack.Of(Sheets.Empty with { Findings = [new(verdict, "Matter", "Sentence.")] });

        Assert.Contains(verdict, sheet.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Jürgen Çelik, Łódź, naïve façade")]
    [InlineData("Ωμέγα κινητήρας")]
    [InlineData("Жигули, привод")]
    [InlineData("±×°≤≥Δ½¼πµΩ→−²№")]
    [InlineData("⌀ 76, ☐ done, ● mark")]
    public void Accents_other_alphabets_and_signs_come_back_as_they_went_in(string text)
    {
        using var sheet = ReadBack.Of(Sheets.Named(text));

        Assert.Contains(text, sheet.Text, StringComparison.Ordinal);
        Assert.Empty(sheet.Result.MissingSigns);
    }

    [Fact]
    public void A_sign_that_no_font_has_is_reported_once_with_its_first_page()
    {
        using var sheet = ReadBack.Of(Sheets.Named("Kestrel \U0001F6FB \U0001F6FB"));

        Assert.Equal([new MissingSign("\U0001F6FB", "U+1F6FB", 1)], sheet.Result.MissingSigns);
    }

    [Fact]
    public void Control_signs_and_marks_that_turn_the_reading_direction_are_gone()
    {
        using var sheet = ReadBack.Of(Sheets.Named("Ke\u0007st\u202Er\u200Bel\u2066 pi\u00ADck\u0000up\uFEFF"));

        Assert.Contains("Kestrel pickup", sheet.Text, StringComparison.Ordinal);
        Assert.Empty(sheet.Result.MissingSigns);
    }

    [Fact]
    public void Half_a_sign_is_replaced_and_the_rest_is_kept()
    {
        using var sheet = ReadBack.Of(Sheets.Named("Kestrel \uD83D pickup"));

        Assert.Contains("Kestrel \uFFFD pickup", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrapped_line_keeps_the_space_it_was_broken_at()
    {
        var sentence = string.Join(' ', Enumerable.Range(1, 60).Select(i => $"word{i}"));
        using var sheet = ReadBack.Of(Sheets.Empty with { OpenPoints = [sentence] });

        var letters = string.Concat(sheet.Pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value));

        Assert.Contains(sentence, letters, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_that_do_not_fit_side_by_side_make_a_second_table()
    {
        var heads = Enumerable.Range(0, 25).Select(i => $"col{i}").ToList();
        var row = Enumerable.Range(0, 25).Select(i => $"val{i}").ToList();
        using var sheet = ReadBack.Of(Sheets.Empty with { Speeds = new SpeedsTable(heads, [row]) });

        Assert.All(heads.Concat(row), text => Assert.Contains(text, sheet.Text, StringComparison.Ordinal));
    }
}
