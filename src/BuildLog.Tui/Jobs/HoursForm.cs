using BuildLog.Data.Jobs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Asks for a line of the time sheet.</summary>
public static class HoursForm
{
    public static Form For(Job job, DateOnly today, Action<Action<WorkEntry>> save) => new()
    {
        Title = Spoken($"Hours: {job.Title}"),
        HelpPage = "Jobs",
        Entries =
        [
            new TextEntry("hours", Spoken("Worked"))
            {
                Hint = Spoken("such as 2:30, 2.5 or 45 min"),
                Check = Forms.Checks.Needed("hours", WorkTime.Read),
                Echo = values => WorkTime.Read(values["hours"]).Understood(out var minutes) ? $"= {WorkTime.InWords(minutes)}" : null,
            },
            DayEntry.Past("day", Spoken("Date"), today) with { AnswersFor = ["day-of-the-work"] },
            new TextEntry("what", Spoken("What")) { AnswersFor = ["work"], IsRemembered = true, RememberedAs = "work", Hint = Spoken("one line") },
            new TextEntry("who", Spoken("Who")) { AnswersFor = ["name-of-who-worked"], IsRemembered = true, Hint = Spoken("empty: you") },
        ],
        Save = values => Forms.Checks.Try(() => save(work =>
            (work.Hours, work.Day, work.What, work.Who) = (values["hours"], DayEntry.In(values, "day", today), values["what"], values["who"]))),
    };
}
