using BuildLog.Data;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Fitments;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Fitments;

/// <summary>Puts right what was entered of a swap, or strikes one that never was. Each act returns what happened, or null if nothing did.</summary>
public sealed class FitmentActs(Shop shop, TimeProvider clock)
{
    private DateOnly Today => clock.Today();

    /// <param name="row">The swap's index, counted from the latest.</param>
    public string? Correct(IFormHost host, long vehicleId, int row)
    {
        var fitment = Find(vehicleId, row);
        return host.Fill(FitmentForm.For(fitment, Today, edit => shop.Correct(fitment, edit))) ? Spoken($"Corrected: {fitment.Component.Name}.") : null;
    }

    public string Strike(long vehicleId, int row)
    {
        var fitment = Find(vehicleId, row);
        shop.Remove(fitment);
        return Spoken($"Struck: {fitment.Component.Name} {fitment}. z brings it back.");
    }

    // The fitting of what came in; of a part that only came off, the one that ended.
    private Fitment Find(long vehicleId, int row)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        var swap = shop.History(vehicle)[^(row + 1)];
        return shop.Fitments(vehicle).Last(fitment => IsOf(fitment, swap));
    }

    private static bool IsOf(Fitment fitment, Swap swap) => fitment.Position == swap.Position && (swap.Fitted is { } fitted
        ? fitment.ComponentId == fitted.Id && fitment.From == swap.Date
        : fitment.ComponentId == swap.Removed!.Id && fitment.To == swap.Date);
}
