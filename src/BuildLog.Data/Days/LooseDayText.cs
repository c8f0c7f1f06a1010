using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Days;

/// <summary>Reads a day as far as people remember it, and says between which days it lies; its words as its months in any language that is spoken here.</summary>
/// <remarks>Seasons are those of the northern half of the world. 03/05/2026 is March to some and May to others: it is refused, never guessed.</remarks>
public static partial class LooseDayText
{
    private const int LongestText = 60;
    private const int Earliest = 1900;
    private const int Latest = 2200;
    private const string Right = "spring 2024";

    public static Parsed<LooseDay> Read(string text)
    {
        var typed = text.Trim();
        if (typed.Length is 0 or > LongestText || typed.Any(char.IsControl)) return new Refusal("day", Spoken("A day, month, season or year is expected here."), Right).In(text);

        var read = Whole(Spaces().Replace(typed, " ").Replace('–', '-').ToUpperInvariant());
        if (read is not { } span)
        {
            return IsNoDay(typed) ? new Refusal("day", Spoken($"{Shown.Quoted(typed)} is no day of the calendar."), "3 May 2026")
                : Slashes().IsMatch(typed) ? new Refusal("day", Spoken($"{Shown.Quoted(typed)} can be read as day-month or month-day: write the month's name, or year-month-day."), "3 May 2026")
                : new Refusal("day", Spoken($"{Shown.Quoted(typed)} is no day, month, season or year that can be placed."), Right);
        }

        if (span.IsOutside) return new Refusal("day", Spoken($"{Shown.Quoted(typed)} lies outside {Earliest} to {Latest}."), Right);
        return span.From > span.To
            ? new Refusal("day", Spoken($"{Shown.Quoted(typed)} ends before it begins."), "May 2023 to June 2024")
            : new LooseDay(typed, span.From, span.To);
    }

    /// <summary>Whether two numbers before a year are no day and month, whichever of them comes first: <c>32/12/2026</c>.</summary>
    public static bool IsNoDay(string typed)
    {
        static bool Are(int day, int month) => day is >= 1 and <= 31 && month is >= 1 and <= 12;
        return Slashes().Match(typed) is { Success: true } match
            && (Number(match.Groups["first"].Value), Number(match.Groups["second"].Value)) is var (first, second) && !Are(first, second) && !Are(second, first);
    }

    private static Span? Whole(string text)
    {
        if (text is "UNKNOWN" or "ONBEKEND" or "?") return new(null, null);
        if (Qualified().Match(text) is { Success: true } loose && Whole(loose.Groups["what"].Value) is { } known)
            return known.IsOutside ? known : Loosened(loose.Groups["how"].Value, known);
        if (Between().Match(text) is { Success: true } between && Plain(between.Groups["from"].Value) is { } from && Plain(between.Groups["to"].Value) is { } to)
            return new(from.From, to.To);
        return Plain(text);
    }

    private static Span? Loosened(string how, Span what) => how switch
    {
        "BEFORE" or "VOOR" or "VÓÓR" => new(null, what.From?.AddDays(-1)),
        "UNTIL" or "BY" or "TOT" or "UITERLIJK" => new(null, what.To),
        "AFTER" or "NA" => new(what.To?.AddDays(1), null),
        "SINCE" or "FROM" or "SINDS" or "VANAF" => new(what.From, null),
        _ => what.Widened(),
    };

