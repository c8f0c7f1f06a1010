using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests.Changes;

public sealed class UndoingAChange : IDisposable
{
    private static readonly DateOnly May3 = new(2026, 5, 3);
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Takes_back_what_was_added_and_brings_it_again()
    {
        test.Vehicle("Brindle");
        Assert.Equal("added vehicle Brindle", test.Shop.Undo());
        Assert.Empty(test.Shop.Vehicles());
        test.Reopen();
        Assert.Equal("added vehicle Brindle", test.Shop.Redo());
        Assert.Equal("Brindle", Assert.Single(test.Shop.Vehicles()).Name);
    }

    [Fact]
    public void Puts_every_value_back_as_it_was_but_counts_the_version_on()
    {
        var before = test.Shop.Add(new Vehicle { Name = "Brindle", Owner = "Agnes", Mass = Noted.Of(Spec.Mass, "1450 kg", Source.Measured) });
        var after = test.Shop.Change(before, v =>
        {
            (v.Name, v.State, v.BodyClass) = ("Bramble", VehicleState.OnTheRoad, BuildLog.Gearing.RoadLoad.BodyClass.All[0].Name);
            v.Mass = null;
            v.Altitude = Noted.Of(Spec.Altitude, "300 m", Source.OwnersWord);
        });
        test.Reopen();
        Assert.Equal("changed vehicle Bramble", test.Shop.Undo());
        var back = test.Shop.FindVehicle("Brindle");
        Assert.Equal(("Agnes", VehicleState.Planned, null, "1450 kg"), (back.Owner, back.State, back.BodyClass, back.Mass!.Text));
        Assert.Null(back.Altitude);
        Assert.True(back.Version > after.Version);

        test.Shop.Redo();
        var again = test.Shop.FindVehicle("Bramble");
        Assert.Equal((VehicleState.OnTheRoad, "300 m"), (again.State, again.Altitude!.Text));
        Assert.Null(again.Mass);
        Assert.True(again.Version > back.Version);
    }

    [Fact]
    public void Brings_back_a_session_with_its_readings_to_the_last_letter()
    {
        var axle = test.Axle("Harrow axle");
        var session = test.Shop.Add(new TurnCountSession(axle) { Date = May3, Wheels = Wheels.OneHeld, Notes = "chalk", Readings = ["10:20.5", "10:20 1/2"] });
        test.Shop.Remove(session);
        Assert.Empty(test.Shop.Sessions(axle));
        Assert.Equal(0L, test.Ask("SELECT count(*) FROM Readings"));
        test.Reopen();
        Assert.Equal("removed turn count of 3 May 2026", test.Shop.Undo());
        var back = Assert.Single(test.Shop.Sessions(axle));
        Assert.Equal((session.Id, session.Uid, "chalk"), (back.Id, back.Uid, back.Notes));
        Assert.Equal(["10:20.5", "10:20 1/2"], back.Readings);
    }

    [Fact]
    public void Brings_back_the_gears_a_correction_replaced()
    {
        var box = test.Gearbox("3.54", "2.12", "1.00");
        test.Shop.Change(box, b => b.Gears = TransmissionComponent.GearsFrom(Source.Measured, "3.50", "1.00"));
        test.Shop.Undo();
        Assert.Equal(["3.54", "2.12", "1.00"], Box().Gears.Select(gear => gear.Ratio.Text));
        test.Shop.Redo();
        Assert.Equal(["3.50", "1.00"], Box().Gears.Select(gear => gear.Ratio.Text));

        TransmissionComponent Box() => (TransmissionComponent)Assert.Single(test.Shop.Parts()).Component;
    }

    [Fact]
    public void Takes_a_swap_back_as_one()
    {
        var (vehicle, first, second) = (test.Vehicle("Brindle"), test.Axle("first"), test.Axle("second"));
        test.Shop.Fit(first, vehicle, Position.RearAxle, May3, "100 km");
        test.Shop.Fit(second, vehicle, Position.RearAxle, new(2026, 6, 1), "200 km", "whine");
        Assert.Equal("fitted second to Brindle", test.Shop.Undo());
        var only = Assert.Single(test.Shop.Fitments(vehicle));
        Assert.Equal(("first", null, null, ""), (only.Component.Name, only.To, only.ToOdometer, only.ReasonOff));
        Assert.Equal("fitted second to Brindle", test.Shop.Redo());
        Assert.Equal([("first", "whine"), ("second", "")], test.Shop.Fitments(vehicle).Select(fitment => (fitment.Component.Name, fitment.ReasonOff)));
        Assert.Equal("fitted second to Brindle", test.Shop.Undo());
        Assert.Equal("fitted first to Brindle", test.Shop.Undo());
        Assert.Empty(test.Shop.Fitments(vehicle));
    }

