using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>The printed readings, given to the measuring commands, make the printed results; and those make the printed speeds.</summary>
public sealed partial class MeasurementsOnTheSheetTests
{
    [Theory]
    [InlineData("Brindle", 2)]
    [InlineData("Haldor", 3)]
    [InlineData("Ottery", 3)]
    [InlineData("Quillon", 2)]
    [InlineData("Tansy", 2)]
    public void Each_result_is_what_its_printed_readings_give(string vehicle, int measurements)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var evidence = Evidence().Matches(sheet).ToList();

        Assert.Equal(measurements, evidence.Count);
        Assert.All(evidence, entry =>
        {
            var printed = PrintedSheet.Unrounded(entry.Groups["value"].Value, entry.Groups["half"].Value);
            Assert.InRange(Measured(entry, sheet), printed.Low, printed.High);
            Assert.Equal(int.Parse(entry.Groups["n"].Value, CultureInfo.InvariantCulture), Readings(entry).Count);
        });
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Ottery")]
    [InlineData("Quillon")]
    [InlineData("Tansy")]
    public void Each_speed_follows_from_the_printed_measurements(string vehicle)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var (axle, circumference) = (AxleRatio(sheet), Circumference(sheet));
        var columns = Regex.Match(sheet, @"Gear ratio ((?:\d+ )+)drops to").Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var gears = Gear().Matches(sheet).ToList();

        Assert.NotEmpty(gears);
        Assert.All(gears, gear =>
        {
            var cells = gear.Groups["cells"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(columns.Length, cells.Length);
            Assert.All(columns.Zip(cells), cell =>
            {
                var printed = PrintedSheet.Unrounded(cell.Second);
                Assert.InRange(Speed(cell.First, gear.Groups["ratio"].Value, axle, circumference), printed.Low, printed.High);
            });
        });
        var perThousand = PrintedSheet.Number(sheet, @"([\d.]+) ± ([\d.]+) km/h · Road speed per 1000 rev/min in top");
        Assert.InRange(Speed("1000", gears[^1].Groups["ratio"].Value, axle, circumference), perThousand.Low, perThousand.High);
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Ottery")]
    [InlineData("Quillon")]
    [InlineData("Tansy")]
    public void An_upshift_drops_the_engine_by_the_step_between_the_printed_gears(string vehicle)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var shift = double.Parse(Regex.Match(sheet, @"after an upshift at (\d+) rev/min").Groups[1].Value, CultureInfo.InvariantCulture);
        var gears = Gear().Matches(sheet).Select(gear => (Ratio: double.Parse(gear.Groups["ratio"].Value, CultureInfo.InvariantCulture), Drop: gear.Groups["drop"].Value)).ToList();

        Assert.All(gears.Zip(gears.Skip(1)), pair =>
        {
            // A gear that is not known well drops to a number of tens.
            var printed = PrintedSheet.Unrounded(pair.First.Drop, pair.First.Drop.EndsWith('0') ? "10" : "1");
            Assert.InRange(shift * pair.Second.Ratio / pair.First.Ratio, printed.Low, printed.High);
        });
        Assert.Equal("–", gears[^1].Drop);
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Haldor")]
    [InlineData("Tansy")]
    public void A_tyre_carries_and_stands_what_its_marking_means(string vehicle)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var rows = Regex.Matches(sheet, @"Tyre: (?<size>.+?) Wheel: .+? Tyres may carry: (?<load>\d+) kg Tyres good to: \w+: (?<speed>\d+) km/h").ToList();

        Assert.NotEmpty(rows);
        Assert.All(rows, row =>
        {
            var tyre = Said.By("tyre", row.Groups["size"].Value, "--json");
            Assert.Equal(tyre.Number("loadCapacityKg") * 2, double.Parse(row.Groups["load"].Value, CultureInfo.InvariantCulture));
            Assert.Equal(tyre.Number("speedLimitKmh"), double.Parse(row.Groups["speed"].Value, CultureInfo.InvariantCulture));
        });
    }

    private static double Measured(Match entry, string sheet)
    {
        string[] Each(string option) => [.. Readings(entry).SelectMany(reading => new[] { option, reading })];
        var conditions = entry.Groups["conditions"].Value;
        return entry.Groups["how"].Value switch
        {
            "turn count" => Said.By(["axle", .. Each("--turns"), "--wheels", conditions.StartsWith("one wheel held", StringComparison.Ordinal) ? "one-held" : "together", "--json"]).Number("ratio"),
            "gear count" => Said.By(["gearbox", .. Each("--turns"), "--json"]).Number("ratio"),
            _ => Said.By([
                "rollout", .. Each("--roll"), "--loaded", conditions.StartsWith("carrying", StringComparison.Ordinal) ? "yes" : "no",
                "--construction", BiasSize().IsMatch(sheet) ? "bias" : "radial", "--json",
            ]).Number("rollingCircumferenceM"),
        };
    }

    private static IReadOnlyList<string> Readings(Match entry) => [.. NextReading().Split(entry.Groups["readings"].Value).Select(reading => reading.Trim())];

    // The newest measurement stands first; teeth are better than any.
    private static double AxleRatio(string sheet)
        => Regex.Match(sheet, @"teeth counted: (\d+/\d+)") is { Success: true } teeth
            ? Said.By("axle", "--teeth", teeth.Groups[1].Value, "--json").Number("ratio")
            : Measured(Evidence().Matches(sheet).First(entry => entry.Groups["how"].Value == "turn count"), sheet);

    private static double Circumference(string sheet) => Measured(Evidence().Matches(sheet).First(entry => entry.Groups["how"].Value == "roll-out"), sheet);

    private static double Speed(string rpm, string gear, double axle, double circumference)
        => Said.By("speed", "--rpm", rpm, "--gear", gear, "--axle", axle.ToString("R", CultureInfo.InvariantCulture), "--circumference", FormattableString.Invariant($"{circumference:R} m"), "--json").Number("speedKmh");

    [GeneratedRegex(@"How: (?<how>turn count|gear count|roll-out) \([^)]+\) Conditions: (?<conditions>.+?) Readings: (?<readings>.+?) n: (?<n>\d+) Result: (?<value>[\d.]+)(?: ± (?<half>[\d.]+))?")]
    private static partial Regex Evidence();

    [GeneratedRegex(@" (?=\d+:)")]
    private static partial Regex NextReading();

    [GeneratedRegex(@"\d+/\d+-\d\d")]
    private static partial Regex BiasSize();

    // A gear's name, its ratio, the speeds, and what the engine drops to.
    [GeneratedRegex(@"(?<= )(?<gear>\d(?:\+OD)?) (?<ratio>\d\.\d\d) (?<cells>(?:\d+(?:\.\d)? ){4})(?<drop>\d+|–)(?= )")]
    private static partial Regex Gear();
}
