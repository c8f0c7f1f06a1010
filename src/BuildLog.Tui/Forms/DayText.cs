using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>Reads a day the way people write it: <c>today</c>, <c>yesterday</c>, <c>2026-05-03</c>, <c>3 May 2026</c>, <c>3 mei</c>.</summary>
/// <remarks>
/// Without its year a day is the nearest one; of what has been done the latest that has been, of what is due the next to come.
/// 03/05/2026 is March to some and May to others: it is refused, never guessed. 31.12.2026 is one day only.
/// </remarks>
public static partial class DayText
{
    private const string Right = "3 May 2026";
    private const int MostYears = 8;

    private static readonly string[] Forms = ["yyyy-M-d", "d MMMM yyyy", "d MMM yyyy", "MMMM d yyyy", "MMM d yyyy", "d. MMMM yyyy", "MMMM d, yyyy"];

    public static Parsed<DateOnly> Read(string text, DateOnly today)
        => Read(text, today, days => days.MinBy(day => Math.Abs(day.DayNumber - today.DayNumber)));

    /// <summary>The same of a day that is due: without its year, the next to come.</summary>
    public static Parsed<DateOnly> ReadDue(string text, DateOnly today)
        => Read(text, today, days => days.First(day => day >= today));

    private static Parsed<DateOnly> Read(string text, DateOnly today, Func<IReadOnlyList<DateOnly>, DateOnly> choose)
    {
        var typed = text.Trim();
        if (Is(typed, new Later("today"))) return today;
        if (Is(typed, new Later("yesterday"))) return today.AddDays(-1);
        if (typed.Length == 0) return new Refusal("day", Spoken("A date is missing."), Right);

        if (InOtherYears(typed, today) is { Count: > 0 } days) return choose(days);
        if (!CalendarDay.TryRead(typed, Forms, out var day))
        {
            if (InNumbers().Match(typed) is { Success: true } numbers && Definite(numbers) is { } definite) return definite;
            if (Beyond(typed) is { } beyond) return beyond;
            if (LooseDayText.Read(typed).Understood(out _)) return new Refusal("day", Spoken($"'{typed}' is no single day; one is needed here, as near as you know it."), Right);
            return typed.Count(c => c is '/' or '.') == 2 && !typed.Any(char.IsLetter) && !LooseDayText.IsNoDay(typed)
                ? new Refusal("day", Spoken($"{Shown.Quoted(typed)} can be read as day-month or month-day: write the month's name, or year-month-day."), Right)
                : new Refusal("day", Spoken($"{Shown.Quoted(typed)} is no date of the calendar."), Right);
        }

        return day.Year is >= 1900 and <= 2200 ? day : new Refusal("day", Spoken($"{Shown.Quoted(typed)} lies outside 1900 to 2200."), Right);
    }

    /// <summary>The same of a day that has been: what was measured, fitted or taken off.</summary>
    public static Parsed<DateOnly> ReadPast(string text, DateOnly today)
        => Read(text, today, days => days.Last(day => day <= today)).Then<DateOnly>(day => day <= today
            ? day
            : new Refusal("day", Spoken($"{InWords(day)} is still to come; this has been done."), "today").In(text));

    /// <summary>The same where nobody may know it to the day: also <c>spring 2024</c> or <c>about 2019</c>.</summary>
    public static Parsed<LooseDay> ReadLoosePast(string text, DateOnly today)
    {
        if (text.Trim().Length == 0 || InNumbers().IsMatch(text.Trim()) || Beyond(text.Trim()) is not null || Read(text, today).Understood(out _)) return ReadPast(text, today).Then<LooseDay>(day => LooseDay.On(day));
        return LooseDayText.Read(text).Then<LooseDay>(day => day.Earliest <= today || day.Earliest is null
            ? day.NotAfter(today)
            : new Refusal("day", Spoken($"{day.InWords} is still to come; this has been done."), "today").In(text));
    }

    // 31.12.2026 can be read in one way only, as there is no month 31.
    private static Parsed<DateOnly>? Definite(Match typed)
    {
        var (first, second, year) = (Number(typed, 1), Number(typed, 2), Number(typed, 3));
        var (day, month) = first > second ? (first, second) : (second, first);
        if (day <= 12 || month is < 1 or > 12) return null;

        return Beyond(typed.Value, day, month, year) is { } beyond ? beyond : new DateOnly(year, month, day);
    }

