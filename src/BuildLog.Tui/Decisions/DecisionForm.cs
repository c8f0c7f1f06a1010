using BuildLog.Data.Decisions;
using BuildLog.Data.Notes;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Decisions;

/// <summary>Asks for what was decided, or for a note.</summary>
public static class DecisionForm
{
    public static Form For(Decision decision, DateOnly today, Action<Action<Decision>> save) => new()
    {
        Title = decision.What.Length == 0 ? Spoken("New decision") : Spoken($"Decision: {decision.What}"),
        HelpPage = "Decisions",
        Entries =
        [
            new TextEntry("what", Spoken("Decided"))
            {
                AnswersFor = ["decision"],
                IsRemembered = true,
                RememberedAs = "decision",
                Initial = decision.What,
                Hint = Spoken("such as axle 3.08 instead of 3.55"),
                Check = Forms.Checks.Filled("what", Spoken("Say what was decided, such as axle 3.08 instead of 3.55.")),
            },
            DayEntry.Past("day", Spoken("Date"), today, decision.Date == default ? null : decision.Day) with { AnswersFor = ["day-of-the-decision"] },
            new TextEntry("agreed", Spoken("Agreed by")) { AnswersFor = ["name-of-who-agreed"], IsRemembered = true, Initial = decision.AgreedBy, Hint = Spoken("the owner, where it is his money") },
            new LinesEntry("why", Spoken("Why"), 4) { AnswersFor = ["reason"], Initial = decision.Why },
        ],
        Save = values => Forms.Checks.Try(() => save(edited =>
            (edited.What, edited.Day, edited.AgreedBy, edited.Why) = (values["what"], DayEntry.In(values, "day", today), values["agreed"], values["why"]))),
    };

    public static Form For(Note note, DateOnly today, Action<Action<Note>> save) => new()
    {
        Title = note.Title.Length == 0 ? Spoken("New note") : Spoken($"Note: {note.Title}"),
        HelpPage = "Decisions",
        Entries =
        [
            new TextEntry("title", Spoken("Title")) { AnswersFor = ["title-of-the-note"], IsRemembered = true, RememberedAs = "note", Initial = note.Title, Hint = Spoken("such as pinion seal") },
            DayEntry.Past("day", Spoken("Date"), today, note.Date == default ? null : note.Day),
            new LinesEntry("body", Spoken("Note"), 6) { AnswersFor = ["note"], Initial = note.Body },
        ],
        Save = values => Forms.Checks.Try(() => save(edited => (edited.Title, edited.Day, edited.Body) = (values["title"], DayEntry.In(values, "day", today), values["body"]))),
    };
}
