using System.Text.RegularExpressions;

namespace BuildLog.Data.Files;

/// <summary>
/// What SQLite cannot say as a CHECK: two fitments of one part, or in one place, never overlap in time; the log of changes is only added to; the
/// search index follows its table.
/// </summary>
/// <remarks>The program refuses such a fitting first, in a sentence that names the other; this guards the file against everything else.</remarks>
internal static partial class Triggers
{
    /// <summary>Of all that the script makes.</summary>
    public static IReadOnlyList<string> Names => [.. CreatedTrigger().Matches(Script).Select(match => match.Groups[1].Value)];

    public static readonly string Script = string.Join(
        '\n',
        Overlap("Insert", "INSERT"), Overlap("Update", "UPDATE"),
        OnlyAdded("ChangeSets", "UPDATE"), OnlyAdded("ChangeSets", "DELETE"), OnlyAdded("Changes", "UPDATE"), OnlyAdded("Changes", "DELETE"),
        SearchIndex.Script);

    private static string Overlap(string name, string when) =>
        $"""
        DROP TRIGGER IF EXISTS "Fitments_{name}_NoOverlap";
        CREATE TRIGGER "Fitments_{name}_NoOverlap" BEFORE {when} ON "Fitments"
        WHEN EXISTS (
            SELECT 1 FROM "Fitments" AS other
            WHERE other."Id" IS NOT NEW."Id"
              AND (other."ComponentId" = NEW."ComponentId" OR (other."VehicleId" = NEW."VehicleId" AND other."Position" = NEW."Position"))
              AND (NEW."ToDate" IS NULL OR (other."FromDate", other."FromOrder") < (NEW."ToDate", NEW."ToOrder"))
              AND (other."ToDate" IS NULL OR (NEW."FromDate", NEW."FromOrder") < (other."ToDate", other."ToOrder")))
        BEGIN
            SELECT RAISE(ABORT, 'Nothing was changed: the part or its place is taken on these days by another fitment.');
        END;
        """;

    private static string OnlyAdded(string table, string when) =>
        $"""
        DROP TRIGGER IF EXISTS "{table}_{when}_Never";
        CREATE TRIGGER "{table}_{when}_Never" BEFORE {when} ON "{table}"
        BEGIN
            SELECT RAISE(ABORT, 'Nothing was changed: the log of changes is only ever added to.');
        END;
        """;

    [GeneratedRegex("CREATE TRIGGER \"(\\w+)\"")]
    private static partial Regex CreatedTrigger();
}
