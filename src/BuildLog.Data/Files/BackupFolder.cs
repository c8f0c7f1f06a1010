using System.Globalization;

namespace BuildLog.Data.Files;

/// <summary>The copies that the program makes by itself: the folder <c>backups</c> beside the record, and their names in it.</summary>
/// <remarks>
/// <c>shop.2026-05-03.db</c> is a day's copy. Those of before a change, <c>shop.before-migration.20260503T081500000Z.db</c>, are never deleted here.
/// </remarks>
internal sealed class BackupFolder(string recordPath)
{
    public const int Days = 7;
    public const int Weeks = 8;

    private const string DayFormat = "yyyy-MM-dd";
    private static readonly TimeSpan LongestCopying = TimeSpan.FromDays(1);

    private readonly string folder = Path.Combine(Path.GetDirectoryName(recordPath)!, "backups");
    private readonly string stem = Path.GetExtension(recordPath) == ".db" ? Path.GetFileNameWithoutExtension(recordPath) : Path.GetFileName(recordPath);

    public string OfDay(DateOnly day) => Path.Combine(folder, $"{stem}.{day.ToString("O", CultureInfo.InvariantCulture)}.db");

    /// <summary>A name that no other copy has.</summary>
    /// <param name="what">Before what the copy is made, such as "migration".</param>
    public string Before(string what)
    {
        OwnerOnly.CreateFolder(folder);
        return Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{stem}.before-{what}.{DateTime.UtcNow:yyyyMMdd'T'HHmmssfff'Z'}.db"));
    }

    public void Make() => OwnerOnly.CreateFolder(folder);

    /// <summary>Deletes the days' copies that are not <see cref="Kept"/>, and what a killed program left half made.</summary>
    public void Rotate()
    {
        var days = Directory.EnumerateFiles(folder).Select(DayOf).OfType<DateOnly>().ToList();
        foreach (var day in days.Except(Kept(days))) File.Delete(OfDay(day));

        foreach (var left in Directory.EnumerateFiles(folder, $"{stem}.*{CheckedCopy.Unfinished}"))
        {
            if (DateTime.UtcNow - File.GetLastWriteTimeUtc(left) > LongestCopying) File.Delete(left);
        }
    }

    /// <summary>The seven newest days and, of those before, the last day of each of the eight newest weeks.</summary>
    internal static IReadOnlyList<DateOnly> Kept(IEnumerable<DateOnly> days)
    {
        var newestFirst = days.OrderDescending().ToList();
        var weeks = newestFirst.Skip(Days).GroupBy(MondayOf).Take(Weeks).Select(week => week.First());
        return [.. newestFirst.Take(Days), .. weeks];
    }

    private static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));

    private DateOnly? DayOf(string path)
    {
        var name = Path.GetFileName(path);
        var isOurs = name.Length == stem.Length + DayFormat.Length + 4 && name.StartsWith(stem + ".", StringComparison.Ordinal) && name.EndsWith(".db", StringComparison.Ordinal);
        return isOurs && DateOnly.TryParseExact(name.AsSpan(stem.Length + 1, DayFormat.Length), DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
    }
}
