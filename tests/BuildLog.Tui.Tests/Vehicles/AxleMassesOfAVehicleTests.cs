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
    [InlineData("1640 kg", "10000 kg", "", false)]
    [InlineData("", "700 kg", "850 kg", false)]
    public void Are_refused_where_no_load_would_explain_them(string mass, string front, string rear, bool refused)
        => Assert.Equal(refused, LoadEntries.Contradiction(new FormValues(new Dictionary<string, string> { ["Mass"] = mass, ["FrontAxleMass"] = front, ["RearAxleMass"] = rear })) is not null);
}
