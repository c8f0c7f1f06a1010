using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// By hand: 200 N·m · 3.5 · 0.85 = 595 N·m in low gear. Slip: 0.80 · 9.80665 · m · (2/2π) / (0.95 · 4.10) = 0.64110 · m, ± 12.25 %: 800 kg 512.9 ± 62.8 N·m, 1200 kg 769.3 ± 94.2.
/// Source of the limit: the joint maker's continuous rating, a shaft maker's installation manual; the grip from memory.
/// </remarks>
public sealed class JointTorqueCheckTests
{
    [Theory]
    [InlineData(800, 590, Verdict.Fits)]
    [InlineData(800, 520, Verdict.Watch)]
    [InlineData(800, 450, Verdict.Clash)]
    [InlineData(1200, 600, Verdict.Fits)]
    [InlineData(1200, 590, Verdict.Clash)]
    public void The_lesser_of_low_gear_and_slip_is_asked_of_the_joints(double mass, double rating, Verdict verdict)
        => Assert.Equal(verdict, Find(Car(rating) with { AxleMasses = new(null, InventedShaft.Known(mass)) }).Verdict);

    [Fact]
    public void The_sentence_says_which_and_the_cure_is_a_rating()
    {
        var finding = Find(Car(450) with { AxleMasses = new(null, InventedShaft.Known(800)) });

        Assert.Equal("The propshaft is asked for 512.9 ± 62.8 N·m (the tyres slip; off the road low gear can ask for 595 N·m); its joints are rated for 450 N·m. Assumed: a grip of 0.80 ± 0.10 (dry road). The load that moves to the rear under pull is not in it: enter the height of the centre of gravity and the wheelbase.", finding.Says);
        Assert.Equal(["joints rated for 580 N·m or more"], finding.Cures);
    }

    [Fact]
    public void Where_the_tyres_hold_more_low_gear_is_what_is_asked_for()
    {
        Assert.StartsWith(
            "The propshaft is asked for 595 N·m (low gear; the tyres would hold 770 ± 100 N·m); its joints are rated for 590 N·m.",
            Find(Car(590) with { AxleMasses = new(null, InventedShaft.Known(1200)) }).Says, StringComparison.Ordinal);
        Assert.StartsWith("The propshaft is asked for 595 N·m (low gear); ", Find(Car(600)).Says, StringComparison.Ordinal);
    }

    // Nobody weighed the axle: the tyres may slip long before low gear's 595 N·m.
    [Fact]
    public void Low_gear_alone_may_pass_a_joint_and_cannot_fail_it()
    {
        var finding = Find(Car(590));

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Contains("weigh the axles one by one", finding.Cures);
    }

    // A case whose low nobody knows is asked in high, through its own losses: 595 · 0.95 = 565 N·m; without an engine the tyres alone ask.
    [Fact]
    public void Either_of_the_two_is_enough_to_judge_by()
    {
        Assert.Contains("565 N·m", Find(Car(590) with { TransferCase = new("case", InventedCar.Exactly(1), null) }).Says, StringComparison.Ordinal);
        Assert.StartsWith("The propshaft is asked for 510 ± 70 N·m (the tyres slip)", Find(Car(590) with { Engine = null, AxleMasses = new(null, InventedShaft.Known(800)) }).Says, StringComparison.Ordinal);
    }

    // 900 kg slip at 577 ± 71 N·m, which 600 might not carry; low gear never makes more than 595, so it does.
    [Fact]
    public void What_low_gear_cannot_make_the_tyres_need_not_hold()
        => Assert.Equal(Verdict.Fits, Find(Car(600) with { AxleMasses = new(null, InventedShaft.Known(900)) }).Verdict);

    [Fact]
    public void What_is_missing_is_asked_for_where_it_can_be_had()
    {
        Assert.Contains("enter the engine's torque", Find(Car(460) with { Engine = null }).Cures);
        Assert.Contains("enter the gear ratios", Find(Car(460) with { Transmission = null }).Cures);
    }

