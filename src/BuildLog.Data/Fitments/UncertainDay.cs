using BuildLog.Data.Days;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>Which fittings leave it open whether they had been made by the end of a day.</summary>
internal static class UncertainDay
{
    /// <summary>A sentence each, from engine to tyres; where one part took another's place the day of both is one.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<Fitment> fitments, DateOnly day)
        => [
            .. fitments.OrderBy(fitment => fitment.Position).ThenBy(fitment => fitment.Start).SelectMany(fitment => Of(fitment, day, isReplaced: fitments.Any(next => next.Position == fitment.Position && next.Start == fitment.End))),
        ];

    private static IEnumerable<string> Of(Fitment fitment, DateOnly day, bool isReplaced)
    {
        if (!(fitment.To <= day) && LeavesOpen(fitment.FromDay, fitment.From, day)) yield return Sentence(fitment, Spoken("fitted"), fitment.FromDay, fitment.From, day);
        if (!isReplaced && fitment is { ToDay: { } off, To: { } to } && LeavesOpen(off, to, day)) yield return Sentence(fitment, Spoken("taken off"), off, to, day);
    }

    // By the end of that day it may have happened, or may not. Before the day it is reckoned from something else speaks against it, unless nothing but its end is known.
    private static bool LeavesOpen(LooseDay when, DateOnly reckoned, DateOnly day) => !when.IsExact && (when.Earliest is null || reckoned <= day) && !(when.Latest <= day);

    private static string Sentence(Fitment fitment, string what, LooseDay when, DateOnly reckoned, DateOnly day)
        => Spoken($"It is not certain of {day.InWords()}: the {fitment.Component} ({fitment.Position.InWords()}) was {what} at a day typed as {Shown.Quoted(when.Text)}; reckoned from {reckoned.InWords()}.");
}
