using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Preview;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Papers;

/// <summary>Hours and money of the demo pickup, which took 3 h 30 min and cost 150.00 and 48.60 euros.</summary>
public sealed class AccountPapersTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-accounts-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Costs_for_a_spreadsheet_are_a_line_a_receipt_the_earliest_first()
    {
        Assert.Equal(0, Said.By("paper", "costs", "Brindle", "--demo", "--out", At("costs.csv")).ExitCode);

        Assert.Equal(
            ["date,what,supplier,receipt,amount,currency", "2024-10-12,yard axle,Tolland yard,,150.00,EUR", "2024-11-15,brake line and unions,,,48.60,EUR"],
            File.ReadAllLines(At("costs.csv")));
    }

    [Fact]
    public void Hours_for_a_spreadsheet_are_numbers_it_can_add()
    {
        Said.By("paper", "time", "Brindle", "--demo", "--out", At("hours.csv"));

        Assert.Equal("2024-11-16,rear brake lines,\"old lines off, new ones bent\",Agnes,3.5", File.ReadAllLines(At("hours.csv"))[1]);
    }

    [Fact]
    public void A_span_leaves_out_what_was_before_and_after_it()
    {
        Said.By("paper", "costs", "Brindle", "--demo", "--from", "2024-11-15", "--to", "2024-11-15", "--out", At("costs.csv"));

        Assert.Equal("2024-11-15,brake line and unions,,,48.60,EUR", Assert.Single(File.ReadAllLines(At("costs.csv")).Skip(1)));
    }

    [Fact]
    public void The_paper_has_the_sum_and_says_its_span()
    {
        var record = DemoShop.CreateFreshCopy();
        try
        {
            using var shop = ShopFile.Open(record);
            var brindle = shop.FindVehicle("Brindle");
            var costs = CostsOfVehicle.Content(brindle, VehicleFolder.Read(shop, brindle), new(new(2024, 10, 1), new(2024, 12, 31)), Paper.A4, DateTimeOffset.UnixEpoch);

            var text = string.Join('\n', PaperWriter.Preview(costs.Sheet).Lines(PreviewSetup.Usual));

            Assert.Contains("198.60 EUR", text, StringComparison.Ordinal);
            Assert.Contains("1 October 2024 to 31 December 2024", text, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
        }
    }

    [Theory]
    [InlineData("--out: 'costs.db' does not end in .pdf or .csv, and an account is a PDF or a CSV.", "--out", "costs.db")]
    [InlineData("--to: 1 March 2024 is before 1 April 2024, where the account begins.", "--out", "costs.csv", "--from", "2024-04-01", "--to", "2024-03-01")]
    public void What_cannot_be_is_refused_and_nothing_is_written(string says, params string[] options)
    {
        var said = Said.By(["paper", "costs", "Brindle", "--demo", .. options.Select(option => option == "costs.csv" ? At(option) : option)]);

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith(says, said.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_spreadsheet_that_is_there_is_kept()
    {
        File.WriteAllText(At("hours.csv"), "mine");

        Assert.Equal(3, Said.By("paper", "time", "Brindle", "--demo", "--out", At("hours.csv")).ExitCode);
        Assert.Equal("mine", File.ReadAllText(At("hours.csv")));
    }

    private string At(string name) => Path.Combine(folder, name);
}