    [Fact]
    public void Goes_back_and_forth_step_by_step()
    {
        foreach (var name in (string[])["a", "b", "c"]) test.Vehicle(name);
        Assert.Equal(["added vehicle c", "added vehicle b"], new[] { test.Shop.Undo(), test.Shop.Undo() });
        Assert.Equal("added vehicle b", test.Shop.Redo());
        Assert.Equal("added vehicle b", test.Shop.Undo());
        Assert.Equal(["added vehicle b", "added vehicle c"], new[] { test.Shop.Redo(), test.Shop.Redo() });
        Assert.Equal("Nothing was undone that could be done again.", Refused(() => test.Shop.Redo()));
        for (var k = 0; k < 3; k++) test.Shop.Undo();
        Assert.Equal("There is no change to undo.", Refused(() => test.Shop.Undo()));
        Assert.Empty(test.Shop.Vehicles());
    }

    [Fact]
    public void Is_done_again_only_while_nothing_new_was_entered()
    {
        test.Vehicle("Brindle");
        test.Shop.Undo();
        test.Vehicle("Tansy");
        Assert.StartsWith("Nothing can be done again: 'added vehicle Tansy' was entered since the last undo.", Refused(() => test.Shop.Redo()), StringComparison.Ordinal);
        Assert.Equal("Tansy", Assert.Single(test.Shop.Vehicles()).Name);
    }

    [Fact]
    public void Is_refused_where_a_later_change_stands_on_it()
    {
        var vehicle = test.Vehicle("Brindle");
        var added = Assert.Single(test.Shop.Changes());
        test.Shop.Change(vehicle, v => v.Owner = "Agnes");
        Assert.Equal("'added vehicle Brindle' cannot be taken back. 'changed vehicle Brindle' came later and stands on it: undo that first.", Refused(() => test.Shop.Undo(added)));
        test.Shop.Undo();
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400" });
        Assert.Equal(
            "'added vehicle Brindle' cannot be taken back. 'added cruise goal 110 km/h at 2400 of Brindle' came later and stands on it: undo that first.",
            Refused(() => test.Shop.Undo(added)));
        Assert.Single(test.Shop.Goals(vehicle).OfType<CruiseGoalEntry>());
    }

    [Fact]
    public void Is_refused_where_something_hangs_on_it()
    {
        var (vehicle, axle) = (test.Vehicle("Brindle"), test.Axle("Harrow axle"));
        var added = test.Shop.Changes()[0];
        test.Shop.Fit(axle, vehicle, Position.RearAxle, May3);
        Assert.Equal("'added axle Harrow axle' cannot be taken back. 'fitted Harrow axle to Brindle' came later and stands on it: undo that first.", Refused(() => test.Shop.Undo(added)));
        Assert.Single(test.Shop.Fitments(vehicle));
    }

    [Fact]
    public void Is_refused_where_what_it_speaks_of_is_gone()
    {
        var axle = test.Axle("Harrow axle");
        var session = test.Shop.Add(new TurnCountSession(axle) { Date = May3, Wheels = Wheels.OneHeld, Readings = ["10:20.5"] });
        test.Shop.Remove(session);
        var removed = test.Shop.Changes()[0];
        test.Shop.Remove(axle);
        Assert.Equal(
            "'removed turn count of 3 May 2026' cannot be taken back. 'removed axle Harrow axle' came later and stands on it: undo that first.",
            Refused(() => test.Shop.Undo(removed)));
    }

    [Fact]
    public void Is_refused_where_the_rules_no_longer_allow_it()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Remove(vehicle);
        var removed = test.Shop.Changes()[0];
        test.Vehicle("brindle");
        Assert.Contains("the record already holds one like it", Refused(() => test.Shop.Undo(removed)), StringComparison.Ordinal);

        var other = test.Vehicle("Tansy");
        var (early, late) = (test.Axle("early"), test.Gearbox("1.00"));
        var wrong = test.Shop.Fit(early, other, Position.RearAxle, May3, "500 km");
        test.Shop.Remove(wrong);
        var struck = test.Shop.Changes()[0];
        test.Shop.Fit(late, other, Position.Transmission, new(2026, 6, 1), "400 km");
        Assert.EndsWith("The odometer of Tansy runs backwards: 500 km on 3 May 2026 is more than 400 km later, on 1 June 2026 (Delmere box fitted).", Refused(() => test.Shop.Undo(struck)), StringComparison.Ordinal);
    }

    [Fact]
    public void Once_is_enough()
    {
        test.Vehicle("Brindle");
        var added = Assert.Single(test.Shop.Changes());
        test.Shop.Undo(added);
        Assert.Equal("'added vehicle Brindle' was undone already.", Refused(() => test.Shop.Undo(added)));
    }

    [Fact]
    public void Sees_what_another_window_did()
    {
        var other = test.Open();
        test.Vehicle("Brindle");
        Assert.Equal("added vehicle Brindle", other.Undo());
        Assert.Empty(test.Shop.Vehicles());
        Assert.Equal("added vehicle Brindle", test.Shop.Redo());
        Assert.Single(other.Vehicles());
    }

    [Fact]
    public void Keeps_the_old_state_from_being_taken_for_the_one_that_was_read()
    {
        var read = test.Vehicle("Brindle");
        test.Shop.Change(read, v => v.Owner = "Agnes");
        test.Shop.Undo();
        Assert.Throws<BuildLog.Data.Files.RecordException>(() => test.Shop.Change(read, v => v.Owner = "Piet"));
    }

    private static string Refused(Action act) => Assert.Throws<RefusedException>(act).Message;
}
