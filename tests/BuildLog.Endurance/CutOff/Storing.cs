using BuildLog.Benchmarks.Record;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;

namespace BuildLog.Endurance.CutOff;

/// <summary>Stores one note after the other. Each that was said to be stored has to be there, with its entry in the log of changes and in the search.</summary>
/// <remarks>By hand it writes what the shop would; the object mapper takes longer to load than a round lasts.</remarks>
internal sealed class Storing(string how) : Work
{
    public const string ByHand = "writing";
    public const string ThroughTheShop = "writing through the shop";

    private const string Halves =
        """
        SELECT count(*) FROM Notes n
        WHERE (SELECT count(*) FROM Changes WHERE RecordUid = n.Uid) <> 1 OR (SELECT count(*) FROM Findables WHERE RecordUid = n.Uid) <> 1
        """;

    private readonly HashSet<string> stored = new(StringComparer.Ordinal);

    public override string Name => how;

    public override int RoundsOfAFolder => 100;

    public override int MostSaid => 30;

    public override void Lay(string folder) => Records.Empty.LayIn(folder);

    public override void Do(string folder, int times, Action<string> say)
    {
        var path = Records.In(folder);
        using var connection = how == ByHand ? Records.Connect(path) : null;
        using var shop = connection is null ? ShopFile.Open(path) : null;
        var about = shop?.FindVehicle(Records.Vehicle);
        for (var k = 0; k < times; k++)
        {
            var title = Guid.CreateVersion7().ToString("N");
            if (connection is not null) new RawRecord(connection).Note(Guid.Empty, title, "weeps a little when warm");
            else shop!.Add(new Note(about!) { Date = new(2026, 5, 3), Title = title, Body = "weeps a little when warm" });
            say(title);
        }
    }

    public override IEnumerable<string> Troubles(string folder, IReadOnlyList<string> said)
    {
        stored.UnionWith(said);
        using var connection = Records.Connect(Records.In(folder));
        var titles = connection.Column("SELECT Title FROM Notes").ToHashSet(StringComparer.Ordinal);
        var lost = stored.Count(title => !titles.Contains(title));
        if (lost > 0) yield return FormattableString.Invariant($"{lost} of {stored.Count} stored notes are lost");
        if (connection.Ask(Halves) is not 0L) yield return "a note is half there";
        foreach (var trouble in RecordCheck.Of(Records.In(folder)).Troubles()) yield return trouble;
    }
}
