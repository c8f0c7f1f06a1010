using BuildLog.Data.Attachments;
using BuildLog.Data.Days;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>Asks for a file to keep, for its caption, or where to write a copy of it.</summary>
public static class PaperForm
{
    public static Form New(string vehicle, Action<string, string, LooseDay?> keep) => new()
    {
        Title = Spoken($"Keep a file with {vehicle}"),
        HelpPage = "Papers",
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new TextEntry("file", Spoken("File")) { Hint = Spoken("its path, such as ~/photos/pinion-before.jpg"), Check = values => Unreadable(values["file"]) },
            .. Words("", ""),
        ],
        Save = values => Reached(() => keep(TypedPath.Full(values["file"]), values["caption"], LooseDay.Read(values["taken"]))),
    };

    public static Form For(Attachment paper, Action<Action<Attachment>> save) => new()
    {
        Title = paper.FileName,
        HelpPage = "Papers",
        Entries = [.. Words(paper.Caption, paper.Taken?.Text ?? "")],
        Save = values => Forms.Checks.Try(() => save(edited => Apply(values, edited))),
    };

    public static Form Copy(string fileName, Func<string, SaveOutcome> write) => new()
    {
        Title = Spoken($"Save a copy of {fileName}"),
        HelpPage = "Papers",
        Entries = [new TextEntry("to", Spoken("Copy to")) { Initial = fileName, Hint = Spoken("a new file"), Check = values => Taken(values["to"]) }],
        Save = values =>
        {
            var outcome = SaveOutcome.Done;
            var reached = Reached(() => outcome = write(TypedPath.Full(values["to"])));
            return outcome is Saved ? reached : outcome;
        },
    };

    private static IEnumerable<Entry> Words(string caption, string taken) =>
    [
        new TextEntry("caption", Spoken("Caption")) { Initial = caption, Hint = Spoken("what it shows") },
        new TextEntry("taken", Spoken("Taken")) { Initial = taken, Hint = Spoken("3 May 2026, spring 2024, about 2019"), Check = Forms.Checks.IfTyped("taken", LooseDayText.Read) },
    ];

    private static void Apply(FormValues values, Attachment paper) => (paper.Caption, paper.Taken) = (values["caption"], LooseDay.Read(values["taken"]));

    private static string? Unreadable(string path) =>
        path.Length == 0 ? Spoken("Which file? Type its path, such as ~/photos/pinion-before.jpg.")
        : TypedPath.Read(path, "pinion-before.jpg").Refusal is { } refusal ? refusal.Sentence
        : File.Exists(TypedPath.Full(path)) ? null
        : Spoken($"There is no file {path}.");

    private static string? Taken(string path) =>
        path.Length == 0 ? Spoken("Where to? Type a path, such as ~/copy.jpg.")
        : TypedPath.Read(path, "copy.jpg").Refusal is { } refusal ? refusal.Sentence
        : File.Exists(TypedPath.Full(path)) ? Spoken($"{path} is there already: choose another name.")
        : null;

    private static SaveOutcome Reached(Action act)
    {
        try
        {
            return Forms.Checks.Try(act);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return SaveOutcome.Refuse(Spoken($"That cannot be read or written ({trouble.Message.TrimEnd('.')})."));
        }
    }
}
