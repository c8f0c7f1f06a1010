using BuildLog.Data.Components;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;

namespace BuildLog.Tui.Tests.Removing;

/// <summary>Bittern with an axle, and another axle on the shelf.</summary>
public sealed class RemovingTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly WorkbenchActs acts;
    private readonly AnsweringView view;
    private readonly AxleComponent spare;

    public RemovingTests()
    {
        acts = new(small.Shop, small.Clock, UnitSystem.Metric);
        view = new(acts.Open());
        acts.FitPart(view.Type(("part", "Harrow banjo"), ("ratio", "4.10"), ("day", "1 May 2026")), nameof(Position.RearAxle));
        spare = small.Shop.Add(new AxleComponent { Name = "spare axle" });
    }

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_vehicle_goes_with_all_that_hangs_on_it_and_z_brings_it_back()
    {
        acts.Remove(view.Pick("vehicle").Agree(true));
        Assert.Equal("Removed: Bittern. z brings it back.", view.Said[^1]);
        Assert.DoesNotContain(small.Shop.Vehicles(), vehicle => vehicle.Name == "Bittern");
        Assert.DoesNotContain(view.Model.Vehicles, vehicle => vehicle.Name == "Bittern");

        acts.Undo(view);
        Assert.Contains(view.Model.Vehicles, vehicle => vehicle.Name == "Bittern");
        Assert.Equal("Harrow banjo", small.Shop.DrivelineOn(small.Shop.FindVehicle("Bittern"), new(2026, 5, 20)).At(Position.RearAxle)!.Name);
    }

    [Fact]
    public void Nothing_goes_where_the_answer_is_to_keep_it()
    {
        acts.Remove(view.Pick("vehicle").Agree(false));
        acts.Remove(view.Pick(null));
        Assert.Contains(small.Shop.Vehicles(), vehicle => vehicle.Name == "Bittern");
        Assert.Contains(small.Shop.Parts(), part => part.Component.Id == spare.Id);
    }

    [Fact]
    public void A_part_on_the_shelf_goes_and_comes_back()
    {
        acts.Remove(view.Pick(FormattableString.Invariant($"part {spare.Id}")).Agree(true));
        Assert.Equal("Removed: axle spare axle. z brings it back.", view.Said[^1]);
        Assert.DoesNotContain(small.Shop.Parts(), part => part.Component.Id == spare.Id);
        acts.Undo(view);
        Assert.Contains(small.Shop.Parts(), part => part.Component.Id == spare.Id);
    }

    // By then a later change stands before it, so z would take that back first.
    [Fact]
    public void What_was_removed_comes_back_long_after()
    {
        acts.Remove(view.Pick(FormattableString.Invariant($"part {spare.Id}")).Agree(true));
        small.Shop.Add(new AxleComponent { Name = "another axle" });
        var removal = Assert.Single(small.Shop.Removals());
        acts.Remove(view.Pick(FormattableString.Invariant($"change {removal.Id}")));
        Assert.StartsWith("Brought back: removed axle spare axle", view.Said[^1], StringComparison.Ordinal);
        Assert.Contains(small.Shop.Parts(), part => part.Component.Name == "spare axle");
        Assert.Empty(small.Shop.Removals());
        small.Shop.Redo();
        Assert.Single(small.Shop.Removals());
    }

    [Fact]
    public void A_part_that_was_fitted_stays_for_its_story_but_may_be_gone_from_the_shop_and_come_back()
    {
        var fitted = small.Shop.Parts().Single(part => part.Component.Name == "Harrow banjo").Component;
        small.Shop.TakeOff(fitted, new(2026, 5, 10));
        var it = FormattableString.Invariant($"part {fitted.Id}");
        Ownership? Whose() => small.Shop.Parts().Single(part => part.Component.Id == fitted.Id).Component.Ownership;

        acts.Remove(view.Pick(it).Agree(false));
        Assert.Null(Whose());
        acts.Remove(view.Pick(it).Agree(true));
        Assert.Equal("Gone from the shop: axle Harrow banjo. z takes that back.", view.Said[^1]);
        Assert.Equal(Ownership.Gone, Whose());
        acts.Remove(view.Pick(it));
        Assert.Equal("Here again: axle Harrow banjo.", view.Said[^1]);
        Assert.Null(Whose());
    }
}