    private static Span? Plain(string text)
    {
        if (CalendarDay.TryRead(text, Days, out var day)) return new(day, day);
        if (CalendarDay.TryRead("1 " + text, ["d MMMM yyyy", "d MMM yyyy"], out var month)) return Span.Months(month, 1);
        if (DateOnly.TryParseExact(text + "-1", "yyyy-M-d", CultureInfo.InvariantCulture, DateTimeStyles.None, out month)) return Span.Months(month, 1);
        if (Decade().IsMatch(text)) return Span.Months(new(Number(text[..4]), 1, 1), 120);
        if (Year().Match(text) is not { Success: true } match) return null;

        var year = Number(match.Groups["year"].Value);
        return (match.Groups["part"].Value, match.Groups["next"].Success) switch
        {
            ("", false) => Span.Months(new(year, 1, 1), 12),
            ("EARLY" or "BEGIN", false) => Span.Months(new(year, 1, 1), 4),
            ("MID" or "MEDIO" or "HALF", false) => Span.Months(new(year, 5, 1), 4),
            ("LATE" or "EIND", false) => Span.Months(new(year, 9, 1), 4),
            ("SPRING" or "VOORJAAR" or "LENTE", false) => Span.Months(new(year, 3, 1), 3),
            ("SUMMER" or "ZOMER", false) => Span.Months(new(year, 6, 1), 3),
            ("AUTUMN" or "FALL" or "NAJAAR" or "HERFST", false) => Span.Months(new(year, 9, 1), 3),

            // The winter that ends in it or the one that begins in it.
            ("WINTER", false) => Span.Months(new(year - 1, 12, 1), 15),
            ("WINTER", true) when Number(match.Groups["next"].Value) % 100 == (year + 1) % 100 => Span.Months(new(year, 12, 1), 3),
            _ => null,
        };
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    private static readonly string[] Days = ["yyyy-M-d", "d MMMM yyyy", "d MMM yyyy", "d. MMMM yyyy", "MMMM d yyyy", "MMM d yyyy", "MMMM d, yyyy", "MMM d, yyyy"];

    private readonly record struct Span(DateOnly? From, DateOnly? To)
    {
        /// <summary>Not to be counted with: the calendar itself ends somewhere. Before 1900 ends in 1899, after 2200 begins in 2201.</summary>
        public bool IsOutside => From?.Year is < Earliest or > Latest + 1 || To?.Year is > Latest or < Earliest - 1;

        public static Span Months(DateOnly first, int months) => first.Year is < Earliest or > Latest ? new(first, first) : new(first, first.AddMonths(months).AddDays(-1));

        /// <summary>About a day is within a week of it; about anything longer, within its own length.</summary>
        public Span Widened()
        {
            var by = From is { } from && To is { } to ? Math.Max(7, to.DayNumber - from.DayNumber + 1) : 0;
            return new(From?.AddDays(-by), To?.AddDays(by));
        }
    }

    [GeneratedRegex(@"^(?<how>BEFORE|UNTIL|BY|AFTER|SINCE|FROM|ABOUT|AROUND|VOOR|VÓÓR|TOT|UITERLIJK|NA|SINDS|VANAF|ONGEVEER|OMSTREEKS|ROND|CIRCA|CA\.?|C\.|~) ?(?<what>.+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Qualified();

    [GeneratedRegex(@"^(?:(?:BETWEEN|TUSSEN) )?(?<from>.+?) ?(?:-(?=.{4,}$)| TO | AND | TOT | EN ) ?(?<to>.+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Between();

    [GeneratedRegex(@"^(?:(?<part>EARLY|BEGIN|MID|MEDIO|HALF|LATE|EIND|SPRING|VOORJAAR|LENTE|SUMMER|ZOMER|AUTUMN|FALL|NAJAAR|HERFST|WINTER)[ -])?(?<year>[12][0-9]{3})(?:/(?<next>[0-9]{2}|[0-9]{4}))?$", RegexOptions.CultureInvariant)]
    private static partial Regex Year();

    [GeneratedRegex(@"^[12][0-9]{2}0'?S$", RegexOptions.CultureInvariant)]
    private static partial Regex Decade();

    [GeneratedRegex(@"^(?<first>[0-9]{1,2})[/.](?<second>[0-9]{1,2})[/.][0-9]{2,4}$", RegexOptions.CultureInvariant)]
    private static partial Regex Slashes();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();
}
