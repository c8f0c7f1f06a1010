using BuildLog.Data;
using BuildLog.Data.Changes;

namespace BuildLog.Tui.Changes;

/// <summary>Reads the history of changes, and takes one back.</summary>
public sealed class ChangesActs(Shop shop, TimeProvider clock)
{
    private const int Most = 200;

    public ChangesModel Read(long vehicleId)
    {
        var changes = Of(vehicleId);
        var undone = changes.Select(change => change.UndoesId).OfType<long>().ToHashSet();
        return new([.. changes.Select(change => Row(change, undone.Contains(change.Id)))]);
    }

    /// <summary>Takes this change back, however long ago it was.</summary>
    public string TakeBack(long vehicleId, ChangeLine row) => shop.Undo(Of(vehicleId).First(change => change.Id == row.Id));

    private IReadOnlyList<ChangeSet> Of(long vehicleId) => shop.Changes(shop.FindVehicle(vehicleId), most: Most);

    private ChangeLine Row(ChangeSet change, bool isUndone) => new(
        change.Id,
        TimeZoneInfo.ConvertTime(change.When, clock.LocalTimeZone).ToString("d MMM yyyy HH:mm", Language.Spoken.Culture),
        change.Label,
        change.Machine,
        [.. change.Fields.Select(field => new ChangedValue(field.Field, Written(field.Before), Written(field.After))).Where(field => field.Before != field.After)],
        isUndone);

    // A text nobody wrote is stored empty: for a reader there is none.
    private static string? Written(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
