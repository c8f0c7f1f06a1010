using BuildLog.Tui.Reference;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Tests.Docs;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>What is written from the commands says what they are, and each has a line that works.</summary>
public sealed class CommandReferenceTests
{
    public static TheoryData<string> Commands => [.. ProgramAsRead.Entry().All.Select(command => command.Name)];

    [Fact]
    public void The_page_is_in_step()
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        ExamplesInOrder.Run(said => fields.TryAdd(said.Command, JsonFields.Of(said.Said.Json)), "--json");
        Pages.AreInStep("docs/commands.md", CommandPages.Write(ProgramAsRead.Entry(), command => fields.GetValueOrDefault(command.Name, "")));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_command_has_an_example_and_everything_is_described(string name)
    {
        var command = ProgramAsRead.Entry().All.Single(each => each.Name == name);

        Assert.NotEmpty(CommandExamples.Of(name));
        Assert.EndsWith(".", command.Description.Replace("man -l -", ".", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(command.Options, option => Assert.NotEmpty(option.Description));
        Assert.All(command.Values, value => Assert.NotEmpty(value.Description));
    }

    [Fact]
    public void No_example_is_of_a_command_that_is_gone() => Assert.Empty(CommandExamples.Commands.Except(ProgramAsRead.Entry().All.Select(command => command.Name)));

    [Fact]
    public void Every_example_works() => ExamplesInOrder.Run(said =>
    {
        Assert.True(said.Said.ExitCode == 0, $"{said.Line}\n{said.Said.Errors}");
        Assert.NotEmpty(said.Said.Output);
    });

    [Theory]
    [InlineData("buildlog --demo", "--help")]
    [InlineData("buildlog axle --teeth 41/10", "axle", "--help")]
    [InlineData("buildlog paper session Brindle --out count.pdf --demo", "paper", "session", "--help")]
    public void Help_ends_with_the_examples(string example, params string[] arguments)
    {
        var said = Said.By(arguments);

        Assert.Equal(0, said.ExitCode);
        Assert.Contains($"  {example}{Environment.NewLine}", said.Output[said.Output.IndexOf("Examples:", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_line_names_the_help_of_its_own_command()
        => Assert.Contains("Example: buildlog paper session --help", Said.By("paper", "session").Errors, StringComparison.Ordinal);

    [Fact]
    public void The_man_page_has_every_command_and_every_option_with_hyphens_that_can_be_copied()
    {
        var page = Said.By("man").Output;
        foreach (var command in ProgramAsRead.Entry().All.Skip(1))
        {
            Assert.Contains($".SS {command.Name.Replace("-", @"\-", StringComparison.Ordinal)}\n", page, StringComparison.Ordinal);
            Assert.All(command.Options, option => Assert.Contains($@"\fB{option.Name.Replace("-", @"\-", StringComparison.Ordinal)}\fR", page, StringComparison.Ordinal));
        }
    }
}
