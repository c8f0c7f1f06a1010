using System.Globalization;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>docs/examples.md: the sums come out, and the program comes to the same.</summary>
public sealed class WorkedExamplesTests
{
    private const string Page = "docs/examples.md";

    public static TheoryData<string> Sums => [.. Pages.Lines(Page).Where(line => line.StartsWith("    ", StringComparison.Ordinal) && line.Contains(" = ", StringComparison.Ordinal) && Sum.IsOne(line.Split(" = ")[0]))];

    [Theory]
    [MemberData(nameof(Sums))]
    public void A_sum_comes_out_to_its_last_digit(string line)
    {
        var printed = Result(line);
        var decimals = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        Assert.Equal(double.Parse(printed, CultureInfo.InvariantCulture), Sum.Of(line.Split(" = ")[0]), tolerance: 0.5001 * Math.Pow(10, -decimals));
    }

    [Fact]
    public void There_are_sums() => Assert.True(Sums.Count >= 20);

    [Theory]
    [InlineData("131.4 km/h", "speedKmh", 1, "speed --rpm 3000 --gear 1 --axle 3.0 --circumference 2.19m")]
    [InlineData("1000 rev/min", "wheelRpm", 1, "speed --rpm 3000 --gear 1 --axle 3.0 --circumference 2.19m")]
    [InlineData("3.029", "axleRatio", 1, "speed --rpm 2300 --speed \"110 km/h\" --gear 0.82 --circumference 1.98m")]
    [InlineData("4.74", "ratio", 1, "axle --turns 10:23.7 --wheels one-held")]
    [InlineData("0.01544", "standardUncertainty", 1, "axle --turns 10:23.7 --wheels one-held")]
    [InlineData("0.00772", "standardUncertainty", 1, "axle --turns 20:47.5 --wheels one-held")]
    [InlineData("2041.5 mm", "circumferenceM", 1000, "rollout --roll 1:2040mm --roll 3:6125mm --loaded no")]
    [InlineData("3.74 mm", "standardUncertaintyM", 1000, "rollout --roll 1:2040mm --roll 3:6125mm --loaded no")]
    [InlineData("1982.3 mm", "rollingCircumferenceM", 1000, "rollout --roll 1:2040mm --roll 3:6125mm --loaded no")]
    [InlineData("20.74 mm", "rollingStandardUncertaintyM", 1000, "rollout --roll 1:2040mm --roll 3:6125mm --loaded no")]
    public void The_program_comes_to_the_same(string onThePage, string field, double scale, string command)
    {
        Assert.Contains(Pages.Lines(Page), line => line.EndsWith(" = " + onThePage, StringComparison.Ordinal));
        var byHand = double.Parse(onThePage.Split(' ')[0], CultureInfo.InvariantCulture);

        var said = Said.By([.. TypedLine.Words("buildlog " + command), "--json"]);

        // Four digits by hand, from rounded steps: within two of the last.
        Assert.Equal(1, said.Number(field) * scale / byHand, tolerance: 1.5e-3);
    }

    [Theory]
    [InlineData("Ottery", "propshaft-speed", "82 %", 0.5)]
    [InlineData("Tansy", "speedometer", "0.971", 0.0005)]
    public void The_demo_shop_s_findings_come_to_the_same(string vehicle, string check, string onThePage, double tolerance)
    {
        Assert.Contains(Pages.Lines(Page), line => line.EndsWith(" = " + onThePage, StringComparison.Ordinal));
        var finding = Said.By("findings", vehicle, "--demo", "--json").Json.GetProperty("findings").EnumerateArray().Single(each => each.GetProperty("check").GetString() == check);

        Assert.Equal(double.Parse(onThePage.Split(' ')[0], CultureInfo.InvariantCulture), finding.GetProperty("value").GetDouble(), tolerance);
    }

    private static string Result(string line) => line.Split(" = ")[1].Split(' ')[0];
}