    // 31 February: the month is there, the day is not.
    private static Refusal? Beyond(string typed)
    {
        if (YearFirst().Match(typed) is { Success: true } iso) return Beyond(typed, Number(iso, 3), Number(iso, 2), Number(iso, 1));
        var match = DayFirst().Match(typed) is { Success: true } first ? first : MonthFirst().Match(typed);
        if (!match.Success) return null;

        var year = match.Groups["year"].Success ? int.Parse(match.Groups["year"].Value, CultureInfo.InvariantCulture) : 0;
        return CalendarDay.TryRead($"1 {match.Groups["month"].Value} 2000", Forms, out var month)
            ? Beyond(typed, int.Parse(match.Groups["day"].Value, CultureInfo.InvariantCulture), month.Month, year)
            : null;
    }

    // In a year that is not named February may have 29 days.
    private static Refusal? Beyond(string typed, int day, int month, int year)
    {
        if (month is < 1 or > 12 || year > 2200) return null;

        var (name, days) = (Language.Spoken.Culture.DateTimeFormat.GetMonthName(month), DateTime.DaysInMonth(year == 0 ? 2000 : year, month));
        return day > days ? new Refusal("day", Spoken($"{Shown.Quoted(typed)}: {name}{(year == 0 ? "" : $" {year}")} has {days} days."), Right) : null;
    }

    // As the hints write it, in the language spoken or in the one of the code.
    private static bool Is(string typed, Later word)
        => typed.Equals(word.Text, StringComparison.OrdinalIgnoreCase) || typed.Equals(word.ToString(), StringComparison.OrdinalIgnoreCase);

    private static int Number(Match match, int group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([0-9]{1,2})[./]([0-9]{1,2})[./]((?:19|20|21)[0-9]{2})$")]
    private static partial Regex InNumbers();

    [GeneratedRegex(@"^((?:19|20|21)[0-9]{2})-([0-9]{1,2})-([0-9]{1,2})$")]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^(?<day>[0-9]{1,2})\.?\s+(?<month>[A-Za-z]+)(\s+(?<year>(?:19|20|21)[0-9]{2}))?$")]
    private static partial Regex DayFirst();

    [GeneratedRegex(@"^(?<month>[A-Za-z]+)\s+(?<day>[0-9]{1,2}),?(\s+(?<year>(?:19|20|21)[0-9]{2}))?$")]
    private static partial Regex MonthFirst();

    // A day without its year, in the years around this one; a leap day may be four or eight years away.
    private static List<DateOnly> InOtherYears(string typed, DateOnly today) =>
    [
        .. Enumerable.Range(today.Year - MostYears, (2 * MostYears) + 1)
            .Select(year => CalendarDay.TryRead(string.Create(CultureInfo.InvariantCulture, $"{typed} {year}"), Forms, out var day) ? day : (DateOnly?)null)
            .OfType<DateOnly>(),
    ];

    /// <summary>What a text that is not the day itself was read as: <c>= 3 May 2026</c>, for the line under its entry.</summary>
    public static string? Echo(Parsed<DateOnly> read, string text)
        => read.Understood(out var day) && InWords(day) is var words && !words.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase) ? $"= {words}" : null;

    /// <summary>The day it is where the clock hangs.</summary>
    public static DateOnly Today(this TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary><c>2026-05-03</c>, for programs and tables.</summary>
    public static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The same of a day that is not known to the day: as typed.</summary>
    public static string Iso(LooseDay day) => day.IsExact ? Iso(day.Earliest!.Value) : day.Text;

    /// <summary>The day of a time, such as when a paper was printed.</summary>
    public static string InWords(DateTimeOffset time) => InWords(DateOnly.FromDateTime(time.DateTime));

    /// <summary><c>3 May 2026</c>.</summary>
    public static string InWords(DateOnly day) => day.ToString("d MMMM yyyy", Language.Spoken.Culture);

    /// <summary><c>12 Oct 2024</c>, for columns.</summary>
    public static string InShort(DateOnly day) => day.ToString("d MMM yyyy", Language.Spoken.Culture);

    /// <summary>The same of a day that is not known to the day: as typed.</summary>
    public static string InShort(LooseDay day) => day.IsExact ? InShort(day.Earliest!.Value) : day.Text;
}
