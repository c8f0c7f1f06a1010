using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Fitments;

/// <summary>The first axle came on 3 May 2026 and made room for the second on 1 June.</summary>
public sealed class CorrectingAFitment : IDisposable
{
    private readonly TestShop test = new();
    private readonly Vehicle vehicle;
    private readonly AxleComponent first, second;

    public CorrectingAFitment()
    {
        (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, new(2026, 5, 3), "1 000", "frame had none");
        test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 6, 1), "2 000", "first whined");
    }

    public void Dispose() => test.Dispose();

    [Theory]
    [InlineData("2026-05-20")]
    [InlineData("2026-06-20")]
    public void Moves_a_swap_with_both_its_ends_and_back_again(string day)
    {
        var to = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        test.Shop.Correct(Second, facts => (facts.From, facts.Odometer, facts.Reason) = (to, "2 100", "first roared"));
        AssertSwap(to, "2 100", "first roared");
        Assert.Equal("corrected second on Brindle", test.Shop.Undo());
        AssertSwap(new(2026, 6, 1), "2 000", "first whined");
        test.Shop.Redo();
        AssertSwap(to, "2 100", "first roared");
    }

    [Fact]
    public void To_another_place_gives_the_first_one_its_place_back()
    {
        test.Shop.Correct(Second, facts => facts.Position = Position.FrontAxle);
        Assert.Equal([(Position.RearAxle, "first", null), (Position.FrontAxle, "second", null)], test.Shop.Fitments(vehicle).Select(fitment => (fitment.Position, fitment.Component.Name, fitment.To)));
        test.Shop.Undo();
        AssertSwap(new(2026, 6, 1), "2 000", "first whined");
    }

    [Fact]
    public void Struck_gives_the_first_one_its_place_back()
    {
        test.Shop.Remove(Second);
        var only = Assert.Single(test.Shop.Fitments(vehicle));
        Assert.Equal(("first", null, null, ""), (only.Component.Name, only.To, only.ToOdometer, only.ReasonOff));
        Assert.Equal("struck the fitting of second to Brindle", test.Shop.Undo());
        AssertSwap(new(2026, 6, 1), "2 000", "first whined");
    }

    [Fact]
    public void Struck_leaves_the_first_one_off_where_it_went_elsewhere_since()
    {
        var tansy = test.Vehicle("Tansy");
        test.Shop.Fit(first, tansy, Position.RearAxle, new(2026, 7, 1));
        test.Shop.Remove(Second);
        Assert.Equal(new DateOnly(2026, 6, 1), Assert.Single(test.Shop.Fitments(vehicle)).To);
        Assert.Null(Assert.Single(test.Shop.Fitments(tansy)).To);
    }

    [Fact]
    public void Is_refused_before_the_one_that_made_room_and_names_it()
        => Refused("The first, which made room, was fitted on 3 May 2026; fit the second on that day or later.", Second, facts => facts.From = new(2026, 5, 2));

    [Fact]
    public void Is_refused_where_the_part_was_elsewhere_and_names_that()
    {
        var third = test.Axle("third");
        var tansy = test.Vehicle("Tansy");
        test.Shop.Fit(third, tansy, Position.RearAxle, new(2026, 5, 1));
        test.Shop.TakeOff(third, new(2026, 5, 10));
        test.Shop.Fit(third, tansy, Position.FrontAxle, new(2026, 8, 1));
        Refused(
            "The third was fitted to Tansy as axle from 1 May 2026 to 10 May 2026, so it cannot have been fitted to Tansy from 5 May 2026 on.",
            test.Shop.Fitments(tansy)[1], facts => facts.From = new(2026, 5, 5));
    }

    [Fact]
    public void Is_refused_where_another_part_was_there_and_names_that()
    {
        var third = test.Axle("third");
        test.Shop.Fit(third, vehicle, Position.FrontAxle, new(2026, 7, 1));
        var sentence = Assert.Throws<RefusedException>(() => test.Shop.Correct(test.Shop.Fitments(vehicle)[2], facts => facts.Position = Position.RearAxle)).Message;
        Assert.Equal("The second was the axle of Brindle from 1 June 2026 on, so the third cannot have been that from 1 July 2026 on.", sentence);
        Assert.Equal(Position.FrontAxle, test.Shop.Fitments(vehicle)[2].Position);
    }

    [Fact]
    public void Is_refused_at_the_end_that_a_swap_made()
        => Refused("The first made room for the second on 1 June 2026: correct the day there first.", First, facts => facts.To = new(2026, 5, 20));

    [Fact]
    public void Is_refused_where_the_odometer_would_run_backwards()
    {
        Refused("The odometer of Brindle runs backwards: 1 000 km on 3 May 2026 is more than 900 km later, on 1 June 2026 (second fitted).", Second, facts => facts.Odometer = "900");
        Refused("The odometer of Brindle runs backwards: 3 000 km on 3 May 2026 is more than 2 000 km later, on 1 June 2026 (second fitted).", First, facts => facts.Odometer = "3 000");
    }

    [Fact]
    public void Is_refused_in_a_place_for_other_parts()
        => Refused("The second is no gearbox: it is fitted as axle.", Second, facts => facts.Position = Position.Transmission);

    [Fact]
    public void Of_what_another_window_changed_is_not_lost_silently()
    {
        var read = Second;
        test.Shop.Correct(Second, facts => facts.Reason = "noise");
        Assert.Equal(Fault.ChangedSince, Assert.Throws<RecordException>(() => test.Shop.Correct(read, facts => facts.Reason = "other")).Fault);
        Assert.Equal("noise", Second.Reason);
    }

    [Fact]
    public void Of_the_day_it_came_off_may_open_it_again()
    {
        test.Shop.TakeOff(second, new(2026, 7, 1), "2 500", "sold");
        test.Shop.Correct(Second, facts => (facts.To, facts.OdometerOff) = (new(2026, 7, 2), "2 600"));
        Assert.Equal((new DateOnly(2026, 7, 2), "2 600", "sold"), (Second.To!.Value, Second.ToOdometer!.Text, Second.ReasonOff));
        test.Shop.Correct(Second, facts => facts.To = null);
        Assert.Equal((null, null, ""), (Second.To, Second.ToOdometer, Second.ReasonOff));
    }

    private Fitment First => test.Shop.Fitments(vehicle)[0];

    private Fitment Second => test.Shop.Fitments(vehicle)[1];

    private void AssertSwap(DateOnly day, string odometer, string reason)
    {
        Assert.Equal((day, odometer, reason), (First.To!.Value, First.ToOdometer!.Text, First.ReasonOff));
        Assert.Equal((day, odometer, reason), (Second.From, Second.FromOdometer!.Text, Second.Reason));
        Assert.Equal([(null, "first"), ("first", "second")], test.Shop.History(vehicle).Select(swap => (swap.Removed?.Name, swap.Fitted?.Name)));
    }

    private void Refused(string sentence, Fitment fitment, Action<FitmentFacts> edit)
    {
        Assert.Equal(sentence, Assert.Throws<RefusedException>(() => test.Shop.Correct(fitment, edit)).Message);
        AssertSwap(new(2026, 6, 1), "2 000", "first whined");
    }
}
