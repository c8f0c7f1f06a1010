using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

/// <summary>A count that the card calls yes is one that the program judges to fit once it is typed as an offer, and no other is.</summary>
/// <remarks>
/// Two roads to one answer: the card solves for its edges, the offer is counted, put into the driveline and judged by its checks. A quarter turn may lie between
/// them where the others have few degrees of freedom: the card keeps their t, the verdict has that of others and count together. Also where one goal sets the
/// edge of the window and another that of what is sure. Either way it is the card that asks for more.
/// </remarks>
public sealed class CardAndVerdictTests
{
    private static readonly OwnersGoals Cruise = new([InventedCar.Goal("108 km/h", "2550 rpm", "5 %")]);

    public static TheoryData<string, bool> Cars => new() { { "all exact", true }, { "rolled", true }, { "rolled, overdrive", true }, { "slip", true }, { "few rolls", false }, { "two goals", false } };

    [Theory]
    [MemberData(nameof(Cars))]
    public void An_axle_counted_as_the_card_says_yes_fits(string named, bool toTheStep)
    {
        var (car, goals) = Car(named);
        var card = AxleCard.Of(DrivelineWindows.OfAxle(car, goals)!);
        foreach (var (wheels, turns) in new[] { (Wheels.OneHeld, 10), (Wheels.OneHeld, 30), (Wheels.Together, 10), (Wheels.Together, 30) })
        {
            Agree(card.Edges(wheels, turns).Yes!.Value, 0.25, toTheStep, counted =>
            {
                var ratio = TurnCount.Of([TurnReading.Read(FormattableString.Invariant($"{turns}:{counted}"), wheels).OrRefuse()], new()).Ratio;
                return Offers.Judge(car, goals, new Candidate<Axle>("offer", InventedCar.Axle(ratio), Pool.Offered)).Goal!.Verdict;
            });
        }
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void A_gearbox_counted_as_the_card_says_yes_fits(string named, bool toTheStep)
    {
        var (car, goals) = Car(named);
        var window = DrivelineWindows.Of(car, goals).Single(each => each.Position == Position.Transmission);
        foreach (var turns in new[] { 40, 80 })
        {
            Agree(GearboxCard.Edges(window, turns).Yes!.Value, 0.25, toTheStep, counted =>
            {
                var top = TurnCount.OfGear([TurnReading.ReadGear(FormattableString.Invariant($"{turns}:{counted}")).OrRefuse()], new()).Ratio;
                var box = car.Transmission! with { Gears = [.. car.Transmission.Gears.SkipLast(1), InventedCar.Gear("4", top)] };
                return Offers.Judge(car, goals, new Candidate<Transmission>("offer", box, Pool.Offered)).Goal!.Verdict;
            });
        }
    }

    // An engine speed falls as the tyre rises. The tape's share is taken at the edge of the window, which moves no edge by a tenth of a millimetre.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Tyres_rolled_as_the_card_says_yes_fit(bool loaded)
    {
        var car = InventedCar.Plain with { RearAxle = InventedCar.Axle(InventedCar.Of(3.0, 0.02)) };
        var window = DrivelineWindows.Of(car, Cruise).Single(each => each.Position == Position.Tyres);
        var how = new RollOutPrecision(loaded);
        foreach (var turns in new[] { TyreCard.Turns, TyreCard.MoreTurns })
        {
            Agree(RollEdges.Of(window, turns, how).Yes!.Value, 0.001, toTheStep: true, rolled =>
            {
                var roll = RollOut.Of([new(turns, rolled, "rolled")], how);
                return Offers.Judge(car, Cruise, new Candidate<TyreSet>("offer", InventedCar.Rolling(roll.RollingCircumference), Pool.Offered)).Goal!.Verdict;
            });
        }
    }

    // Goes through what can be read around both edges; a step apart is only ever one that the card leaves to be counted further.
    private static void Agree(Window yes, double step, bool toTheStep, Func<double, Verdict> judged)
    {
        foreach (var read in new[] { yes.Low, yes.High }.SelectMany(edge => Enumerable.Range((int)Math.Floor(edge / step) - 4, 10)).Select(k => k * step).Distinct())
        {
            var fits = judged(read) == Verdict.Fits;
            if (toTheStep) Assert.True(fits == yes.Contains(read), $"{read}: {fits}, {yes}");
            else if (yes.Contains(read)) Assert.True(fits, $"{read}, {yes}");
            else if (!new Window(yes.Low - step, yes.High + step).Contains(read)) Assert.False(fits, $"{read}, {yes}");
        }
    }

    private static (Driveline Car, OwnersGoals Goals) Car(string named)
    {
        var car = InventedCar.Plain with { RearAxle = InventedCar.Axle(2.85) };
        Driveline On(Measured tyre) => car with { Tyres = InventedCar.Rolling(tyre) };
        var rolled = On(InventedCar.Of(2.00, 0.013));
        return named switch
        {
            "rolled" => (rolled, Cruise),
            "rolled, overdrive" => (rolled with { Overdrive = new("unit", InventedCar.Exactly(InventedCar.Of(0.80, 0.004))) }, Cruise),
            "slip" => (rolled with { Transmission = car.Transmission! with { Converter = new(LocksUp: false) } }, new([InventedCar.Goal("108 km/h", "2650 rpm", "7 %")])),
            "few rolls" => (On(Measured.From(2.00, new Input("scatter", 0.009, new Evidence("rolls"), degreesOfFreedom: 3))), Cruise),
            "two goals" => (rolled, new([InventedCar.Goal("108 km/h", "2550 rpm", "5 %"), InventedCar.Goal("72 km/h", "1700 rpm", "4.5 %")])),
            _ => (car, Cruise),
        };
    }
}
