using System.Numerics;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>The curve that pull is read off: where it lies, what it says for sure, and what it leaves to be asked.</summary>
public sealed class PullCurveTests
{
    // Axles of 4 ± 1 % and 5 ± 2 %, tyres of 2 m ± 1 % and 2.5 m ± 3 %: 1.6 to 2.5 turns a metre, ln(2.5/1.6) = 0.4463 in steps of half a per cent are 90.
    [Fact]
    public void The_steps_reach_from_the_longest_axle_on_the_tallest_tyres_to_the_shortest_on_the_lowest()
    {
        var range = Range([Of(4, 0.04), Of(5, 0.1)], [Of(2, 0.02), Of(2.5, 0.075)]);

        Assert.Equal(90, range.Steps);
        Assert.Equal(90 / Math.Log(2.5 / 1.6), range.PerLog, 1e-5);
        Assert.Equal((1.6, 2.5), (Math.Round(range.At(0), 7), Math.Round(range.At(90), 7)));
        Assert.InRange(range.StepOf(4) - (range.PerLog * Math.Log(2.5)), double.Epsilon, 1e-6);
        Assert.InRange(range.StepOf(5) - (range.PerLog * Math.Log(2)), 90 - 1e-6, Math.BitDecrement(90.0));
        Assert.Equal(0.0001 + 0.0001, range.LeastSpread, 1e-12);
        Assert.Equal(0.0004 + 0.0009, range.MostSpread, 1e-12);
    }

    [Theory]
    [InlineData(5, 3, 3)]
    [InlineData(2, 3, 2)]
    public void The_fewest_degrees_of_freedom_of_axles_and_tyres_count(int axle, int tyre, double least)
        => Assert.Equal(least, Range([4.0, Of(5, 0.1, axle)], [2.0, Of(2.5, 0.1, tyre)]).LeastFreedom, 1e-9);

    [Theory]
    [InlineData(4, 8)]
    [InlineData(40, 320)]
    public void Few_parts_have_some_steps_and_many_not_too_many(double longest, int steps) => Assert.Equal(steps, Range([4.0, longest], [2.0]).Steps);

    // 2 turns a metre, a value of three times as many and ± 0.4 of its own; the axle is known to 5 or 10 %: 1.96 · √(0.4² + (6 · 0.05)²) = 0.98, and by t of 5 degrees of freedom
    // 2.5706 · √(0.4² + (6 · 0.1)²) = 1.8537.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_point_has_the_least_and_the_most_that_its_value_may_be_off(bool isVerified)
    {
        var input = new Input("turns", 0, new Evidence("turns"));
        var value = (Measured.From(2, input) * 3) + InventedCar.Of(1, 0.4, "own");
        var finding = AllChecks.Look(InventedCar.Plain, OwnersGoals.None)[0] with { Value = value, Wanted = Window.AtLeast(8), LimitIsVerified = isVerified };

        var point = PullPoint.Of(finding, 2, input, Range([Of(4, 0.2), Of(5, 0.5, 5)], [2.0]));

        Assert.Equal((8, 7, isVerified), (point.Limit!.Value, point.Value, point.MayClash));
        Assert.Equal(0.98, point.Least, 1e-4);
        Assert.Equal(1.8537, point.Most, 1e-4);
        Assert.Equal(default, PullPoint.Of(finding with { Value = null }, 2, input, Range([4.0], [2.0])));
    }

    // Ten or more are wanted, and the four points are alike: 12 ± 2 just fits, 7.5 ± 2 does not, 8 ± 2 just may; 9 ± 1 just may for sure, 11 ± 1 just fits with the least.
    [Theory]
    [InlineData(12, 1, 2, Verdict.Fits, Verdict.Fits)]
    [InlineData(7.5, 1, 2, Verdict.Clash, Verdict.Watch)]
    [InlineData(8, 1, 2, null, Verdict.Watch)]
    [InlineData(9, 1, 3, Verdict.Watch, Verdict.Watch)]
    [InlineData(11, 1, 3, null, null)]
    public void What_is_certain_of_a_value_that_does_not_move(double value, double least, double most, Verdict? verdict, Verdict? ofPractice)
    {
        Assert.Equal(verdict, Between(least, most, mayClash: true, value, value, value, value));
        Assert.Equal(ofPractice, Between(least, most, mayClash: false, value, value, value, value));
    }

