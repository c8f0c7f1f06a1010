using BuildLog.Data.Files;
using Microsoft.Data.Sqlite;

namespace BuildLog.Data.Tests.Files;

/// <summary>The demo shop as an earlier schema held it, dumped by that version of the program.</summary>
internal static class EarlierRecord
{
    public static void Make(string dump, string path)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        connection.Run(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Files", dump)));
    }
}
