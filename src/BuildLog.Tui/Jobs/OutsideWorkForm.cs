using BuildLog.Data.Jobs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Asks for work given out of the house, or for its return.</summary>
public static class OutsideWorkForm
{
    /// <param name="job">The job it is part of.</param>
    /// <param name="known">Names of the suppliers known; another one is entered with the work.</param>
    /// <param name="save">Stores it; gets the supplier's name.</param>
    public static Form New(Job job, IReadOnlyList<string> known, DateOnly today, Action<string, Action<OutsideWork>> save) => new()
    {
        Title = Spoken($"Give out: {job.Title}"),
        HelpPage = "Jobs",
        Entries =
        [
            new TextEntry("what", Spoken("Work")) { AnswersFor = ["work-given-out"], IsRemembered = true, RememberedAs = "outside work", Hint = Spoken("such as balance the propshaft"), Check = Forms.Checks.Filled("what", Spoken("Say what they are to do, such as balance the propshaft.")) },
            new TextEntry("to", Spoken("Sent to"))
            {
                IsRemembered = true,
                RememberedAs = "supplier",
                Hint = known.Count > 0 ? Spoken($"such as {known[0]}; a new name is entered") : Spoken("the name of the shop"),
                Check = Forms.Checks.Filled("to", Spoken("Say who gets it, such as Tolland machine shop.")),
            },
            DayEntry.Past("sent", Spoken("Sent"), today) with { AnswersFor = ["day-it-was-sent"] },
            OptionalDay.Due("promised", Spoken("Promised for"), null, today),
        ],
        Save = values => Forms.Checks.Try(() => save(values["to"], work =>
            (work.What, work.SentDay, work.Promised) = (values["what"], DayEntry.In(values, "sent", today), OptionalDay.DueOf(values, "promised", today)))),
    };

    public static Form Back(OutsideWork work, DateOnly today, Action<Action<OutsideWork>> save) => new()
    {
        Title = Spoken($"Back: {work.What}"),
        HelpPage = "Jobs",
        Entries =
        [
            DayEntry.Past("back", Spoken("Came back"), today) with { AnswersFor = ["day-it-came-back"] },
            new TextEntry("certificate", Spoken("Certificate")) { Initial = work.Certificate, Hint = Spoken("its number, or where it lies; empty for none") },
        ],
        Save = values => Forms.Checks.Try(() => save(edited => (edited.BackDay, edited.Certificate) = (DayEntry.In(values, "back", today), values["certificate"]))),
    };
}