    // What a value moves from one point to the next, wherever that is, may come on top: 11 ± 1 and half of it more is not certain of ten.
    [Theory]
    [InlineData(11.5, 11, 11, 11)]
    [InlineData(11, 11, 11.5, 11.5)]
    [InlineData(11, 11, 11, 11.5)]
    public void As_much_as_it_moves_is_kept_clear(double before, double from, double to, double after)
    {
        Assert.Null(Between(0.5, 1, true, before, from, to, after));
        Assert.Equal(Verdict.Fits, Between(0.5, 0.5, true, before, from, to, after));
    }

    // Half a move more or less: 9 ± 1 may reach ten, 10 ± 0.25 may fit, 9.5 ± 0.25 may clash.
    [Theory]
    [InlineData(9, 0.5, 1, true)]
    [InlineData(10, 0.25, 3, false)]
    [InlineData(9.5, 0.25, 3, true)]
    [InlineData(9.5, 0.75, 3, true)]
    public void So_it_is_below_the_limit_and_about_it(double value, double least, double most, bool mayClash) => Assert.Null(Between(least, most, mayClash, value - 0.5, value, value, value));

    [Fact]
    public void How_much_the_uncertainty_changes_is_kept_clear_too()
    {
        PullPoint Point(double most) => new(10, 11, 0, most, true);

        Assert.Equal(Verdict.Fits, PullPoint.Between(Point(1), Point(1), Point(1), Point(1)));
        Assert.Null(PullPoint.Between(Point(0.5), Point(0.5), Point(0.5), Point(1)));
        Assert.Null(PullPoint.Between(Point(0.5), Point(1), Point(1), Point(1)));
    }

    // A move of 8 is kept clear of everywhere: 20 less 8 fits, 12 less 8 does not.
    [Theory]
    [InlineData(12, 20, 20, 20)]
    [InlineData(20, 12, 20, 20)]
    [InlineData(20, 20, 12, 20)]
    [InlineData(20, 20, 20, 12)]
    public void All_four_points_have_to_say_the_same(double before, double from, double to, double after) => Assert.Null(Between(0, 0, true, before, from, to, after));

    [Fact]
    public void What_cannot_be_said_is_open() => Assert.Equal(Verdict.Open, PullPoint.Between(default, default, default, default));

    // Asked check by check at both ends of every step; and of any stretch of steps it is certain only where all of them are and say the same.
    [Fact]
    public void A_step_says_what_the_checks_say_at_its_ends_and_a_stretch_what_all_its_steps_say()
    {
        var goals = OwnersGoals.None with { TopSpeed = TopSpeedGoal.Read("150 km/h").OrRefuse(), HillStart = HillStartGoal.Read("25 %").OrRefuse() };
        var car = InventedLoad.WithTorque(100);
        var range = Range([3.5, 4.6], [2.0]);
        var curve = PullCurve.Of(car, goals, range);

        Assert.Equal(range.Steps, curve.Steps.Length);
        Assert.InRange(curve.Steps.Count(step => step.IsUnsure), 1, range.Steps / 2);
        Assert.True(curve.Steps.Where(step => !step.IsUnsure).Distinct().Count() >= 3);
        for (var k = 0; k < range.Steps; k++)
        {
            if (!curve.Steps[k].IsUnsure) Assert.All([At(k), At(k + 1)], said => Assert.Equal((curve.Steps[k].Clash, curve.Steps[k].Open, curve.Steps[k].Watch), (said.Clash, said.Open, said.Watch)));
        }

        for (var first = 0; first < range.Steps; first++)
        {
            for (var last = first; last < range.Steps; last++)
            {
                var alike = curve.Steps[first..(last + 1)].All(step => step == curve.Steps[first] && !step.IsUnsure);
                Assert.Equal(alike ? curve.Steps[first] : null, curve.Throughout(first + 0.5, last + 0.5));
            }
        }

        Assert.Equal(curve.Steps[^1], curve.Throughout(range.Steps, range.Steps + 3));
        Assert.Equal(curve.Steps[0], curve.Throughout(-2, 0));

        VerdictCounts At(int step)
        {
            var whole = car with { RearAxle = InventedCar.Axle(range.At(step)), Tyres = InventedCar.Rolling(1) };
            return VerdictCounts.Of(PullCurve.Asked.SelectMany(check => check.Look(whole, goals)));
        }
    }

