using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>What a page shows of a command and its answer, in blocks marked "console", is what the command answers today.</summary>
public sealed class ShownCommandsTests
{
    private const string Gap = "…";

    public static TheoryData<string, string> Blocks
    {
        get
        {
            var blocks = new TheoryData<string, string>();
            foreach (var page in Pages.All)
            {
                foreach (var block in Pages.Read(page).Split("```console\n").Skip(1)) blocks.Add(page, block.Split("\n```")[0]);
            }

            return blocks;
        }
    }

    [Theory]
    [MemberData(nameof(Blocks))]
    public void Are_answered_as_shown(string page, string block)
    {
        var lines = block.Split('\n');
        Assert.StartsWith("$ buildlog ", lines[0], StringComparison.Ordinal);
        var said = TypedLine.Run(lines[0][2..], Path.GetTempPath());
        Assert.True(said.ExitCode is ExitCodes.Done or ExitCodes.FailOnMet, $"{page}: {said.Errors}"); // how far a search is, a slow machine says as well

        var answer = said.Output.Split('\n');
        var at = 0;
        for (var i = 1; i < lines.Length; i++)
        {
            if (lines[i] == Gap) continue;
            var found = Array.IndexOf(answer, lines[i], at);
            Assert.True(found >= 0 && (found == at || lines[i - 1] == Gap), $"{page} shows:\n{lines[i]}\nbut {lines[0]} answers:\n{said.Output}");
            at = found + 1;
        }
    }

    [Fact]
    public void Are_there_at_all() => Assert.True(Blocks.Count >= 7);
}
