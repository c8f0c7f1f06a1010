using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.RoadTests;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Tests.Papers;
using SkiaSharp;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>What the shop keeps of a vehicle beside its driveline comes to its sheet.</summary>
public sealed class FolderOnTheSheetTests : IDisposable
{
    private readonly ShopWithPhotos shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void The_first_photo_of_the_vehicle_stands_beside_the_title_and_the_others_before_and_after()
    {
        shop.AttachPhoto(shop.Brindle, "frame-after.jpg", SKColors.Green);
        shop.AttachPhoto(shop.Brindle, "front.jpg", SKColors.Red);
        shop.AttachPhoto(shop.Brindle, "DSC_0001.jpg", SKColors.Blue, "Before: the frame");

        var sheet = Content();

        Assert.Equal("front.jpg", sheet.TitlePhoto?.Name);
        Assert.Equal([("the frame", PhotoMoment.Before), ("frame", PhotoMoment.After)], sheet.Photos.Select(photo => (photo.Caption ?? "", photo.When)));
    }

    [Fact]
    public void A_receipt_is_no_photo_of_the_vehicle()
    {
        var receipt = shop.AttachPhoto(shop.Brindle, "R-104.jpg", SKColors.White);
        shop.Shop.Change(shop.Shop.Costs(shop.Brindle)[0], cost => cost.ReceiptId = receipt.Id);

        Assert.Null(Content().TitlePhoto);
        Assert.Contains(Content(costs: true).Costs!.Rows, row => row.Receipt == "R-104.jpg");
    }

    [Fact]
    public void A_number_read_off_the_metal_joins_the_title_once()
    {
        shop.Shop.Add(new IdentityNumber(shop.Brindle, Identified.RearAxle) { Number = "HX 43 9", Where = "tube, left" });
        shop.Shop.Add(new IdentityNumber(shop.Brindle, Identified.Chassis) { Number = shop.Brindle.ChassisNumber.Length > 0 ? shop.Brindle.ChassisNumber : "WX-1" });

        var identity = Content().Vehicle.Identity;

        Assert.Contains(new LabelledLine("Rear axle number", "HX 43 9 (tube, left)"), identity);
        Assert.Single(identity, line => line.Label == "Chassis number");
    }

    [Fact]
    public void A_defect_is_open_until_something_was_done_about_it()
    {
        var test = shop.Shop.Add(new RoadTest(shop.Brindle) { Date = new(2026, 11, 20), Defects = "oil at the pinion seal" });
        Assert.Contains("oil at the pinion seal (road test of 20 November 2026).", Content().Defects);

        shop.Shop.Change(test, entry => entry.Fix = "new seal");
        Assert.DoesNotContain("oil at the pinion seal (road test of 20 November 2026).", Content().Defects);
        Assert.Contains(Content().RoadTests, row => row is { Defects: "oil at the pinion seal", Fix: "new seal" });
    }

    [Fact]
    public void What_is_to_be_done_before_handover_is_not_kept_quiet()
    {
        shop.Shop.Add(new Job(shop.Brindle) { Title = "bleed the brakes", BeforeHandover = true });

        Assert.Contains("Bleed the brakes.", Content().ToDo);
    }

    [Fact]
    public void What_is_not_finished_and_what_is_away_is_not_kept_quiet_either()
    {
        var job = shop.Shop.Add(new Job(shop.Brindle) { Title = "line up the wheels", Due = new(2027, 3, 1) });
        shop.Shop.Add(new Job(shop.Brindle) { Title = "paint the door", State = JobState.Done });
        shop.Shop.Add(new OutsideWork(job, shop.Shop.Add(new Data.Suppliers.Supplier { Name = "Ambery Balancing" })) { What = "propshaft balanced", Sent = new(2026, 5, 3) });

        Assert.Contains("Line up the wheels, due 1 March 2027.", Content().Unfinished);
        Assert.DoesNotContain(Content().Unfinished, line => line.Contains("paint", StringComparison.OrdinalIgnoreCase));
        Assert.Contains("Propshaft balanced: sent to Ambery Balancing 3 May 2026, still away.", Content().Unfinished);
    }

    [Fact]
    public void Hours_and_costs_are_told_only_when_asked_for_and_to_the_shop_itself()
    {
        Assert.True(Content() is { Work: null, Costs: null });
        Assert.Equal("3:30 h", Content(hours: true).Work?.Total);
        Assert.Equal(["198.60 EUR"], Content(costs: true).Costs?.Totals);
        Assert.True(Content(SheetReader.Own) is { Work: not null, Costs: not null });
    }

    private SheetContent Content(SheetReader reader = SheetReader.Buyer, bool hours = false, bool costs = false)
    {
        var bench = VehicleOnBench.Read(shop.Shop, shop.Brindle, new DateOnly(2026, 11, 26));
        return SheetOfVehicle.Content(bench, VehicleFolder.Read(shop.Shop, shop.Brindle), new(reader, WithHours: hours, WithCosts: costs), UnitSystem.Metric, DateTimeOffset.UnixEpoch);
    }
}
