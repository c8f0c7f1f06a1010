using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Security;

/// <summary>Whatever a command writes can be read by its owner and by nobody else, whatever the machine's habit for new files is.</summary>
public sealed class WhatIsWrittenTests : IDisposable
{
    private const UnixFileMode Others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-security-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Is_for_its_owner_alone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows keeps a user's data folder to that user.");
        var (record, photo) = (In("shop.db"), In("pinion.jpg"));
        File.WriteAllBytes(photo, [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3]);
        Done("export", In("demo.zip"), "--demo");
        Done("import", In("demo.zip"), "--database", record);
        Done("attach", photo, "--to", "Brindle", "--database", record);
        File.Delete(photo);
        Done("export", In("one.zip"), "--vehicle", "Brindle", "--database", record);
        Done("handover", "Tansy", "--out", In("handover.zip"), "--database", record);
        Done("csv", "parts", "--out", In("parts.csv"), "--database", record);
        Done("sheet", "Brindle", "--out", In("sheet.pdf"), "--database", record);
        Done("paper", "labels", "--out", In("labels.pdf"), "--database", record);
        Done("card", "Brindle", "--out", In("card.pdf"), "--database", record);
        Done("backup", In("copy.db"), "--database", record);
        Done("restore", In("copy.db"), "--database", record);
        Assert.True(new ErrorLog(In(Path.Combine("state", "errors.log"))).Write(new InvalidOperationException("a trace")));

        var written = Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories).ToList();
        foreach (var kind in (string[])[".db", ".zip", ".csv", ".pdf", ".log"]) Assert.Contains(written, path => path.EndsWith(kind, StringComparison.Ordinal));
        Assert.Contains(written, path => path.Contains("shop.files", StringComparison.Ordinal));
        Assert.All(written, path => Assert.Equal(UnixFileMode.None, Mode(path) & Others));
    }

#pragma warning disable CA1416 // The test is skipped where there are no such modes.
    private static UnixFileMode Mode(string path) => File.GetUnixFileMode(path);
#pragma warning restore CA1416

    private static void Done(params string[] arguments)
    {
        var said = Said.By(arguments);
        Assert.True(said.ExitCode == 0, said.Errors);
    }

    private string In(string name) => Path.Combine(folder, name);
}
