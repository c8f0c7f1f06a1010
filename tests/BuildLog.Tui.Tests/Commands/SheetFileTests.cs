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

    [Theory]
    [InlineData("there.pdf", "sheet", "Brindle")]
    [InlineData("there.pdf", "card", "Brindle")]
    [InlineData("there.pdf", "paper", "order", "Ottery")]
    [InlineData("there.pdf", "paper", "labels")]
    [InlineData("there.csv", "paper", "time", "Brindle")]
    [InlineData("there.csv", "csv", "costs")]
    [InlineData("there.zip", "handover", "Tansy")]
    public void A_file_that_is_there_stays_and_the_option_that_replaces_it_is_named(string name, params string[] command)
    {
        var file = Path.Combine(folder, name);
        File.WriteAllText(file, "mine");

        var said = Said.By([.. command, "--demo", "--out", file]);

        Assert.Equal(3, said.ExitCode);
        Assert.Contains("--overwrite", said.Errors, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));
    }
}
