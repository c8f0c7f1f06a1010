using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class TextColumnsTests
{
    [Fact]
    public void Blocks_stand_side_by_side_each_wrapped_to_its_own_column()
    {
        IReadOnlyList<IReadOnlyList<TextLine>> blocks = [["Heron", "late: paint the axle"], ["Drover"], ["Wren", "idle"]];

        var lines = TextColumns.Of(blocks, 2, 25).Select(line => line.Text.TrimEnd());

        Assert.Equal(["Heron         Drover", "late: paint", "the axle", "", "Wren", "idle"], lines);
    }
}
