using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests.Sessions;

public sealed class ReadingsAsTyped : IDisposable
{
    private static readonly DateOnly May3 = new(2026, 5, 3);
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Survive_a_restart_letter_by_letter()
    {
        var (vehicle, axle, tyres) = (test.Vehicle("Brindle"), test.Axle("a"), test.Wheels());
        test.Shop.Add(new TurnCountSession(axle, vehicle)
        {
            Date = May3,
            Wheels = Wheels.OneHeld,
            Readings = ["10:20 1/2", " 20 : 41½ ", "10:20.25"],
            ReadTo = "1/4",
            Align = ".02",
            Hub = "1.5:1",
            Helper = "Piet",
            Conditions = "cold",
            Notes = "n",
        });
        test.Shop.Add(new RollOutSession(tyres, vehicle)
        {
            Date = May3,
            Loaded = true,
            Readings = ["1:2,04m", "2:13 ft 4 1/2 in", "3:6125mm"],
            Tape = "1/8 in",
            Align = "0.005",
            Pressure = "32 psi",
        });
        test.Reopen();

        var count = Assert.IsType<TurnCountSession>(Assert.Single(test.Shop.Sessions(axle)));
        Assert.Equal(["10:20 1/2", " 20 : 41½ ", "10:20.25"], count.Readings);
        Assert.Equal(("1/4", ".02", "1.5:1", "Piet", "cold", "n"), (count.ReadTo, count.Align, count.Hub, count.Helper, count.Conditions, count.Notes));
        Assert.Equal(("a", "Brindle"), (count.Subject, count.Vehicle!.Name));

        var rollOut = Assert.IsType<RollOutSession>(Assert.Single(test.Shop.Sessions(tyres)));
        Assert.Equal(["1:2,04m", "2:13 ft 4 1/2 in", "3:6125mm"], rollOut.Readings);
        Assert.Equal(("1/8 in", "0.005", "32 psi", true), (rollOut.Tape, rollOut.Align, rollOut.Pressure, rollOut.Loaded));
    }

    // By hand: one wheel held, i = 2 · 23.7 / 10 = 4.74.
    [Fact]
    public void Give_the_ratio_each_time_anew()
    {
        var axle = test.Axle("a");
        var session = test.Shop.Add(new TurnCountSession(axle) { Date = May3, Wheels = Wheels.OneHeld, Readings = ["10:23.7"] });
        Assert.Equal(4.74, session.Result().Ratio.Value, 1e-12);

        // Both wheels alike: i = 23.7 / 10.
        var changed = test.Shop.Change(session, s => s.Wheels = Wheels.Together);
        Assert.Equal(2.37, changed.Result().Ratio.Value, 1e-12);
        Assert.Equal(2.37, ((TurnCountSession)Assert.Single(test.Shop.Sessions(axle))).Result().Ratio.Value, 1e-12);
    }

    // By hand: 6 m in three turns, loose radial: 0.971 · 2 m.
    [Fact]
    public void Give_the_circumference_with_the_loaded_factor_for_a_loose_wheel()
    {
        var session = test.Shop.Add(new RollOutSession(test.Wheels()) { Date = May3, Readings = ["3:6m"] });
        Assert.Equal(2.0, session.Result().Measured.Value, 1e-12);
        Assert.Equal(1.942, session.Result().RollingCircumference.Value, 1e-12);
    }

    [Theory]
    [InlineData("10", "'10' is not a count: write wheel turns, a colon, propshaft turns.")]
    [InlineData("0:20", "'0:20': wheel turns must be more than zero.")]
    [InlineData("10:-3", "'10:-3': propshaft turns must be more than zero.")]
    [InlineData("10:239", "A ratio of 47.8 is no axle ratio: it lies between 1.5 and 12. Look at the readings and at which wheels turned.")]
    public void That_give_no_ratio_are_refused_and_nothing_is_stored(string reading, string sentence)
    {
        var axle = test.Axle("a");
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new TurnCountSession(axle) { Date = May3, Wheels = Wheels.OneHeld, Readings = [reading] }));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Sessions(axle));
    }

    [Theory]
    [InlineData("3:30 inn", "2 mm", "'3:30 inn': '30 inn': the unit 'inn' is not known; for a length use m, mm, cm, in, ft, mi, km.")]
    [InlineData("3:6m", "2 kg", "'2 kg': 'kg' is a unit of mass, and a length is wanted.")]
    [InlineData("3:6m", "200 mm", "A tape is good to 0 to 100 mm, not to 200 mm.")]
    public void That_give_no_circumference_are_refused_and_nothing_is_stored(string reading, string tape, string sentence)
    {
        var tyres = test.Wheels();
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(new RollOutSession(tyres) { Date = May3, Tape = tape, Readings = [reading] }));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Sessions(tyres));
    }

    [Fact]
    public void Without_any_there_is_no_session()
        => Assert.Equal("No count was given.", Assert.Throws<RefusedException>(() => test.Shop.Add(new TurnCountSession(test.Axle("a")) { Date = May3 })).Message);

    [Fact]
    public void May_be_corrected_and_a_mistaken_session_taken_out()
    {
        var axle = test.Axle("a");
        var session = test.Shop.Add(new TurnCountSession(axle) { Date = May3, Wheels = Wheels.OneHeld, Readings = ["10:20", "10:20.5"] });
        var corrected = test.Shop.Change(session, s => s.Readings = ["10:20.5"]);
        Assert.Equal(["10:20.5"], ((TurnCountSession)Assert.Single(test.Shop.Sessions(axle))).Readings);
        Assert.Equal("a", corrected.Subject);
        test.Shop.Remove(corrected);
        Assert.Empty(test.Shop.Sessions(axle));
        Assert.Equal(0L, test.Ask("SELECT count(*) FROM Readings"));
    }
}
