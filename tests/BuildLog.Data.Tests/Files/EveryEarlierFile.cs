using System.Text.RegularExpressions;
using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>The demo shop as every earlier schema held it, opened by today's program. A dump that is put beside them is among them.</summary>
public sealed partial class EveryEarlierFile
{
    public static TheoryData<string> Dumps => [.. Steps.Select(step => step + ".sql")];

    /// <summary>Those since there is a log of changes.</summary>
    public static TheoryData<string> Logged => [.. Steps.SkipWhile(step => step != "ChangesAndSearch").Select(step => step + ".sql")];

    private static IEnumerable<string> Steps => KnownMigrations.Ids.SkipLast(1).Select(id => id.Split('_')[1]);

    // The rows that the text of the dump puts in, table by table; those of the program's own book-keeping are not counted.
    [Theory]
    [MemberData(nameof(Dumps))]
    public void Loses_no_row_and_keeps_its_rules(string dump)
    {
        using var earlier = new EarlierShop(dump);
        var rows = PutIn().Matches(earlier.Text).CountBy(row => row.Groups["table"].Value).Where(table => !table.Key.StartsWith("sqlite_", StringComparison.Ordinal) && table.Key is not ("__EFMigrationsHistory" or "FindableText")).ToList();

        Assert.Contains(new("Vehicles", 6), rows);
        earlier.AssertIsOfToday([.. rows.Select(table => (table.Key, (long)table.Value))]);
        earlier.AssertSoundButForItsFiles();
    }

    [Theory]
    [MemberData(nameof(Logged))]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date(string dump)
    {
        using var earlier = new EarlierShop(dump);
        var latest = Done().Matches(earlier.Text).Last().Groups["title"].Value;

        Assert.Equal(latest, earlier.Shop.Undo());
        Assert.Equal(latest, earlier.Shop.Redo());
        earlier.AssertSoundButForItsFiles();
    }

    [GeneratedRegex("""^INSERT INTO "?(?<table>\w+)"? """, RegexOptions.Multiline)]
    private static partial Regex PutIn();

    // Sets of changes are dumped in their order.
    [GeneratedRegex("""^INSERT INTO ChangeSets VALUES\(\d+,'(?<title>[^']+)',""", RegexOptions.Multiline)]
    private static partial Regex Done();
}
