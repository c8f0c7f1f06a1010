using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Languages;

/// <summary>Commands on a machine that speaks Dutch.</summary>
public sealed partial class CommandsInDutchTests
{
    [GeneratedRegex("\"elapsedMs\":[0-9.]+")]
    private static partial Regex Elapsed();

    [Theory]
    [InlineData("axle", "As voor")]
    [InlineData("gearbox", "Bak voor")]
    [InlineData("tyres", "Banden voor")]
    public void A_card_is_asked_for_by_the_same_word(string part, string heading)
    {
        var said = Said.InDutch("card", "Brindle", "--for", part, "--demo");

        Assert.Equal((0, ""), (said.ExitCode, said.Errors));
        Assert.Contains(heading, said.Output, StringComparison.OrdinalIgnoreCase);
        Assert.All(said.Output.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 40, line));
    }

    [Fact]
    public void What_was_undone_is_said_in_Dutch_and_its_field_stays()
    {
        Assert.StartsWith("Ongedaan gemaakt: ", Said.InDutch("undo", "--demo").Output, StringComparison.Ordinal);
        Assert.True(Said.InDutch("undo", "--demo", "--json").Json.TryGetProperty("undid", out _));
    }

    [Fact]
    public void A_session_is_asked_for_by_the_word_that_is_listed()
    {
        var file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.pdf");
        var listed = Said.InDutch("paper", "session", "Brindle", "--date", "2024-10-26", "--method", "?", "--demo", "--out", file).Errors;
        Assert.Contains("turn count", listed, StringComparison.Ordinal);

        Assert.Equal(0, Said.InDutch("paper", "session", "Brindle", "--date", "2024-10-26", "--method", "telling", "--demo", "--out", file).ExitCode);
        File.Delete(file);
    }

    [Fact]
    public void What_was_found_is_named_in_Dutch_and_without_bare_numbers()
    {
        var said = Said.InDutch("find", "whines", "--demo").Output;

        Assert.Contains("12 oktober 2024", said, StringComparison.Ordinal);
        Assert.DoesNotContain("October", said, StringComparison.Ordinal);
        Assert.DoesNotContain("64 105", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_out_of_a_speed_is_asked_for_in_Dutch()
        => Assert.Contains("de band (--circumference, --diameter of --tyre)", Said.InDutch("speed", "--rpm", "2300").Errors, StringComparison.Ordinal);

    // Each is a sentence of the library for command lines, which knows no Dutch.
    [Theory]
    [InlineData("findings", "Brindle", "Tansy", "--demo")]
    [InlineData("findings", "--demo")]
    [InlineData("findings", "Brindle", "--on")]
    [InlineData("findings", "Brindle", "--on", "2024-06-01", "--on", "2024-06-02")]
    [InlineData("card", "Brindle", "--fro", "axle")]
    [InlineData("paper")]
    [InlineData("@nowhere.txt")]
    public void A_wrong_line_is_refused_in_Dutch(params string[] line)
    {
        var (english, dutch) = (Said.By(line), Said.InDutch(line));

        Assert.Equal(2, dutch.ExitCode);
        Assert.NotEqual(english.Errors.Split('\n')[0], dutch.Errors.Split('\n')[0]);
        Assert.DoesNotMatch("[Aa]rgument missing|Unrecognized|is required|was not|not found|expects", dutch.Errors);
    }

    [Theory]
    [InlineData]
    [InlineData("findings")]
    [InlineData("paper")]
    public void Help_has_Dutch_headings(params string[] command)
    {
        var (english, dutch) = (Said.By([.. command, "--help"]).Output, Said.InDutch([.. command, "--help"]).Output);

        Assert.Contains("Usage:", english, StringComparison.Ordinal);
        Assert.Contains("Show help and usage information", english, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?m)^(Description|Usage|Arguments|Options|Commands|Examples):", dutch);
        Assert.DoesNotContain("Show ", dutch, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_has_the_gears_of_the_gearbox()
        => Assert.Contains("versn. 3,32, 2,05", Regex.Replace(Said.InDutch("sheet", "Tansy", "--demo", "--preview").Output, @"\s+", " "), StringComparison.Ordinal);

    [Theory]
    [InlineData("axle", "--turns", "10:23.7", "--wheels", "one-held")]
    [InlineData("tyre", "205/65R15 94H")]
    [InlineData("speed", "--rpm", "3000", "--gear", "1", "--axle", "3.0", "--circumference", "2.19m")]
    [InlineData("findings", "Brindle", "--demo")]
    [InlineData("options", "Brindle", "--demo")]
    [InlineData("card", "Tansy", "--for", "tyres", "--demo")]
    [InlineData("history", "Brindle", "--demo")]
    [InlineData("parts", "--demo")]
    [InlineData("find", "axle", "--demo")]
    public void What_programs_read_is_the_same_in_both_languages(params string[] command)
    {
        var (english, dutch) = (Said.By([.. command, "--json"]), Said.InDutch([.. command, "--json", "--language", "nl"]));

        Assert.Equal(Elapsed().Replace(english.Output, ""), Elapsed().Replace(dutch.Output, ""));
        Assert.NotEqual(Said.By(command).Output, Said.InDutch(command).Output);
    }
}
