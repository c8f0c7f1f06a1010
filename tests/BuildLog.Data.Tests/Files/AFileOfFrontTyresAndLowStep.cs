using BuildLog.Data.Sessions;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>FrontTyresAndLowStep.sql is the demo shop as the sixth schema held it: three methods of measuring, each of a part.</summary>
public sealed class AFileOfFrontTyresAndLowStep : IDisposable
{
    private static readonly DateOnly Day = new(2026, 5, 3);

    private readonly EarlierShop earlier = new("FrontTyresAndLowStep.sql");

    public void Dispose() => earlier.Dispose();

    // Its masses are noted in the dump: 830 and 860 kg on the axles.
    [Fact]
    public void Weighs_what_was_only_noted()
    {
        var tansy = earlier.Shop.FindVehicle("Tansy");
        Assert.Equal(830, earlier.Shop.DrivelineOn(tansy, Day).Driveline.AxleMasses!.Front!.Value.Value);

        earlier.Shop.Add(new WeighbridgeSession(tansy) { Date = Day, Readings = ["front 840 kg", "rear 850 kg"] });

        var front = earlier.Shop.DrivelineOn(tansy, Day).Numbers.Single(number => number.Number == "front axle mass");
        Assert.Equal((840, "weighbridge of 3 May 2026"), (front.Used.Value.Value, front.Used.Says));
        Assert.Equal("830 kg ± 5 kg", Assert.Single(front.PassedOver).Says);
        earlier.AssertSoundButForItsFiles();
    }

    [Fact]
    public void Keeps_every_count_with_its_part()
    {
        var sessions = earlier.Shop.Vehicles().SelectMany(earlier.Shop.Sessions).DistinctBy(session => session.Id).ToList();
        Assert.All(sessions, session => Assert.NotNull(session.Component));
        Assert.Equal(["gear count", "roll-out", "turn count"], sessions.Select(session => session.Method.Text).Distinct().Order());
    }
}
