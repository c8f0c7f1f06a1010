using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Asks for a job: what is to be done, by when, and what it waits for.</summary>
public static class JobForm
{
    private const string Nothing = "";

    /// <param name="job">A new job, or one to be changed.</param>
    /// <param name="wanted">The parts hunted for the vehicle.</param>
    /// <param name="today">Today.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    public static Form For(Job job, IReadOnlyList<WantedPart> wanted, DateOnly today, Action<Action<Job>> save) => new()
    {
        Title = job.Title.Length == 0 ? Spoken("New job") : Spoken($"Job: {job.Title}"),
        HelpPage = "Jobs",
        Entries =
        [
            new TextEntry("title", Spoken("To be done"))
            {
                AnswersFor = ["title-of-the-job"],
                IsRemembered = true,
                RememberedAs = "job",
                Initial = job.Title,
                Hint = Spoken("such as Rebuild the brake cylinders"),
                Check = Forms.Checks.Filled("title", Spoken("A job needs a title, such as Rebuild the brake cylinders.")),
            },
            new ChoiceEntry("state", Spoken("State"), [.. Enum.GetValues<JobState>().Select(state => new ChoiceOption(state.ToString(), state.InWords()))]) { Initial = job.State.ToString() },
            OptionalDay.Due("due", Spoken("Due"), job.Due, today),
            new YesNoEntry("handover", Spoken("Before handover")) { IsYes = job.BeforeHandover, Hint = Spoken("yes: no handover while it is open") },
            new TextEntry("blocked", Spoken("Waits for")) { AnswersFor = ["reason-for-waiting"], IsRemembered = true, Initial = job.BlockedBy, Hint = Spoken("such as machine shop; empty for nothing") },
            new ChoiceEntry("part", Spoken("Or for a part"), [new(Nothing, Spoken("none")), .. wanted.Where(part => part.State == WantedState.Hunting || part.Id == job.WaitsForId).Select(part => new ChoiceOption(IdOf(part.Id), part.Title))])
            {
                AnswersFor = ["wanted-part"],
                Initial = job.WaitsForId is { } id ? IdOf(id) : Nothing,
            },
            new LinesEntry("description", Spoken("Description"), 3) { AnswersFor = ["description-of-the-job"], Initial = job.Description },
        ],
        Save = values => Forms.Checks.Try(() => save(edited =>
        {
            edited.Title = values["title"];
            edited.State = Enum.Parse<JobState>(values["state"]);
            edited.Due = OptionalDay.DueOf(values, "due", today);
            edited.BeforeHandover = values.IsYes("handover");
            edited.BlockedBy = values["blocked"];
            edited.WaitsForId = wanted.FirstOrDefault(part => IdOf(part.Id) == values["part"])?.Id;
            edited.Description = values["description"];
        })),
    };

    private static string IdOf(long id) => FormattableString.Invariant($"{id}");
}