    [Fact]
    public void Where_only_the_tyres_circumference_lacks_it_alone_is_asked_for()
        => Assert.Equal(["roll the tyres out, or enter their size"], Find(Car(590) with { AxleMasses = new(null, InventedShaft.Known(800)), Tyres = new("tyres", null, null) }).Cures);

    // Low range 2.5: 595 · 2.5 · 0.95 = 1413 N·m, which a wedged wheel can ask for.
    [Fact]
    public void With_a_low_range_less_than_the_low_gear_torque_is_a_watch()
    {
        var car = Car(600) with { AxleMasses = new(null, InventedShaft.Known(800)), TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) };
        var finding = Find(car);

        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because));
        Assert.Equal(["joints rated for 1414 N·m or more"], finding.Cures);
    }

    [Fact]
    public void A_rating_nobody_knows_is_asked_for_with_what_would_do()
    {
        var finding = Find(InventedShaft.Car(5000) with { Engine = Engine });

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Contains("595 N·m or more would do", Assert.Single(finding.Cures), StringComparison.Ordinal);
    }

    // 400 N·m told · 3.5 · 0.85 = 1190 N·m, ± 6 %.
    [Fact]
    public void A_told_peak_makes_the_low_gear_torque()
        => Assert.Equal(1190, Find(Car(1300) with { Engine = new("engine") { ToldTorque = new(400, null) } }).Value!.Value, 1e-9);

    // 250 · 6.0 · 0.85 = 1275 N·m in reverse, 250 · 4.10 · 0.85 = 871 N·m in first.
    [Theory]
    [InlineData(1280, Verdict.Fits)]
    [InlineData(1270, Verdict.Clash)]
    public void Reverse_counts_where_it_is_lower_than_first(double rating, Verdict verdict)
    {
        var finding = Find(Car(rating) with
        {
            Engine = new("engine") { Torque = TorqueCurve.Of([new(1000 / 60.0, 200), new(3000 / 60.0, 250)], spread: 0) },
            Transmission = new("box", [InventedCar.Gear("1", 4.10)]) { Reverse = InventedShaft.Known(6.0) },
            AxleMasses = new(null, InventedShaft.Known(3000)),
        });

        Assert.Equal((verdict, 1275), (finding.Verdict, Math.Round(finding.Value!.Value)));
        Assert.StartsWith("The propshaft is asked for 1275 N·m (reverse; the tyres would hold", finding.Says, StringComparison.Ordinal);
    }

    // First makes 200 · 3.5 · 0.85 = 595 N·m and reverse 200 · 3.0 · 0.85 = 510; the tyres would hold 770. In the low range of 2.5 first asks for 595 · 2.5 · 0.95 = 1413 of the joints.
    // With a reverse of 4.0 that is 1615, which the cure keeps to and the sentence therefore tells.
    [Theory]
    [InlineData(3.0, 1414, "low gear")]
    [InlineData(4.0, 1615, "reverse")]
    public void What_the_cure_keeps_to_off_the_road_is_told(double reverse, int rating, string way)
    {
        var car = Car(1000) with { AxleMasses = new(null, InventedShaft.Known(1200)), TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) };
        var finding = Find(car with { Transmission = car.Transmission! with { Reverse = InventedShaft.Known(reverse) } });

        Assert.Contains($"off the road {way} can ask for", finding.Says, StringComparison.Ordinal);
        Assert.Equal([$"joints rated for {rating} N·m or more"], finding.Cures);
    }

    [Fact]
    public void Without_torque_and_masses_it_is_open() => Assert.Equal(Verdict.Open, Find(Car(460) with { Engine = null }).Verdict);

    private static Engine Engine => new("engine") { Torque = TorqueCurve.Of([new(1000 / 60.0, 150), new(3000 / 60.0, 200)], spread: 0) };

    private static Driveline Car(double rating)
        => InventedShaft.Car(5000, InventedShaft.Plain with { JointRating = InventedShaft.Known(rating) }) with { Engine = Engine };

    private static Finding Find(Driveline car) => Assert.Single(new JointTorqueCheck().Look(car, OwnersGoals.None));
}
