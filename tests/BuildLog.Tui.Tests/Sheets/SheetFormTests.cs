using System.IO.Compression;
using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>Writing the sheet from the workbench.</summary>
public sealed class SheetFormTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-sheet-form-").FullName;
    private readonly string record = DemoShop.CreateFreshCopy();

    private string Target => Path.Combine(folder, "tansy.pdf");

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_only_when_the_answer_is_yes()
    {
        File.WriteAllText(Target, "last year's sheet");

        var (kept, _) = Saved(new Host(confirms: false));
        Assert.IsType<RefusedEntry>(kept);
        Assert.Equal("last year's sheet", File.ReadAllText(Target));

        var (replaced, said) = Saved(new Host(confirms: true));
        Assert.Equal(SaveOutcome.Done, replaced);
        Assert.StartsWith($"Wrote {Target}", said, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", File.ReadAllText(Target), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_first_shows_its_pages_and_writes_nothing_unless_told_to()
    {
        var host = new Host(confirms: false);

        var (outcome, said) = Saved(host, ("read", "yes"), ("reader", "Inspector"));

        Assert.Equal(SaveOutcome.Done, outcome);
        Assert.Equal("Nothing was written.", said);
        Assert.Contains(host.Told, line => line.Contains("page 1 of", StringComparison.Ordinal));
        Assert.Contains("Propshafts", host.Told);
        Assert.False(File.Exists(Target));
    }

    [Fact]
    public void A_zip_holds_all_that_goes_with_the_vehicle()
    {
        var zip = Path.Combine(folder, "tansy.zip");

        var (outcome, said) = Saved(new Host(confirms: false), ("file", zip));

        Assert.Equal(SaveOutcome.Done, outcome);
        Assert.StartsWith($"Wrote {zip}", said, StringComparison.Ordinal);
        using var archive = ZipFile.OpenRead(zip);
        Assert.Superset(new HashSet<string> { "handover/build-sheet.pdf", "handover/receipts.csv" }, archive.Entries.Select(entry => entry.FullName).ToHashSet());
    }

    [Fact]
    public void What_would_work_is_on_it_and_options_beside_each_other_where_they_are_asked_for()
    {
        var host = new Host(confirms: false);
        Saved(host, ("read", "yes"), ("beside", "tyre-up,axle"));

        Assert.Contains("What would work", host.Told);
        Assert.Contains(host.Told, line => line.EndsWith("rolling circumference of the tyres", StringComparison.Ordinal));
        Assert.Contains(host.Told, line => line.Contains("F every wish is met", StringComparison.Ordinal));
        Assert.Contains("Options beside each other", host.Told);
        Assert.Contains(host.Told, line => line.Contains("as it is", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("clutch", "'clutch' is no change")]
    [InlineData("tyre-up,tyre-down,overdrive,axle", "2 to 4 options are compared side by side, not 5.")]
    public void Options_that_there_are_none_of_are_a_sentence(string beside, string sentence)
    {
        var (outcome, _) = Saved(new Host(confirms: false), ("beside", beside));

        Assert.Contains(sentence, Assert.IsType<RefusedEntry>(outcome).Message, StringComparison.Ordinal);
        Assert.False(File.Exists(Target));
    }

    [Fact]
    public void A_day_leaves_out_what_was_before_it()
    {
        var host = new Host(confirms: false);
        Saved(host, ("from", "1 July 2024"), ("read", "yes"));

        Assert.Contains(host.Told, line => line.Contains("Delmere D5", StringComparison.Ordinal));
        Assert.DoesNotContain(host.Told, line => line.Contains("13 Apr 2024", StringComparison.Ordinal));
    }

    private (SaveOutcome Outcome, string Said) Saved(Host host, params (string Id, string Text)[] typed)
    {
        using var shop = ShopFile.Open(record);
        var bench = VehicleOnBench.Read(shop, shop.FindVehicle("Tansy"), new DateOnly(2026, 11, 25));
        var said = "";
        var form = SheetForm.For(shop, bench, UnitSystem.Metric, TimeProvider.System, new(), host, words => said = words);
        var values = form.Entries.ToDictionary(entry => entry.Id, entry => entry.Initial);
        values["file"] = Target;
        foreach (var (id, text) in typed) values[id] = text;
        return (form.Save(new FormValues(values)), said);
    }

    private sealed class Host(bool confirms) : IFormHost
    {
        public IReadOnlyList<string> Told { get; private set; } = [];

        public bool Confirm(Question question) => confirms;

        public void Tell(string title, IReadOnlyList<string> lines) => throw new InvalidOperationException("Nobody expected a text of one width.");

        public void Tell(string title, Func<int, IReadOnlyList<TextLine>> linesAt) => Told = [.. linesAt(78).Select(line => line.Text)];

        public bool TellOrPrint(string title, IReadOnlyList<string> lines, string? help = null) => throw new InvalidOperationException("Nothing is told here.");

        public bool Fill(Form form) => throw new InvalidOperationException($"Nobody expected '{form.Title}'.");

        public string? Choose(string title, IReadOnlyList<ChoiceOption> options, string? at = null, string? help = null) => throw new InvalidOperationException($"Nobody expected '{title}'.");
    }
}
