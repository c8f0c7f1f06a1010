namespace BuildLog.Data.Changes;

/// <summary>What happened to a row of a table.</summary>
internal enum RowOp
{
    Insert,
    Update,
    Delete,
}

/// <summary>One row of one table, before and after.</summary>
internal sealed class ChangeRow
{
    public long Id { get; private set; }

    public long ChangeSetId { get; private set; }

    public required string TableName { get; init; }

    public required long RowId { get; init; }

    /// <summary>The record the row is, or is part of.</summary>
    public required Guid RecordUid { get; init; }

    /// <summary>The vehicle the record speaks of.</summary>
    public long? VehicleId { get; init; }

    public required RowOp Op { get; init; }

    /// <summary>Column by column <c>{"Name":["Brindel","Brindle"]}</c>, exactly as they are stored: see <see cref="RowDiff"/>.</summary>
    public required string Diff { get; init; }

    /// <summary>What stayed of an amount of which one half changed, by column; filled by <see cref="AmountColumns"/> where the log is read.</summary>
    public Dictionary<string, object?> Stayed { get; } = [];

    /// <summary>What turns it round.</summary>
    public ChangeRow Inverse(string diff) => new()
    {
        TableName = TableName,
        RowId = RowId,
        RecordUid = RecordUid,
        VehicleId = VehicleId,
        Op = Op switch { RowOp.Insert => RowOp.Delete, RowOp.Delete => RowOp.Insert, _ => RowOp.Update },
        Diff = diff,
    };
}
