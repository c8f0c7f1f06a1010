using System.Runtime.CompilerServices;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>The documents of the repository, where the sources lie.</summary>
internal static class Pages
{
    public static string Path(string name) => System.IO.Path.Combine(Root(), name);

    public static string Read(string name) => File.ReadAllText(Path(name));

    public static string[] Lines(string name) => File.ReadAllLines(Path(name));

    /// <summary>Every page that people read: at the top, in docs, in what is handed out and in the program's help.</summary>
    public static IEnumerable<string> All =>
    [
        "README.md", "DEVELOPERS.md",
        .. Below("docs"), .. Below("demo-data"), .. Below("packaging"), .. Below("src/BuildLog.Tui/Help"), .. Below("src/BuildLog.Gearing"), .. Below("src/BuildLog.Sheet"),
    ];

    /// <summary>Holds a page that is written from the program against the one that is kept. <c>BUILDLOG_WRITE_DOCS=1</c> writes it anew.</summary>
    public static void AreInStep(string name, string written)
    {
        if (Environment.GetEnvironmentVariable("BUILDLOG_WRITE_DOCS") is not null) File.WriteAllText(Path(name), written);
        Assert.True(File.Exists(Path(name)), $"There is no {name} yet: BUILDLOG_WRITE_DOCS=1 dotnet test --project tests/BuildLog.Tui.Tests writes it.");
        Assert.Equal(written, Read(name));
    }

    private static IEnumerable<string> Below(string folder)
        => Directory.EnumerateFiles(Path(folder), "*.md", SearchOption.AllDirectories)
            .Select(path => System.IO.Path.GetRelativePath(Root(), path).Replace('\\', '/'))
            .Where(name => !name.Contains("/bin/", StringComparison.Ordinal) && !name.Contains("/obj/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static string Root([CallerFilePath] string here = "")
        => System.IO.Path.GetFullPath(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", "..", ".."));
}
