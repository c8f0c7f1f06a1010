using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Search;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Search;
using BuildLog.Tui.Tests.Samples;

namespace BuildLog.Tui.Tests.Search;

public sealed class FoundPlaceTests
{
    [Fact]
    public void Whatever_was_measured_is_on_the_page_of_measurements()
    {
        Session[] every =
        [
            .. typeof(Session).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Session)) && !type.IsAbstract).Select(type => (Session)Activator.CreateInstance(type, nonPublic: true)!),
        ];

        Assert.NotEmpty(every);
        Assert.All([.. every.Select(session => session.Method.Text), "road test"], kind => Assert.Equal("Measured", Of(kind).Page));
        Assert.Equal("Papers", Of("attachment").Page);
    }

    [Fact]
    public void A_paper_is_with_the_vehicle_of_what_it_is_about_and_with_the_last_one_a_loose_part_was_on()
    {
        using var small = new SmallShop();
        var acts = new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric);
        var axle = small.Shop.Add(new AxleComponent { Name = "Harrow banjo" });
        small.Shop.FitSometime(axle, small.Bittern, Position.RearAxle, LooseDay.Read("1 May 2026")!);
        foreach (var (about, name) in new (Kept, string)[] { (small.Bittern, "side.jpg"), (axle, "pinion.jpg") })
            small.Shop.Add(new Attachment(about) { FileName = name, MediaType = "image/jpeg", Sha256 = new('a', 64), Length = 3 });

        Assert.All(["side", "pinion"], word => Assert.Equal((small.Bittern.Id, "Papers"), Place(word)));
        small.Shop.TakeOffSometime(axle, LooseDay.Read("3 May 2026")!);
        Assert.Equal((small.Bittern.Id, "Papers"), Place("pinion"));

        (long?, string) Place(string word) => acts.Find(word + ".jpg") is [var found] ? (found.VehicleId, found.Page) : default;
    }

    private static FoundPlace Of(string kind) => FoundPlace.Of(new Found(kind, "", null, null, null, "", Guid.Empty), null, null);
}
