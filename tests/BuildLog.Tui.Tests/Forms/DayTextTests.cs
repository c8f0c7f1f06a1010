using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Tests.Forms;

public sealed class DayTextTests
{
    private static readonly DateOnly Today = new(2026, 5, 20); // a Wednesday

    [Theory]
    [InlineData("3 May", 2026, 5, 3)]
    [InlineData("may 3", 2026, 5, 3)]
    [InlineData("20 May", 2026, 5, 20)]
    [InlineData("21 May", 2025, 5, 21)] // still to come this year: last year's
    [InlineData("24 Dec", 2025, 12, 24)]
    [InlineData("29 Feb", 2024, 2, 29)]
    [InlineData("3 May 2024", 2024, 5, 3)]
    public void What_has_been_done_was_on_the_latest_such_day(string typed, int year, int month, int day)
        => Assert.Equal(new DateOnly(year, month, day), DayText.ReadPast(typed, Today).OrRefuse());

    [Theory]
    [InlineData("3 May", 2027, 5, 3)]
    [InlineData("20 May", 2026, 5, 20)]
    [InlineData("29 February", 2028, 2, 29)]
    [InlineData("3 May 2024", 2024, 5, 3)]
    public void What_is_due_is_due_on_the_next_such_day(string typed, int year, int month, int day)
        => Assert.Equal(new DateOnly(year, month, day), DayText.ReadDue(typed, Today).OrRefuse());

    [Theory]
    [InlineData("24 Dec", 2025)] // 147 days back, 218 ahead
    [InlineData("3 Sep", 2026)]
    public void Else_it_is_the_nearest(string typed, int year) => Assert.Equal(year, DayText.Read(typed, Today).OrRefuse().Year);

    [Theory]
    [InlineData("spring 2024")]
    [InlineData("about 2019")]
    public void Where_a_day_is_needed_a_season_is_refused_with_an_example(string typed)
    {
        var sentence = DayText.ReadPast(typed, Today).Refusal!.Sentence;
        Assert.Contains("no single day", sentence, StringComparison.Ordinal);
        Assert.Contains("3 May 2026", sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("31 April")]
    [InlineData("03/05/2026")]
    [InlineData("soon")]
    public void Nonsense_is_refused(string typed) => Assert.NotNull(DayText.Read(typed, Today).Refusal);

    [Theory]
    [InlineData("31.2.2026", "February 2026 has 28 days")]
    [InlineData("2026-02-29", "February 2026 has 28 days")]
    [InlineData("31 April", "April has 30 days")]
    [InlineData("June 31, 2026", "June 2026 has 30 days")]
    [InlineData("30 February", "February has 29 days")]
    [InlineData("03/05/2026", "day-month or month-day")]
    [InlineData("32/12/2026", "December 2026 has 31 days")]
    [InlineData("13/13/2026", "is no date of the calendar")]
    public void What_is_wrong_with_a_date_is_said(string typed, string sentence)
    {
        Assert.Contains(sentence, DayText.Read(typed, Today).Refusal!.Sentence, StringComparison.Ordinal);
        Assert.Contains(sentence, DayText.ReadLoosePast(typed, Today).Refusal!.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("31.12.2025")]
    [InlineData("12/31/2025")]
    public void Numbers_that_can_mean_one_day_only_are_that_day(string typed)
    {
        Assert.True(DayText.Read(typed, Today).Understood(out var day));
        Assert.Equal(new DateOnly(2025, 12, 31), day);
    }

    [Fact]
    public void Only_what_was_read_into_a_text_is_echoed()
    {
        Assert.Equal("= 3 May 2026", DayText.Echo(DayText.ReadPast("3 May", Today), "3 May"));
        Assert.Equal("= 20 May 2026", DayText.Echo(DayText.ReadPast("today", Today), "today"));
        Assert.Null(DayText.Echo(DayText.ReadPast("3 May 2026", Today), "3 May 2026"));
    }
}
