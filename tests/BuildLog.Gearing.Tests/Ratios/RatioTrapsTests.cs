using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class RatioTrapsTests
{
    [Theory]
    [InlineData(2.2)]
    [InlineData(4.10)]
    [InlineData(7.2)]
    public void A_usual_axle_is_not_asked_about(double ratio) => Assert.Empty(RatioTraps.OfAxle(ratio));

    // 3.90 counted on one wheel as if both had turned is 1.95; written the other way round 1/3.90 = 0.256.
    [Theory]
    [InlineData(1.95, "one wheel stand still", 3.90)]
    [InlineData(0.2564102564, "the other way round", 3.90)]
    [InlineData(8.2, "Did both wheels turn", 4.10)]
    public void An_unusual_axle_is_asked_what_it_would_be_without_the_slip(double ratio, string asks, double otherwise)
    {
        var question = RatioTraps.OfAxle(ratio).First();

        Assert.Contains(asks, question.Asks, StringComparison.Ordinal);
        Assert.Equal(otherwise, question.Otherwise!.Value, 1e-6);
        Assert.EndsWith(FormattableString.Invariant($"Then it is {otherwise:0.00}."), question.InWords(), StringComparison.Ordinal);
    }

    // One held: 10 wheel and 23.7 propshaft turns are 2 · 23.7 / 10 = 4.74; turned round 2 · 10 / 23.7 = 0.8439, and 4 / 0.8439 = 4.74.
    [Fact]
    public void With_one_wheel_held_a_count_turned_round_is_four_over_the_ratio()
        => Assert.Equal(4.74, RatioTraps.OfAxle(0.8438818565, oneHeld: true).First().Otherwise!.Value, 1e-6);

    [Theory]
    [InlineData(0.50)]
    [InlineData(0.78)]
    [InlineData(3.01)]
    public void A_gear_is_asked_about_only_below_one_half(double ratio) => Assert.Null(RatioTraps.OfGear(ratio, []));

    // 1.22 turned round is 0.8197. Within 2 % it is a ratio known for the gearbox: 0.8360 is 1.99 % more, 0.8362 2.02 %, 0.8032 2.01 % less; and where 1.22 itself is known, nothing is asked.
    [Theory]
    [InlineData(0.82, null, true)]
    [InlineData(0.8360, null, true)]
    [InlineData(0.8362, null, false)]
    [InlineData(0.8034, null, true)]
    [InlineData(0.8032, null, false)]
    [InlineData(0.82, 1.22, false)]
    [InlineData(0.82, 1.00, true)]
    public void A_gear_that_turned_round_is_one_the_gearbox_is_known_for_is_asked_about(double known, double? another, bool asked)
    {
        var question = RatioTraps.OfGear(1.22, another is { } more ? [known, more] : [known]);

        Assert.Equal(asked ? 1 / 1.22 : null, question?.Otherwise);
        if (asked) Assert.Equal("Were the turns written the other way round, input first? Then it is 0.82.", question!.InWords());
    }

    [Fact]
    public void A_gear_longer_than_any_is_asked_about_whatever_is_known() => Assert.Equal(1 / 0.49, RatioTraps.OfGear(0.49, [0.49])!.Otherwise);

    // Only the factor under which both agree is named.
    [Theory]
    [InlineData(2, "Did one wheel stand still, though the count says that both turned? Then count and tag agree.")]
    [InlineData(0.5, "Did both wheels turn, though the count says that one was held? Then count and tag agree.")]
    public void A_count_that_is_half_or_twice_the_tag_forgot_a_wheel(double factor, string asks)
        => Assert.Equal([asks], RatioTraps.ForgottenWheel(tried => Math.Abs(tried - factor) < 1e-12));

    // Worked: 3.90 through a hub reduction of 2.00 is 7.80; it is asked for, not called a slip of the pen.
    [Fact]
    public void An_axle_above_the_usual_is_asked_for_its_hub_reduction()
        => Assert.Contains(RatioTraps.OfAxle(7.80), question => question.Asks.Contains("hubs", StringComparison.Ordinal) && question.Otherwise is null);

    [Fact]
    public void Counted_teeth_forget_no_wheel()
        => Assert.Equal("Is there a reduction in the hubs? Enter it with the axle.", Assert.Single(RatioTraps.OfAxle(8.2, teethCounted: true)).InWords());

    // From 2.2 to 3.6 twice the ratio is an axle too, from 4.4 to 7.2 half of it; a count with one wheel held is halved, one with both turning doubled.
    [Theory]
    [InlineData(2.2, false, 4.4)]
    [InlineData(3.6, false, 7.2)]
    [InlineData(3.61, false, null)]
    [InlineData(3.0, true, null)]
    [InlineData(4.39, true, null)]
    [InlineData(4.4, true, 2.2)]
    [InlineData(7.2, true, 3.6)]
    [InlineData(5.0, false, null)]
    [InlineData(8.0, true, null)]
    public void Between_two_usual_axles_no_number_decides(double ratio, bool oneHeld, double? otherwise) => Assert.Equal(otherwise, RatioTraps.OfWheels(ratio, oneHeld)?.Otherwise);

    [Fact]
    public void It_is_asked_how_the_wheels_turned()
        => Assert.Equal("Did both wheels turn, though the count says that one was held? Then it is 2.37.", RatioTraps.OfWheels(4.74, oneHeld: true)!.InWords());

    [Fact]
    public void A_layshaft_that_would_turn_faster_than_the_input_is_asked_about()
    {
        Assert.Null(RatioTraps.OfConstantMesh(GearTrain.Read("29/19 31/14 25/18 1").OrRefuse()));
        Assert.Null(RatioTraps.OfConstantMesh(GearTrain.Read("1 31/14 25/18").OrRefuse()));
        Assert.Equal("Was the constant mesh 19/29 written driver first? Then it is 1.53.", RatioTraps.OfConstantMesh(GearTrain.Read("19/29 40/9 31/14 1").OrRefuse())!.InWords());
    }

    [Fact]
    public void A_gear_that_is_not_faster_than_the_one_before_is_asked_about()
    {
        var question = Assert.Single(RatioTraps.OfGears([("1", 3.5), ("2", 2.1), ("3", 1.4), ("4", 1), ("5", 1.22)]));

        Assert.Contains("gear 5", question.Asks, StringComparison.Ordinal);
        Assert.Equal(1 / 1.22, question.Otherwise!.Value, 1e-12);
    }

    [Fact]
    public void A_lowest_gear_faster_than_direct_is_asked_about()
        => Assert.Equal(4, Assert.Single(RatioTraps.OfGears([("1", 0.25), ("2", 0.2)])).Otherwise!.Value, 1e-12);

    [Fact]
    public void Falling_gears_are_not_asked_about() => Assert.Empty(RatioTraps.OfGears([("1", 3.5), ("2", 2.1), ("3", 1.4), ("4", 1), ("5", 0.82)]));

    // 10 propshaft turns to 41 of both wheels is 0.244, no axle, but 1/0.244 = 4.10: refused, with the likeliest slip named.
    [Fact]
    public void A_count_that_is_refused_names_the_slip_that_would_explain_it()
    {
        var refused = Assert.Throws<RefusedException>(() => TurnCount.Of([TurnReading.Read("41:10", Wheels.Together).OrRefuse()], new CountPrecision()));

        Assert.Contains("the other way round, propshaft first? Then it is 4.10.", refused.Message, StringComparison.Ordinal);
    }

    // 239 turns for ten of one held wheel are 47.8; neither half nor a hub makes an axle of that.
    [Fact]
    public void A_count_that_no_slip_explains_is_refused_without_a_guess()
        => Assert.EndsWith(
            "which wheels turned.",
            Assert.Throws<RefusedException>(() => TurnCount.Of([TurnReading.Read("10:239", Wheels.OneHeld).OrRefuse()], new CountPrecision())).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Teeth_that_make_too_long_an_axle_forgot_no_wheel_either() => Assert.Empty(RatioTraps.OfAxle(1.95, teethCounted: true));

    [Fact]
    public void Two_gears_alike_are_asked_about() => Assert.Contains("gear 3", Assert.Single(RatioTraps.OfGears([("1", 3.5), ("2", 1.4), ("3", 1.4)])).Asks, StringComparison.Ordinal);

    // One gear alone may be an overdrive, and a lowest gear may be direct.
    [Fact]
    public void A_gear_alone_and_a_direct_lowest_gear_are_not_asked_about()
    {
        Assert.Empty(RatioTraps.OfGears([("5", 0.82)]));
        Assert.Empty(RatioTraps.OfGears([("1", 1), ("2", 0.8)]));
    }
}
