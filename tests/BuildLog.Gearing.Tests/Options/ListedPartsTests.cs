using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

public sealed class ListedPartsTests
{
    [Fact]
    public void Every_listed_gear_set_is_a_gearbox_and_none_stands_twice()
    {
        var boxes = ListedParts.Gearboxes(InventedCar.Plain.Transmission!);

        Assert.Equal(ListedGears.WithClutch.Count, boxes.Select(box => string.Join(' ', box.Part!.Gears.Select(gear => gear.Ratio.Value.Value))).Distinct().Count());
        Assert.All(boxes, box => Assert.Equal(Pool.Listed, box.Pool));
        Assert.All(boxes, box => Assert.InRange(box.Part!.Gears.Count, 3, 6));
    }

    // What nobody looked at stays open: a listed box has none of the ends and ratings of the one that is fitted.
    [Fact]
    public void A_listed_gearbox_takes_over_the_converter_and_nothing_else()
    {
        var automatic = InventedCar.Plain.Transmission! with { Converter = new Converter(true), Output = "ours", TorqueRating = InventedCar.Exactly(300) };

        Assert.All(ListedParts.Gearboxes(automatic), box => Assert.Equal((automatic.Converter, (string?)null, (Known?)null), (box.Part!.Converter, box.Part.Output, box.Part.TorqueRating)));
        Assert.Equal(ListedGears.Automatic.Count, ListedParts.Gearboxes(automatic).Count);
    }

    // By hand: 0.85 and 1.15 times 195 mm are 166 and 224 mm; 195/65R15 sits best on 6 in, from memory, and 325 mm asks for 11 in or more.
    [Fact]
    public void Sizes_stay_near_the_fitted_one_and_say_what_bars_them()
    {
        var size = TyreSizeText.Read("195/65R15").OrRefuse();
        var listed = ListedParts.Tyres(new("ours", new(size.RollingCircumference, Source.MakersData), size), new([])).ToDictionary(tyres => tyres.Name);

        Assert.Null(listed["205/60R15"].Barred);
        Assert.Null(listed["185/65R15"].Barred);
        Assert.StartsWith("listed tyre not made for a rim of 6.0 in", listed["325/40R15"].Barred, StringComparison.Ordinal);
        Assert.Equal("listed tyre over 15 % off the height of the one fitted (no limit is set)", listed["215/85R15"].Barred);
        Assert.All(listed.Values.Where(tyres => tyres.Barred is null), tyres => Assert.InRange(tyres.Part!.Size!.SectionWidth, 0.166, 0.224));
    }

    // 205/65R15 sits on rims of 5.5 to 7.5 in, from memory; both ends are its rims.
    [Theory]
    [InlineData(5.5, true)]
    [InlineData(7.5, true)]
    [InlineData(5.4, false)]
    [InlineData(7.6, false)]
    public void A_size_is_listed_on_the_rims_it_may_sit_on(double rim, bool listed)
    {
        var size = TyreSizeText.Read("215/65R15").OrRefuse();
        var fitted = new TyreSet("ours", new(size.RollingCircumference, Source.MakersData), size) { Wheel = new(InventedCar.Exactly(rim * 0.0254)) };

        Assert.Equal(listed, ListedParts.Tyres(fitted, new([])).Single(tyres => tyres.Name == "205/65R15").Barred is null);
    }

    // 43/13 behind hubs of 2.00 is 6.615 over all; the tag of the old gears says nothing of new ones.
    [Fact]
    public void Listed_gears_go_into_the_axle_that_is_fitted_with_its_hubs()
    {
        var portal = InventedCar.Axle(8.2) with { HubReduction = InventedCar.Exactly(2), Quoted = InventedCar.Exactly(8) };
        var listed = ListedParts.Axles(portal);

        Assert.Equal(ListedRatios.Common.Select(teeth => 2 * teeth.Ratio), listed.Select(axle => axle.Part!.Ratio!.Value.Value), (one, other) => Math.Abs(one - other) < 1e-12);
        Assert.All(listed, axle => Assert.Equal((null, 2.0), (axle.Part!.Quoted, axle.Part.HubReduction!.Value.Value)));
        Assert.Equal([0.70, 0.75, 0.78, 0.80, 0.82], ListedParts.Overdrives().Select(unit => unit.Part!.Ratio!.Value.Value));
        Assert.Empty(ListedParts.Tyres(InventedCar.Rolling(2), new([])));
    }

