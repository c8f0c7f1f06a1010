namespace BuildLog.Sheet.Tests.Reading;

/// <summary>A program of the machine, where it is installed.</summary>
internal static class Tool
{
    public static string? Path(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
            .Select(folder => System.IO.Path.Combine(folder, name))
            .FirstOrDefault(File.Exists);
}
