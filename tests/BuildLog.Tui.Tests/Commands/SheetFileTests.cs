namespace BuildLog.Tui.Tests.Commands;

public sealed class SheetFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-sheet-file-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_sheet_never_takes_the_place_of_a_record()
    {
        var record = Path.Combine(folder, "shop.db");
        Said.By("vehicles", "--database", record);
        var before = File.ReadAllBytes(record);

        var said = Said.By("sheet", "Brindle", "--demo", "--out", record, "--overwrite");

        Assert.Equal(2, said.ExitCode);
        Assert.Contains("does not end in .pdf", said.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(record));
    }
}
