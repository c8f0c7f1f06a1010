using System.Text.Json;
using System.Text.Json.Nodes;

namespace BuildLog.Tui.Forms;

/// <summary>What was typed and is not in the record: forms left half filled, and words to suggest. A file beside the record keeps both over a crash.</summary>
/// <remarks>
/// It is read and written whole at each change, by way of a second file, so that what lies on the disk is the old or the new one. Two programs on one
/// record see each other's drafts.
/// </remarks>
public sealed class Scratchpad
{
    private const string Drafts = "drafts";
    private const string TypedBefore = "typedBefore";
    private const int MostWords = 40;

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true };

    private readonly string? path;
    private JsonObject inMemory = [];

    /// <param name="path">The file; null keeps everything in memory.</param>
    public Scratchpad(string? path = null) => this.path = path;

    public static Scratchpad Beside(string recordPath) => new(recordPath + ".typed.json");

    /// <summary>Why what is typed would not outlive a crash; null while it would.</summary>
    public string? Trouble { get; private set; }

    /// <summary>What was left half filled.</summary>
    public IReadOnlyList<string> Left => [.. Part(Read(), Drafts).Select(draft => draft.Key)];

    /// <summary>The texts of a form that was left half filled; null where none is.</summary>
    public IReadOnlyDictionary<string, string>? Draft(string name)
        => Part(Read(), Drafts)[name] is JsonObject texts
            ? texts.ToDictionary(text => text.Key, text => text.Value?.ToString() ?? "", StringComparer.Ordinal)
            : null;

    public void KeepDraft(string name, IReadOnlyDictionary<string, string> texts)
        => Change(all => Part(all, Drafts)[name] = new JsonObject(texts.Select(text => KeyValuePair.Create<string, JsonNode?>(text.Key, text.Value))));

    public void DropDraft(string name)
    {
        if (Part(Read(), Drafts).ContainsKey(name)) Change(all => Part(all, Drafts).Remove(name));
    }

    /// <summary>What was saved under such an entry before and begins like this, the latest first.</summary>
    public string? Suggest(string entryId, string beginning)
        => Words(Read(), entryId).FirstOrDefault(word => word.Length > beginning.Length && word.StartsWith(beginning, StringComparison.CurrentCultureIgnoreCase));

    /// <summary>Keeps what was saved, to suggest it another time.</summary>
    public void Remember(IReadOnlyDictionary<string, string> saved)
    {
        var words = saved.Where(text => text.Value.Trim().Length > 1).ToList();
        if (words.Count == 0) return;
        Change(all =>
        {
            foreach (var (entryId, text) in words)
                Part(all, TypedBefore)[entryId] = new JsonArray([.. Words(all, entryId).Prepend(text.Trim()).Distinct(StringComparer.CurrentCultureIgnoreCase).Take(MostWords).Select(word => JsonValue.Create(word))]);
        });
    }

    private static JsonObject Part(JsonObject all, string name)
    {
        if (all[name] is JsonObject part) return part;
        var empty = new JsonObject();
        all[name] = empty;
        return empty;
    }

    private static IEnumerable<string> Words(JsonObject all, string entryId)
        => Part(all, TypedBefore)[entryId] is JsonArray words ? words.Select(word => word?.ToString() ?? "").Where(word => word.Length > 0) : [];

    private void Change(Action<JsonObject> change)
    {
        var all = Read();
        change(all);
        inMemory = all;
        if (path is null) return;
        try
        {
            var fresh = path + ".new";
            using (var file = new FileStream(fresh, OwnersOwn())) JsonSerializer.Serialize(file, all, Readable);
            File.Move(fresh, path, overwrite: true);
            Trouble = null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Trouble = Spoken($"What you type here would not outlive a crash: {path} cannot be written.");
        }
    }

    // What cannot be read is set aside for its owner's eyes, never written over.
    private JsonObject Read()
    {
        if (path is null || Trouble is not null || !File.Exists(path)) return inMemory;
        try
        {
            return JsonNode.Parse(File.ReadAllText(path)) as JsonObject ?? [];
        }
        catch (JsonException)
        {
            File.Move(path, path + ".unreadable", overwrite: true);
            return [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Trouble = Spoken($"What you typed before cannot be offered again: {path} cannot be read.");
            return inMemory;
        }
    }

    private static FileStreamOptions OwnersOwn()
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }
}
