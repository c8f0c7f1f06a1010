using System.Globalization;
using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Days;

public sealed class ADayHalfRemembered
{
    [Theory]
    [InlineData("3 May 2026", "2026-05-03", "2026-05-03")]
    [InlineData("2026-05-03", "2026-05-03", "2026-05-03")]
    [InlineData("May 3, 2026", "2026-05-03", "2026-05-03")]
    [InlineData("May 2023", "2023-05-01", "2023-05-31")]
    [InlineData("2024-02", "2024-02-01", "2024-02-29")]
    [InlineData("2019", "2019-01-01", "2019-12-31")]
    [InlineData("1980s", "1980-01-01", "1989-12-31")]
    [InlineData("spring 2024", "2024-03-01", "2024-05-31")]
    [InlineData("Fall 2024", "2024-09-01", "2024-11-30")]
    [InlineData("winter 2023/24", "2023-12-01", "2024-02-29")]
    [InlineData("winter 2024", "2023-12-01", "2025-02-28")]
    [InlineData("late 2019", "2019-09-01", "2019-12-31")]
    [InlineData("about 3 May 2026", "2026-04-26", "2026-05-10")]
    [InlineData("about 2019", "2018-01-01", "2020-12-30")]
    [InlineData("before May 2023", null, "2023-04-30")]
    [InlineData("until May 2023", null, "2023-05-31")]
    [InlineData("after 2019", "2020-01-01", null)]
    [InlineData("since spring 2020", "2020-03-01", null)]
    [InlineData("2019-2021", "2019-01-01", "2021-12-31")]
    [InlineData("between May 2023 and June 2024", "2023-05-01", "2024-06-30")]
    [InlineData("3 May 2023 to 2024", "2023-05-03", "2024-12-31")]
    [InlineData("unknown", null, null)]
    [InlineData("voorjaar 2024", "2024-03-01", "2024-05-31")]
    [InlineData("Lente 2024", "2024-03-01", "2024-05-31")]
    [InlineData("zomer 2024", "2024-06-01", "2024-08-31")]
    [InlineData("najaar 2024", "2024-09-01", "2024-11-30")]
    [InlineData("herfst 2024", "2024-09-01", "2024-11-30")]
    [InlineData("begin 2024", "2024-01-01", "2024-04-30")]
    [InlineData("medio 2024", "2024-05-01", "2024-08-31")]
    [InlineData("eind 2019", "2019-09-01", "2019-12-31")]
    [InlineData("mei 2023", "2023-05-01", "2023-05-31")]
    [InlineData("omstreeks 2019", "2018-01-01", "2020-12-30")]
    [InlineData("voor mei 2023", null, "2023-04-30")]
    [InlineData("tot mei 2023", null, "2023-05-31")]
    [InlineData("na 2019", "2020-01-01", null)]
    [InlineData("sinds voorjaar 2020", "2020-03-01", null)]
    [InlineData("tussen mei 2023 en juni 2024", "2023-05-01", "2024-06-30")]
    [InlineData("onbekend", null, null)]
    public void Is_kept_as_typed_between_its_bounds(string typed, string? earliest, string? latest)
    {
        var day = LooseDay.Read($" {typed} ")!;
        Assert.Equal((typed, earliest, latest), (day.Text, day.Earliest?.ToString("O", CultureInfo.InvariantCulture), day.Latest?.ToString("O", CultureInfo.InvariantCulture)));
    }

    [Theory]
    [InlineData("03/05/2026", "'03/05/2026' can be read as day-month or month-day: write the month's name, or year-month-day.")]
    [InlineData("32/12/2026", "'32/12/2026' is no day of the calendar.")]
    [InlineData("13.13.26", "'13.13.26' is no day of the calendar.")]
    [InlineData("the day Piet fell off the ladder", "'the day Piet fell off the ladder' is no day, month, season or year that can be placed.")]
    [InlineData("30 February 2024", "'30 February 2024' is no day, month, season or year that can be placed.")]
    [InlineData("winter 2023/25", "'winter 2023/25' is no day, month, season or year that can be placed.")]
    [InlineData("2021 to 2019", "'2021 to 2019' ends before it begins.")]
    [InlineData("1066", "'1066' lies outside 1900 to 2200.")]
    [InlineData("before 1066", "'before 1066' lies outside 1900 to 2200.")]
    [InlineData("9999-12", "'9999-12' lies outside 1900 to 2200.")]
    [InlineData("about December 9999", "'about December 9999' lies outside 1900 to 2200.")]
    [InlineData("after 9999-12-31", "'after 9999-12-31' lies outside 1900 to 2200.")]
    [InlineData("before 1 January 0001", "'before 1 January 0001' lies outside 1900 to 2200.")]
    [InlineData("~1 January 0001", "'~1 January 0001' lies outside 1900 to 2200.")]
    public void Is_refused_where_it_cannot_be_placed(string typed, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusedException>(() => LooseDay.Read(typed)).Message);

    // Of a swap on 1 May: March to May may be either, April is before it, June after it; of 1 March all of spring is after it.
    [Theory]
    [InlineData("spring 2024", "2024-05-01", true)]
    [InlineData("spring 2024", "2024-05-31", true)]
    [InlineData("spring 2024", "2024-03-01", false)]
    [InlineData("spring 2024", "2024-06-01", false)]
    [InlineData("April 2024", "2024-05-01", false)]
    [InlineData("1 May 2024", "2024-05-01", false)]
    [InlineData("before May 2024", "1990-01-01", true)]
    [InlineData("since May 2024", "2024-05-01", false)]
    [InlineData("since May 2024", "2024-05-02", true)]
    public void Says_on_which_side_of_a_swap_it_was_where_it_can(string typed, string swap, bool isOpen)
        => Assert.Equal(isOpen, LooseDay.Read(typed)!.Straddles(DateOnly.Parse(swap, CultureInfo.InvariantCulture)));

    [Theory]
    [InlineData("spring 2024", true)]
    [InlineData("1 March 2024", true)]
    [InlineData("2024", false)]
    [InlineData("since 2024", false)]
    public void Lies_within_two_days_whatever_day_it_was(string typed, bool isWithin)
        => Assert.Equal(isWithin, LooseDay.Read(typed)!.LiesWithin(new(2024, 3, 1), new(2024, 5, 31)));

    [Fact]
    public void Ends_no_later_than_the_day_it_was_told_on()
    {
        var told = new DateOnly(2026, 5, 20);
        Assert.Equal(("2026", new DateOnly(2026, 1, 1), told), (LooseDay.Read("2026")!.NotAfter(told).Text, LooseDay.Read("2026")!.NotAfter(told).Earliest, LooseDay.Read("2026")!.NotAfter(told).Latest));
        Assert.Equal(told, LooseDay.Read("since 2019")!.NotAfter(told).Latest);
        Assert.Equal(new DateOnly(2024, 5, 31), LooseDay.Read("spring 2024")!.NotAfter(told).Latest);
        Assert.Null(LooseDay.Read("unknown")!.NotAfter(told).Latest);
    }

    [Fact]
    public void Is_no_day_where_nothing_was_typed() => Assert.Null(LooseDay.Read("  "));
}
