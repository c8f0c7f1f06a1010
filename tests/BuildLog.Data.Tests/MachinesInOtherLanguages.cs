using System.Globalization;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests;

/// <summary>German has the decimal comma, Turkish an i of its own; both must neither be written to the file nor change what is read.</summary>
public sealed class MachinesInOtherLanguages : IDisposable
{
    private readonly TestShop test = new();
    private readonly CultureInfo before = CultureInfo.CurrentCulture;

    public void Dispose()
    {
        CultureInfo.CurrentCulture = before;
        test.Dispose();
    }

    [Theory]
    [InlineData("de-DE", "tr-TR")]
    [InlineData("tr-TR", "en-US")]
    [InlineData("en-US", "de-DE")]
    public void Read_what_others_wrote(string writer, string reader)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(writer);
        var vehicle = test.Shop.Add(new Vehicle { Name = "Pini", State = VehicleState.InBuild });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "99.5 km/h", EngineSpeed = "2500" });
        var axle = test.Shop.Add(new AxleComponent { Name = "a", StatedRatio = Noted.Ratio("4.10", RatioRange.Axle, Source.Tag) });
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3), "1234.5");
        test.Shop.Add(new TurnCountSession(axle, vehicle) { Date = new(2026, 5, 3), Wheels = Wheels.OneHeld, Readings = ["10:20.5"] });
        var tyres = test.Wheels("2.04 m");
        test.Shop.Fit(tyres, vehicle, Position.Tyres, new(2026, 5, 3), "1234.5");
        test.Shop.Fit(test.Gearbox("3.5", "1.0"), vehicle, Position.Transmission, new(2026, 5, 3));

        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(reader);
        test.Reopen();
        var found = test.Shop.FindVehicle("PIN");
        var then = test.Shop.DrivelineOn(found, new(2026, 5, 3));
        Assert.Equal(4.1, then.Driveline.RearAxle!.Ratio!.Value.Value, 1e-12);
        Assert.Equal("count of 3 May 2026", then.Driveline.RearAxle.Ratio.Says);
        Assert.Equal(1_234_500, then.Fitted[^1].FromOdometer!.Metres, 1e-6);

        // By hand: 99.5 km/h · 4.1 / 2.04 m · 1000 / 60 = 3333 rev/min. Reading to a quarter turn leaves 0.35 % of the ratio, the mark 0.11 %, the
        // last digit of 2.04 m 0.14 %: together 0.40 %, times 1.96 is 26 rev/min, rounded up to one figure.
        Assert.Contains("the engine turns 3330 ± 30 rev/min", AllChecks.Look(then.Driveline, test.Shop.GoalsOf(found))[0].Says, StringComparison.Ordinal);
        Assert.Equal("2026-05-03", test.Ask("SELECT FromDate FROM Fitments LIMIT 1"));
        Assert.Throws<RefusedException>(() => test.Shop.Add(new Vehicle { Name = "PINI" }));
    }
}
