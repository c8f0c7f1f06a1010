using BuildLog.Data;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Bench;

/// <summary>What the keys of the page of speeds ask for.</summary>
internal sealed class SpeedsActs(Shop shop, TimeProvider clock, ForNow forNow)
{
    /// <returns>What happened, or null if nothing did.</returns>
    public string? Choose(IFormHost host, long vehicleId)
    {
        var driveline = shop.DrivelineOn(shop.FindVehicle(vehicleId), clock.Today()).Driveline;
        return host.Fill(SpeedsForm.For(driveline, forNow.Speeds, forNow.Units)) ? Spoken("The table shows what was chosen, until you quit.") : null;
    }
}
