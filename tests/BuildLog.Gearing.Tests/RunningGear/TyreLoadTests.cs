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