    // Nobody knows what stands on the driven wheels: two wishes cannot be said, whatever the axle.
    [Fact]
    public void What_cannot_be_said_anywhere_is_open_all_the_way()
    {
        var car = InventedLoad.Car with { Load = null };
        var goals = OwnersGoals.None with { Hill = HillGoal.Read("6 %", "90 km/h").OrRefuse(), HillStart = HillStartGoal.Read("25 %").OrRefuse() };

        var curve = PullCurve.Of(car, goals, Range([4.0], [2.0]));

        Assert.All(curve.Steps, step => Assert.Equal(new(0, 2, 0, false), step));
        Assert.Equal(new(0, 2, 0, false), curve.Throughout(0, curve.Steps.Length));
    }

    // 83.33 rev/s by 2.00 turns a metre are the 150 km/h of the cruise: only with more turns a metre has the top speed anything to say to it. In third it turns out anyhow, and no hill is asked about.
    [Fact]
    public void Where_a_check_begins_to_speak_it_is_asked()
    {
        var range = Range([3.5, 4.6], [2.0]);
        var curve = PullCurve.Of(InventedLoad.Car, new([InventedCar.Goal("150 km/h", "3000 rpm", "", "3")]), range);

        Assert.Equal((default, new(1, 0, 0, false)), (curve.Steps[0], curve.Steps[^1]));
        Assert.True(curve.Steps[(int)(range.StepOf(4) - (range.PerLog * Math.Log(2)))].IsUnsure);
    }

    [Fact]
    public void A_row_adds_what_its_step_says_to_what_is_there()
    {
        PullVerdict[] steps = [new(1, 2, 3, false), new(4, 5, 6, true)];

        Assert.Equal((11, 22, 33, 0L), Added(0));
        Assert.Equal((14, 25, 36, -1L), Added(1));
        Assert.Equal((14, 25, 36, -1L), Added(9));

        (double Clash, double Open, double Watch, long Unsure) Added(double axle)
        {
            var (clash, open, watch, unsure) = (new Vector<double>(10), new Vector<double>(20), new Vector<double>(30), Vector<long>.Zero);
            new PullRow(steps, axle).AddTo(new Vector<double>(0.5), ref clash, ref open, ref watch, ref unsure);
            return (clash[0], open[0], watch[0], unsure[Vector<long>.Count - 1]);
        }
    }

    private static Verdict? Between(double least, double most, bool mayClash, params double[] values)
    {
        PullPoint Point(int k) => new(10, values[k], least, most, mayClash);
        return PullPoint.Between(Point(0), Point(1), Point(2), Point(3));
    }

    private static Measured Of(double value, double u, double freedom = double.PositiveInfinity) => Measured.From(value, new Input("number", u, new Evidence("number"), freedom));

    private static PullRange Range(Measured[] axles, Measured[] tyres)
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        return new(
            here with
            {
                Axles = [.. axles.Select(ratio => new Candidate<Axle>("axle", InventedCar.Axle(ratio), Pool.Owned))],
                Tyres = [.. tyres.Select(circumference => new Candidate<TyreSet>("tyres", InventedCar.Rolling(circumference), Pool.Owned))],
            },
            Position.RearAxle);
    }
}
