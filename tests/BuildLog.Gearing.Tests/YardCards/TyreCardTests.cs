using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

public sealed class TyreCardTests
{
    private static readonly TyreSize Size = TyreSizeText.Read("205/65R15").OrRefuse();

    // Diameters of 640 to 655 mm: 0.971 π D.
    private static readonly WindowOfPart Wanted = new(Position.Tyres, "tyre rolling circumference", Units.Metre, new(1.9523, 1.9981), null, null);

    private static readonly Driveline Car = InventedCar.Plain with
    {
        Tyres = new("tyres", InventedCar.Exactly(1.975), Size),
        AxleMasses = new(InventedCar.Exactly(600), InventedCar.Exactly(900)),
    };

    private static readonly OwnersGoals Goals = new([InventedCar.Goal("100 km/h", "2500 rpm")]);

    // By hand: 15 in is 381 mm; 381 + 2 · 0.70 · 195 = 654 mm, 381 + 2 · 0.60 · 225 = 651 mm, but 381 + 2 · 0.70 · 205 = 668 mm.
    [Fact]
    public void Names_markings_inside_the_window_only()
    {
        var sizes = TyreCard.Of(Wanted, Car, Goals).Sizes;

        Assert.Contains("195/70R15", sizes);
        Assert.Contains("225/60R15", sizes);
        Assert.DoesNotContain("205/70R15", sizes);
    }

    // 900 kg on two tyres: index 80 is 450 kg (Directive 92/23/EEC, annex II). 1.03 · 100 + 3.5 = 106.5 km/h: J is 100, K 110.
    [Fact]
    public void Names_what_the_tyres_must_carry_and_stand()
    {
        var card = TyreCard.Of(Wanted, Car, Goals);

        Assert.Equal(80, card.LeastLoadIndex);
        Assert.Equal("K", card.SlowestSymbol);
    }

    // The heavier axle decides, at the upper end of what the weighbridge leaves: 1000 kg are 500 a tyre, index 84; 900 ± 20 kg are 460, index 81 (462 kg).
    // A passenger tyre on a truck carries a tenth less: 900/2 · 1.10 = 495, index 84.
    [Fact]
    public void The_heavier_axle_decides_what_the_tyres_must_carry()
    {
        int? Index(Driveline car) => TyreCard.Of(Wanted, car, Goals).LeastLoadIndex;

        Assert.Equal(84, Index(Car with { AxleMasses = new(InventedCar.Exactly(1000), InventedCar.Exactly(900)) }));
        Assert.Equal(81, Index(Car with { AxleMasses = new(InventedCar.Exactly(600), InventedCar.Exactly(InventedCar.Of(900, 20 / 1.959964))) }));
        Assert.Equal(84, Index(Car with { Tyres = Car.Tyres! with { PassengerOnTruck = true } }));
        Assert.Null(Index(Car with { Tyres = Car.Tyres! with { TwinRear = true } }));
        Assert.Null(Index(Car with { AxleMasses = new(InventedCar.Exactly(600)) }));
        Assert.Null(Index(Car with { AxleMasses = new(null, InventedCar.Exactly(900)) }));
    }

    // 1.01 · 180 + 6.5 = 188.3 km/h: T is 190. A wish to reach 80 is less than the cruise at 100.
    [Theory]
    [InlineData("180 km/h", "T")]
    [InlineData("80 km/h", "K")]
    public void The_faster_of_cruise_and_top_speed_decides_the_symbol(string top, string symbol)
        => Assert.Equal(symbol, TyreCard.Of(Wanted, Car, Goals with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() }).SlowestSymbol);

    // Second route: all listed sizes in order; what the card has no room for is left out at both ends alike.
    [Fact]
    public void Where_a_card_has_no_room_the_sizes_in_the_middle_stay()
    {
        var wide = Wanted with { Window = new(1.5, 2.6) };
        var all = ListedParts.Tyres(Car.Tyres!, Goals).Where(size => size.Barred is null).OrderBy(size => size.Part!.RollingCircumference!.Value.Value).Select(size => size.Name).ToList();
        var sizes = TyreCard.Of(wide, Car, Goals).Sizes;
        var below = all.IndexOf(sizes[0]);

        Assert.Equal(12, sizes.Count);
        Assert.Equal(all.Skip(below).Take(12), sizes);
        Assert.InRange(all.Count - 12 - below - below, 0, 1);
    }

    [Fact]
    public void Where_no_tyres_are_fitted_there_are_no_sizes_and_radials_are_looked_for()
    {
        var card = TyreCard.Of(Wanted, Car with { Tyres = null }, Goals);

        Assert.Equal((0, Construction.Radial, null), (card.Sizes.Count, card.Construction, card.LeastLoadIndex));
        Assert.Equal(Construction.Bias, TyreCard.Of(Wanted, Car with { Tyres = new("old", null, TyreSizeText.Read("6.40-15").OrRefuse()) }, Goals).Construction);
    }

    [Fact]
    public void Two_wishes_that_exclude_each_other_make_no_card()
    {
        var empty = Wanted with
        {
            Window = new(2.1, 1.9),
            Lowest = new("cruise", "Cruise engine speed", "2500 rev/min or less", 2.1),
            Highest = new("speedometer", "Speedometer", "the law", 1.9),
        };

        Assert.StartsWith("No tyres can do: ", Assert.Throws<RefusedException>(() => TyreCard.Of(empty, Car, Goals)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_edges_are_those_of_a_roll_under_the_vehicle_or_loose()
    {
        var card = TyreCard.Of(Wanted with { SureWindow = new(1.96, 1.99) }, Car, Goals);

        Assert.Equal(RollEdges.Of(Wanted.Window, new Window(1.96, 1.99), 3, new(Loaded: true)), card.Edges(loaded: true));
        Assert.Equal(RollEdges.Of(Wanted.Window, new Window(1.96, 1.99), 5, new(Loaded: false)), card.Edges(loaded: false, TyreCard.MoreTurns));
    }

    [Fact]
    public void Without_a_weighbridge_or_a_goal_it_names_neither()
    {
        var card = TyreCard.Of(Wanted, Car with { AxleMasses = null }, OwnersGoals.None);

        Assert.Null(card.LeastLoadIndex);
        Assert.Null(card.SlowestSymbol);
    }
}