    // No wall higher than 215 mm is sold, from memory; the height of 345/65 would be 224.
    [Fact]
    public void No_wall_is_higher_than_any_that_is_sold()
    {
        var size = TyreSizeText.Read("205/65R15").OrRefuse();
        var walls = ListedParts.Tyres(new("ours", new(size.RollingCircumference, Source.MakersData), size), new([])).Where(tyres => tyres.Part!.Size!.Notation == "metric")
            .Select(tyres => (tyres.Part!.Size!.OverallDiameter - tyres.Part.Size.RimDiameter) / 2).ToList();

        Assert.InRange(walls.Max(), 0.2, 0.215);
        Assert.InRange(walls.Min(), 0.04, 0.041);
    }

    // 27 in are high enough on a rim of 18 in, a third of them being wall, and on 20 in 30 in are.
    [Theory]
    [InlineData(18, 27)]
    [InlineData(20, 30)]
    public void The_wall_of_a_flotation_tyre_is_a_sixth_of_its_height_at_least(double rim, int lowest)
        => Assert.Equal(lowest, ListedFlotations.On(rim).Min(size => Math.Round((size.Dimensions.Diameter / 0.0254) + BuildLog.Gearing.Tyres.Notations.Flotation.BelowMarked)));

    [Fact]
    public void Every_listed_part_is_known_again_by_what_is_typed_for_it()
    {
        Assert.All(ListedParts.Overdrives(), unit => Assert.Same(unit.Part, new List<Candidate<Overdrive>> { unit }.Called($"{unit.Part!.Ratio!.Value.Value:0.00}")));
        Assert.All(ListedParts.Gearboxes(InventedCar.Plain.Transmission!), box => Assert.Equal(box.Part!.Gears.Count, ToldGears.Read(box.Typed).OrRefuse().Told.Count));
    }

    // 235/75R15 sits on 7 in; it is 20.5 % wider and 15.5 % higher than 195/65R15, and too wide comes first. 155 mm are 20.5 % less, limit or none.
    [Fact]
    public void What_bars_a_size_is_said_as_it_is()
    {
        var size = TyreSizeText.Read("195/65R15").OrRefuse();
        TyreSet fitted = new("ours", new(size.RollingCircumference, Source.MakersData), size);
        string? Barred(TyreSet on, string name, OwnersGoals goals) => ListedParts.Tyres(on, goals).Single(tyres => tyres.Name == name).Barred;

        Assert.Equal("listed tyre not made for a rim of 6.0 in (best for the one fitted; not measured)", Barred(fitted, "345/30R15", OwnersGoals.None));
        Assert.Equal("listed tyre not made for a rim of 6.0 in", Barred(fitted with { Wheel = new(InventedCar.Exactly(6 * 0.0254)) }, "345/30R15", OwnersGoals.None));
        Assert.Equal("listed tyre over 15 % off the width of the one fitted (no limit is set)", Barred(fitted with { Wheel = new(InventedCar.Exactly(7 * 0.0254)) }, "235/75R15", OwnersGoals.None));
        Assert.Equal(
            "listed tyre over 15 % off the width of the one fitted",
            Barred(fitted with { Wheel = new(InventedCar.Exactly(5 * 0.0254)) }, "155/80R15", OwnersGoals.None with { TyreWidth = LengthLimit.ReadTyreWidth("230 mm").OrRefuse() }));
    }

    // The owner's limit of width says more than how near to the fitted tyre a size lies: 225 mm is 15.4 % wider.
    [Theory]
    [InlineData(null, false)]
    [InlineData("230 mm", true)]
    public void A_limit_of_the_owner_takes_the_place_of_nearness(string? limit, bool listed)
    {
        var size = TyreSizeText.Read("195/65R15").OrRefuse();
        var goals = new OwnersGoals([]) { TyreWidth = limit is null ? null : LengthLimit.ReadTyreWidth(limit).OrRefuse() };

        var wide = ListedParts.Tyres(new("ours", new(size.RollingCircumference, Source.MakersData), size), goals).Single(tyres => tyres.Name == "225/60R15");

        Assert.Equal(listed, wide.Barred is null);
    }

    // By hand: 31 in less half an inch, 30.5 in, is 774.7 mm; within 15 % of 235/75R15, 733.5 mm. A rim of 4 in suits none of these widths.
    [Theory]
    [InlineData(8, true)]
    [InlineData(4, false)]
    public void Flotation_sizes_are_listed_where_the_rim_suits_them(double rim, bool listed)
    {
        var size = TyreSizeText.Read("235/75R15").OrRefuse();
        var fitted = new TyreSet("ours", new(size.RollingCircumference, Source.MakersData), size) { Wheel = new(InventedCar.Exactly(rim * 0.0254)) };

        var names = ListedParts.Tyres(fitted, new([])).Where(tyres => tyres.Barred is null).Select(tyres => tyres.Name).ToList();

        Assert.Equal(listed, names.Contains("31x10.50R15LT"));
        Assert.Equal(names.Count, names.Distinct().Count());
    }
}
