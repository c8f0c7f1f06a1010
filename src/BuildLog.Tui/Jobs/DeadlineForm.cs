using BuildLog.Data.Deadlines;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Asks for a day by which something has to be done.</summary>
public static class DeadlineForm
{
    public static Form For(Deadline deadline, DateOnly today, Action<Action<Deadline>> save) => new()
    {
        Title = deadline.What.Length == 0 ? Spoken("New deadline") : Spoken($"Deadline: {deadline.What}"),
        HelpPage = "Jobs",
        Entries =
        [
            new TextEntry("what", Spoken("What"))
            {
                AnswersFor = ["deadline"],
                IsRemembered = true,
                RememberedAs = "deadline",
                Initial = deadline.What,
                Hint = Spoken("such as test station, second look"),
                Check = Forms.Checks.Filled("what", Spoken("Say what has to be done, such as test station, second look.")),
            },
            DayEntry.Due("day", Spoken("Due"), today, deadline.Day == default ? null : deadline.Day) with { AnswersFor = ["day-of-the-deadline"] },
            OptionalDay.Past("done", Spoken("Done on"), deadline.DoneDay, today),
        ],
        Save = values => Forms.Checks.Try(() => save(edited =>
            (edited.What, edited.Day, edited.DoneDay) = (values["what"], DayText.ReadDue(values["day"], today).OrRefuse(), OptionalDay.PastOf(values, "done", today)))),
    };
}
