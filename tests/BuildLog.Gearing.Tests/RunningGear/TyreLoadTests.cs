using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RunningGear;

public sealed class TyreLoadTests
{
    // LI 94 is 670 kg, LI 120 1400, 116 1250 (Directive 92/23/EEC).
    [Fact]
    public void Two_tyres_an_axle_or_four()
    {
        Assert.Equal(1340, TyreLoad.OfAxle(Size("205/65R15 94H")));
        Assert.Equal(5000, TyreLoad.OfAxle(Size("LT235/85R16 120/116Q"), twin: true));
        Assert.Null(TyreLoad.OfAxle(Size("205/65R15")));
        Assert.Null(TyreLoad.OfAxle(Size("205/65R15 94H"), twin: true));
    }

    // Worked example H5: 800 kg / 1.10 = 727 kg a tyre; LI 100 is 800 kg.
    [Fact]
    public void A_passenger_tyre_on_a_truck_carries_less()
        => Assert.Equal(727.273, TyreLoad.OfAxle(Size("P235/75R15 100S"), passengerOnTruck: true)!.Value / 2, 1e-3);

    // 1341 kg an axle is 670.5 a tyre: 94 (670) is too little, 95 (690) will do.
    [Fact]
    public void The_smallest_index_that_carries_an_axle()
    {
        Assert.Equal(94, TyreLoad.IndexFor(1340));
        Assert.Equal(95, TyreLoad.IndexFor(1341));
        Assert.Null(TyreLoad.IndexFor(40_000));
    }

    [Fact]
    public void The_index_asked_for_carries_it_and_the_one_below_does_not()
        => Gen.Select(Gen.Double[100, 20_000], Gen.Bool).Sample((mass, truck) =>
        {
            var index = TyreLoad.IndexFor(mass, truck)!.Value;
            double Carries(int at) => 2 * LoadIndex.CapacityKg(at)!.Value / (truck ? TyreLoad.PassengerOnTruck : 1);

            Assert.True(Carries(index) >= mass - 1e-6);
            if (index > 0) Assert.True(Carries(index - 1) < mass);
        });

    // By the rule as printed: 150 km/h is the last of the lower branch, 1.03 · 150 + 3.5 = 158; above, 1.01 · 200 + 6.5 = 208.5.
    [Theory]
    [InlineData(100, 106.5)]
    [InlineData(150, 158)]
    [InlineData(200, 208.5)]
    public void What_a_tyre_must_be_made_for(double topSpeed, double required) => Assert.Equal(required, TyreSpeed.Required(topSpeed), 1e-9);

    // By the table's steps: exactly what a symbol is made for it will do.
    [Fact]
    public void Every_symbol_is_the_slowest_for_its_own_speed()
    {
        Assert.Equal("Q", TyreSpeed.SymbolFor(160));
        Assert.Equal("R", TyreSpeed.SymbolFor(160.1));
        Assert.Equal("A1", TyreSpeed.SymbolFor(1));
        Assert.Equal("Y", TyreSpeed.SymbolFor(300));
        Assert.Equal(0, TyreLoad.IndexFor(90));
        Assert.Equal(200, TyreLoad.IndexFor(28_000));
        Assert.Equal(5000 / 1.1, TyreLoad.OfAxle(Size("LT235/85R16 120/116Q"), twin: true, passengerOnTruck: true)!.Value, 1e-9);
    }

    // The maker's three examples: Q, S and T or faster.
    [Theory]
    [InlineData(152.85, "Q")]
    [InlineData(171.13, "S")]
    [InlineData(180.6, "T")]
    [InlineData(205, "H")]
    [InlineData(301, null)]
    public void The_slowest_symbol_that_is_fast_enough(double required, string? symbol) => Assert.Equal(symbol, TyreSpeed.SymbolFor(required));

    [Fact]
    public void A_faster_vehicle_never_asks_for_a_slower_tyre()
        => Gen.Select(Gen.Double[50, 280], Gen.Double[0, 20]).Sample((speed, more)
            => Assert.True(TyreSpeed.Required(speed + more) >= TyreSpeed.Required(speed) - 1e-9 && TyreSpeed.Required(speed) > speed));

    private static TyreSize Size(string text) => TyreSizeText.Read(text).OrRefuse();
}
