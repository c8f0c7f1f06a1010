using BuildLog.Data.Fitments;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Days;

/// <summary>The day on which something is reckoned whose day is not known: the earliest it can have been, unless what else is known forces a later one.</summary>
internal static class Reckoning
{
    /// <summary>The earliest day it can have been by its own bounds; an open beginning leaves the latest.</summary>
    /// <exception cref="RefusedException">It is bound on neither side.</exception>
    public static DateOnly Of(LooseDay day)
        => day.Earliest ?? day.Latest ?? throw new RefusedException("date", Spoken($"{Shown.Quoted(day.Text)} leaves the day quite open: give a year, even a rough one."), "about 2019");

    /// <summary>The day to reckon with beside what was typed, which is null where the day is known. The day it was reckoned on before stays if it can.</summary>
    /// <exception cref="RefusedException">It is bound on neither side.</exception>
    public static (DateOnly Day, LooseDay? AsTyped) Reckoned(LooseDay typed, DateOnly? was)
        => typed.IsExact ? (typed.Earliest!.Value, null)
            : was is { } day && day != default && !(day < typed.Earliest) && !(day > typed.Latest) ? (day, typed)
            : (Of(typed), typed);

    /// <summary>The same of what may not have been yet: nothing of nothing.</summary>
    /// <exception cref="RefusedException">It is bound on neither side.</exception>
    public static (DateOnly? Day, LooseDay? AsTyped) ReckonedIfAny(LooseDay? typed, DateOnly? was) => typed is null ? (null, null) : Reckoned(typed, was);

    /// <summary>The first day within the bounds that nothing speaks against.</summary>
    /// <param name="day">As typed.</param>
    /// <param name="changes">The days on which something changed that it may depend on.</param>
    /// <param name="check">Refuses what cannot be on a day.</param>
    /// <exception cref="RefusedException">Something speaks against every day; what speaks against the first is said.</exception>
    public static DateOnly First(LooseDay day, IEnumerable<DateOnly> changes, Action<DateOnly> check)
    {
        var earliest = Of(day);
        RefusedException? first = null;
        foreach (var candidate in changes.Where(change => change > earliest && (day.Latest is null || change <= day.Latest)).Distinct().Order().Prepend(earliest))
        {
            try
            {
                check(candidate);
                return candidate;
            }
            catch (RefusedException refused)
            {
                first ??= refused;
            }
        }

        throw first!;
    }

    /// <summary>Every day on which one of these fitments began or ended.</summary>
    public static IEnumerable<DateOnly> DaysOf(IEnumerable<Fitment> fitments)
        => fitments.SelectMany(fitment => fitment.To is { } to ? (DateOnly[])[fitment.From, to] : [fitment.From]);
}
