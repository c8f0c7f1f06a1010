using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
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

    // By hand: 31 in less half an inch, 30.5 in, is 774.7 mm; within a quarter of 235/75R15, 733.5 mm. A rim of 4 in suits none of these widths.
    [Theory]
    [InlineData(8, true)]
    [InlineData(4, false)]
    public void Flotation_sizes_are_listed_where_the_rim_suits_them(double rim, bool listed)
    {
        var size = TyreSizeText.Read("235/75R15").OrRefuse();
        var fitted = new TyreSet("ours", new(size.RollingCircumference, Source.MakersData), size) { Wheel = new(InventedCar.Exactly(rim * 0.0254)) };

        var names = ListedParts.Tyres(fitted).Select(tyres => tyres.Name).ToList();

        Assert.Equal(listed, names.Contains("31x10.50R15LT"));
        Assert.Equal(names.Count, names.Distinct().Count());
    }
}
