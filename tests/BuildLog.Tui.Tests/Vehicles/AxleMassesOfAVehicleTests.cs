using BuildLog.Tui.Forms;
using BuildLog.Tui.Vehicles;

namespace BuildLog.Tui.Tests.Vehicles;

public sealed class AxleMassesOfAVehicleTests
{
    // By hand: 10 000 + 900 is 6.6 times 1640; 700 + 850 is what 1450 weighs with a driver; a lorry of 5 t laden to 12 t is 2.4 times itself.
    [Theory]
    [InlineData("1640 kg", "10000 kg", "900 kg", true)]
    [InlineData("1640 kg", "300 kg", "400 kg", true)]
    [InlineData("1450", "700", "850", false)]
    [InlineData("5 t", "4 t", "8 t", false)]
    [InlineData("1640 kg", "10000 kg", "", true)]
    [InlineData("1650.5 kg", "1650.5 kg", "", true)]
    [InlineData("1650.5 kg", "1000 kg", "", false)]
    [InlineData("5 t", "", "8 t", false)]
    [InlineData("5 t", "", "15 t", true)]
    [InlineData("", "700 kg", "850 kg", false)]
    public void Are_refused_where_no_load_would_explain_them(string mass, string front, string rear, bool refused)
        => Assert.Equal(refused, LoadEntries.Contradiction(Typed(mass, front, rear)) is not null);

    // 1100 of 1500 kg are 73 %, 500 of 1500 are 33 %; 1000 of 1640 are 61 %. What is refused is not remarked besides.
    [Theory]
    [InlineData("", "1100 kg", "400 kg", "73 % of it in front is unusual")]
    [InlineData("", "500 kg", "1000 kg", "33 % of it in front is unusual")]
    [InlineData("1500", "1100", "", "73 % of it in front is unusual")]
    [InlineData("1640", "1000", "", null)]
    [InlineData("", "700", "750", null)]
    [InlineData("1640", "1640", "", null)]
    public void An_unusual_share_in_front_is_a_question(string mass, string front, string rear, string? doubt)
    {
        if (doubt is null) Assert.Null(LoadEntries.Doubt(Typed(mass, front, rear)));
        else Assert.StartsWith(doubt, LoadEntries.Doubt(Typed(mass, front, rear)), StringComparison.Ordinal);
    }

    private static FormValues Typed(string mass, string front, string rear) => new(new Dictionary<string, string> { ["Mass"] = mass, ["FrontAxleMass"] = front, ["RearAxleMass"] = rear });
}
