using System.Globalization;

namespace BuildLog.Gearing.Languages;

/// <summary>How numbers and days are written, fixed here so that every machine writes them alike, whatever its operating system thinks or lacks.</summary>
internal static class Cultures
{
    /// <summary>Decimal comma, thousands with points, days first.</summary>
    public static CultureInfo Dutch { get; } = MakeDutch();

    private static CultureInfo MakeDutch()
    {
        string[] months = ["januari", "februari", "maart", "april", "mei", "juni", "juli", "augustus", "september", "oktober", "november", "december", ""];
        string[] shortMonths = ["jan", "feb", "mrt", "apr", "mei", "jun", "jul", "aug", "sep", "okt", "nov", "dec", ""];

        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = culture.NumberFormat.PercentDecimalSeparator = culture.NumberFormat.CurrencyDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = culture.NumberFormat.PercentGroupSeparator = culture.NumberFormat.CurrencyGroupSeparator = ".";
        culture.DateTimeFormat.MonthNames = culture.DateTimeFormat.MonthGenitiveNames = months;
        culture.DateTimeFormat.AbbreviatedMonthNames = culture.DateTimeFormat.AbbreviatedMonthGenitiveNames = shortMonths;
        culture.DateTimeFormat.DayNames = ["zondag", "maandag", "dinsdag", "woensdag", "donderdag", "vrijdag", "zaterdag"];
        culture.DateTimeFormat.AbbreviatedDayNames = ["zo", "ma", "di", "wo", "do", "vr", "za"];
        culture.DateTimeFormat.ShortDatePattern = "dd-MM-yyyy";
        culture.DateTimeFormat.LongDatePattern = "d MMMM yyyy";
        return CultureInfo.ReadOnly(culture);
    }
}
