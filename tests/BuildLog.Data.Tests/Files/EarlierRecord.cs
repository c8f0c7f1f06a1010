using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Tests.Files;

/// <summary>The demo shop as an earlier schema held it, dumped by that version of the program.</summary>
internal static class EarlierRecord
{
    /// <summary>Asks for the text of a schema. Columns may stand in another order in a table that was widened.</summary>
    public const string Schema =
        """
        SELECT group_concat(m.name || '.' || c.name || ':' || c.type || ':' || c."notnull", ' ' ORDER BY m.name, c.name)
            || (SELECT group_concat(name, ' ' ORDER BY name) FROM sqlite_master WHERE type = 'index' AND name NOT LIKE 'sqlite%')
        FROM sqlite_master m JOIN pragma_table_info(m.name) c WHERE m.type = 'table' AND m.name NOT LIKE '\_\_EF%' ESCAPE '\'
        """;

    /// <returns>The text of the dump.</returns>
    public static string Make(string dump, string path)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Files", dump));
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        connection.Run(text);
        return text;
    }
}
