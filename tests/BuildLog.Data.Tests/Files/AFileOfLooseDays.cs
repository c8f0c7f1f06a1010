using BuildLog.Data.Attachments;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>LooseDays.sql is the demo shop as the fifth schema held it: with days as far as they are known and the kinds of attachment.</summary>
public sealed class AFileOfLooseDays : IDisposable
{
    private readonly EarlierShop earlier = new("LooseDays.sql");

    public void Dispose() => earlier.Dispose();

    [Fact]
    public void Keeps_what_each_attachment_is()
    {
        var attachments = earlier.Shop.AttachmentsOf(earlier.Shop.FindVehicle("Tansy"));
        Assert.Equal([AttachmentKind.Photo, AttachmentKind.Receipt], attachments.Select(attachment => attachment.What).Order());
    }

    [Fact]
    public void Fits_another_set_to_the_front_wheels()
    {
        var vehicle = earlier.Shop.FindVehicle("Tansy");
        var set = new Data.Components.WheelSetComponent { Name = "front wheels", SizeText = "185/65R15" };
        earlier.Shop.Add(set);
        earlier.Shop.Fit(set, vehicle, Gearing.Drivelines.Position.FrontTyres, new DateOnly(2026, 1, 1));

        Assert.Equal("front wheels", earlier.Shop.DrivelineOn(vehicle, new DateOnly(2026, 1, 2)).Driveline.Tyres!.FrontPair!.Name);
    }
}
