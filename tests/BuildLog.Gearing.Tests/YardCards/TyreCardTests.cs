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

    [Fact]
    public void Without_a_weighbridge_or_a_goal_it_names_neither()
    {
        var card = TyreCard.Of(Wanted, Car with { AxleMasses = null }, OwnersGoals.None);

        Assert.Null(card.LeastLoadIndex);
        Assert.Null(card.SlowestSymbol);
    }
}
