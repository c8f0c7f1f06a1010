using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class WorkbenchWordsTests
{
    private static readonly DrivelineBox Tyres = new("tyres", "tyres", "205/65R15", "2.04 m", "0.03", "rolled");

    [Theory]
    [InlineData(0, 0, 0, 0, "not checked")]
    [InlineData(0, 0, 0, 1, "1 fits")]
    [InlineData(0, 0, 0, 4, "all fit")]
    [InlineData(2, 1, 0, 4, "2 clash 1 open")]
    [InlineData(0, 0, 1, 4, "1 watch")]
    public void Counts_are_said_in_words_worst_first(int clash, int open, int watch, int fits, string said) =>
        Assert.Equal(said, new VerdictCounts(clash, open, watch, fits).Summary());

    [Fact]
    public void Counts_without_room_lose_the_milder_ones_whole() =>
        Assert.Equal("1 clash 1 open …", new VerdictCounts(1, 1, 1).Summary(16));

    [Theory]
    [InlineData(20, "2.04 ± 0.03 m")]
    [InlineData(11, "2.04±0.03 m")]
    [InlineData(10, "2.04±0.03m")]
    [InlineData(9, "2.04 m")]
    [InlineData(5, "2.04")]
    public void A_number_gives_up_spaces_then_its_uncertainty_then_its_unit_but_no_digit(int cells, string said) =>
        Assert.Equal(said, BoxText.Number(Tyres, cells));

    // What stands there in ten cells with ± stands there in plain ASCII too, where the sign takes two.
    [Theory]
    [InlineData(11, "2.04+-0.03m")]
    [InlineData(10, "2.04+-.03m")]
    [InlineData(9, "2.04 m")]
    public void In_plain_ascii_the_nought_of_the_uncertainty_makes_room_for_its_sign(int cells, string said) =>
        Assert.Equal(said, BoxText.Number(Tyres, cells, inAscii: true));

    [Fact]
    public void Every_verdict_has_a_word_and_a_sign_of_its_own()
    {
        var verdicts = Enum.GetValues<Verdict>();
        Assert.Equal(verdicts.Length, verdicts.Select(verdict => verdict.InWords()).Distinct().Count());
        Assert.Equal(verdicts.Length, verdicts.Select(verdict => verdict.Sign()).Distinct().Count());
        Assert.All(verdicts, verdict => Assert.Equal(verdict.Tone().ToString(), verdict.InWords(), ignoreCase: true));
    }

    [Fact]
    public void The_chosen_finding_says_its_verdict_as_a_word()
    {
        var lines = FindingText.Of(new FindingRow(Verdict.Clash, "cruise", "Too fast.", "between axle and tyres"), 60);
        Assert.Equal("× clash  cruise  between axle and tyres", lines[0].Text);
    }

    [Fact]
    public void A_swap_is_told_from_old_to_new()
    {
        var row = new HistoryRow("2026-05-02", "axle", "Dale 7", "Hedge 8", "whined", "4020 rev/min", "3670 rev/min");
        Assert.Equal("Dale 7 → Hedge 8", HistoryText.Change(row));
        Assert.Equal("4020 rev/min → 3670 rev/min", HistoryText.Cruise(row));
        Assert.Equal("Dale 7 → nothing", HistoryText.Change(row with { Fitted = null }));
        Assert.Equal("Hedge 8", HistoryText.Change(row with { Removed = null }));
    }

    // The demo shop's estate came to its taller tyres last: its dial tells less since.
    [Fact]
    public void A_swap_tells_what_it_did_to_the_speedometer_where_it_moved_it()
    {
        var path = DemoShop.CreateFreshCopy();
        try
        {
            using var shop = ShopFile.Open(path);
            var tansy = shop.FindVehicle("Tansy");
            var tyres = HistoryWords.Of(shop.History(tansy), shop.GoalsOf(tansy), UnitSystem.Metric, []).Rows.First(row => row.Position == "tyres");

            Assert.Contains(tyres.Moved, moved => moved.StartsWith("the speedometer shows 97", StringComparison.Ordinal) && moved.EndsWith("before", StringComparison.Ordinal));
            Assert.Contains(HistoryText.Of(tyres, []), line => line.Text.StartsWith("Moved    the speedometer shows 97", StringComparison.Ordinal));
            Assert.DoesNotContain(HistoryText.Of(tyres with { Moved = [] }, []), line => line.Text.StartsWith("Moved", StringComparison.Ordinal));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    [Fact]
    public void An_unset_goal_says_how_to_set_one() =>
        Assert.Contains(GoalText.Of(GoalModel.None), line => line.Text.Contains("Press g", StringComparison.Ordinal));

    [Fact]
    public void A_budget_is_shown_by_its_shares()
    {
        var session = new SessionRow(1, "2026-05-03", "turn count", "axle", "4.08 ± 0.02", Budget: [new BudgetShare("reading", 0.75), new BudgetShare("alignment", 0.25)]);
        var lines = SessionText.Of(session).Select(line => line.Text).ToList();
        Assert.Contains($"   75%  {new string('■', 15)}       reading", lines);
        Assert.Contains($"   25%  {new string('■', 5)}                 alignment", lines);
    }
}
