namespace BuildLog.Data.Rows;

/// <summary>Records of one kind by their numbers: each is read once and handed out once, however many name it.</summary>
internal sealed class Known<T>(Func<IReadOnlyCollection<long>, IEnumerable<T>> read)
    where T : Kept
{
    private readonly Dictionary<long, T> known = [];

    public T this[long id] => known.TryGetValue(id, out var record) ? record : throw new FormatException($"There is no {typeof(T).Name} {id}.");

    public bool Holds(long id) => known.ContainsKey(id);

    /// <summary>The one that was named, after <see cref="Load"/>; null where none was.</summary>
    public T? Named(long? id) => id is { } named ? this[named] : null;

    public void Load(IEnumerable<long?> ids)
    {
        var missing = ids.OfType<long>().Where(id => !known.ContainsKey(id)).Distinct().ToList();
        foreach (var record in read(missing)) known.Add(record.Id, record);
    }
}
