using BuildLog.Data.Attachments;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Papers;

public sealed class PapersActsTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly AnsweringView view = new(WorkbenchModel.EmptyShop);
    private readonly List<string> opened = [];
    private readonly PapersActs acts;

    public PapersActsTests()
    {
        acts = new(small.Shop, path =>
        {
            opened.Add(path);
            return null;
        });
        File.WriteAllText(PathOf("balance.txt"), "residual 4 g");
    }

    private long Bittern => small.Bittern.Id;

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_file_is_kept_opened_as_a_copy_and_saved_elsewhere()
    {
        Assert.NotNull(acts.Attach(view.Type(("file", PathOf("balance.txt")), ("caption", "the balancer's report"), ("taken", "May 2026")), Bittern));
        File.Delete(PathOf("balance.txt"));
        var paper = Assert.Single(acts.Read(Bittern).Rows);

        Assert.Equal(("balance.txt", "the balancer's report", "text/plain", "12 bytes", "May 2026"), (paper.FileName, paper.Caption, paper.Kind, paper.Size, paper.Taken));
        acts.Open(Bittern, paper);
        Assert.Equal("residual 4 g", File.ReadAllText(Assert.Single(opened)));
        Assert.NotNull(acts.SaveCopy(view.Type(("to", PathOf("copy.txt"))), Bittern, paper));
        Assert.Equal("residual 4 g", File.ReadAllText(PathOf("copy.txt")));
        Directory.Delete(Path.GetDirectoryName(opened[0])!, recursive: true);
    }

    [Fact]
    public void One_that_is_altered_or_missing_says_so_and_is_not_opened()
    {
        acts.Attach(view.Type(("file", PathOf("balance.txt"))), Bittern);
        var file = Directory.EnumerateFiles(AttachmentStore.Beside(small.Shop.Path).Folder, "*", SearchOption.AllDirectories).Single();

        Assert.Null(Assert.Single(acts.Read(Bittern).Rows).Trouble);
        File.WriteAllText(file, "residual 40 g");
        var paper = Assert.Single(acts.Read(Bittern).Rows);
        Assert.Contains("no longer what was put in", paper.Trouble, StringComparison.Ordinal);
        Assert.Contains("no longer what was put in", acts.Open(Bittern, paper), StringComparison.Ordinal);
        Assert.Empty(opened);

        File.Delete(file);
        Assert.Contains("missing", Assert.Single(acts.Read(Bittern).Rows).Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_there_is_refused_beside_its_field()
    {
        Assert.Null(acts.Attach(view.Type(("file", PathOf("none.jpg"))), Bittern));
        Assert.StartsWith("There is no file", Assert.Single(view.Refused), StringComparison.Ordinal);
    }

    private string PathOf(string name) => Path.Combine(small.Folder, name);
}
