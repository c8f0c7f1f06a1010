using Microsoft.EntityFrameworkCore.Metadata;

namespace BuildLog.Data.Moving;

/// <summary>Where an entry lies in the record: its kind's table and its number there.</summary>
internal readonly record struct EntryPlace(IEntityType Root, long Id);
