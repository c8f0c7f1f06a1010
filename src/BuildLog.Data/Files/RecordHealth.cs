using BuildLog.Data.Attachments;

namespace BuildLog.Data.Files;

/// <summary>What the examination of a record found.</summary>
/// <param name="File">The record.</param>
/// <param name="IsCurrent">Whether it has today's schema; an older one is brought up to date when it is opened.</param>
/// <param name="Damage">What SQLite says of broken pages, indexes and rules, in its words.</param>
/// <param name="BrokenReferences">Rows that refer to something that is not there.</param>
/// <param name="MissingTriggers">Names of guards that the file should have.</param>
/// <param name="LooseTables">Names of tables that would store text for a number.</param>
/// <param name="Attachments">The files beside it.</param>
public sealed record RecordHealth(
    string File,
    bool IsCurrent,
    IReadOnlyList<string> Damage,
    IReadOnlyList<string> BrokenReferences,
    IReadOnlyList<string> MissingTriggers,
    IReadOnlyList<string> LooseTables,
    AttachmentsChecked Attachments)
{
    /// <summary>What the attached files are called, by their hash.</summary>
    public IReadOnlyDictionary<string, string> FileNames { get; init; } = new Dictionary<string, string>();

    public bool IsSound => Damage.Count == 0 && BrokenReferences.Count == 0 && MissingTriggers.Count == 0 && LooseTables.Count == 0 && Attachments.IsSound;

    /// <summary>A sentence for each thing found; none for a sound record.</summary>
    public IEnumerable<string> Troubles()
    {
        if (Damage.Count > 0) yield return Spoken($"The file is damaged: {Some(Damage)}. {FileTroubles.TakeABackup}");
        if (BrokenReferences.Count > 0) yield return Spoken($"Entries refer to others that are gone: {Some(BrokenReferences)}. {FileTroubles.TakeABackup}");
        if (MissingTriggers.Count > 0) yield return Spoken($"Guards of the file are missing: {Some(MissingTriggers)}. Copy the record with buildlog backup and restore that copy: they are then made anew.");
        if (LooseTables.Count > 0) yield return Spoken($"Tables take any value for a number, so this program did not make them: {Some(LooseTables)}. {FileTroubles.TakeABackup}");
        if (Attachments.Missing.Count > 0) yield return Spoken($"Attachments are missing: {Some(Named(Attachments.Missing))}. Restore a copy that was made with buildlog backup, or attach them again.");
        if (Attachments.Altered.Count > 0) yield return Spoken($"Attachments are no longer what was attached: {Some(Named(Attachments.Altered))}. Restore a copy that was made with buildlog backup, or attach them again.");
    }

    private IReadOnlyList<string> Named(IReadOnlyList<string> hashes) => [.. hashes.Select(sha256 => $"{FileNames.GetValueOrDefault(sha256, "a file")} ({sha256[..12]}…)")];

    private static string Some(IReadOnlyList<string> things)
    {
        const int most = 5;
        var more = things.Count > most ? Spoken($" and {things.Count - most} more") : "";
        return string.Join("; ", things.Take(most)) + more;
    }
}
