using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Tests.Forms;

/// <summary>A form with every kind of entry, for the tests of forms.</summary>
internal static class VehicleForm
{
    public static Form With(Func<FormValues, SaveOutcome>? save = null, IReadOnlyList<string>? cautions = null) => new()
    {
        Title = "New vehicle",
        Cautions = cautions ?? [],
        Entries =
        [
            new TextEntry("name", "Name")
            {
                Hint = "what you call it",
                Check = values => values.IsEmpty("name") ? "Give it a name." : null,
            },
            new ChoiceEntry("drive", "Driven wheels", [new("rear", "rear"), new("all", "all four")]) { Initial = "rear" },
            new TextEntry("transfer", "Transfer ratio")
            {
                ShownWhen = values => values["drive"] == "all",
                Check = values => values.IsEmpty("transfer") ? "Type the ratio, such as 1.22." : null,
            },
            new TextEntry("roll", "Roll")
            {
                Hint = "one turn of the wheel, such as 2040 mm",
                Check = values => values.IsEmpty("roll") || values["roll"].EndsWith("mm", StringComparison.Ordinal) ? null : "“" + values["roll"] + "” is not a length; type it like 2040 mm.",
                Echo = values => values["roll"] == "2040 mm" ? "= 2.04 m = 80.3 in" : null,
            },
            new LinesEntry("notes", "Notes", 2),
        ],
        Echo = values => values.IsEmpty("name") ? [] : [$"Will be called {values["name"]}."],
        Save = save ?? (_ => SaveOutcome.Done),
    };
}
