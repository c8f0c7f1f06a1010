using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The pages below the strip, one at a time; only the one in view is filled.</summary>
internal sealed class VehiclePages : PageSwitcher
{
    private readonly Dictionary<VehiclePage, VehicleModel> filled = [];
    private VehicleModel? vehicle;

    public VehiclePages(IReadOnlyList<VehiclePage> pages)
    {
        foreach (var page in pages) AddPage(page);
    }

    /// <summary>The page in view.</summary>
    public VehiclePage InView => (VehiclePage)Page;

    public void Show(VehicleModel newVehicle)
    {
        vehicle = newVehicle;
        Fill();
    }

    /// <summary>Fills the page in view, unless it shows this vehicle as it is already. What cannot be read is asked for again another time.</summary>
    public void Fill()
    {
        var before = filled.GetValueOrDefault(InView);
        if (vehicle is null || ReferenceEquals(before, vehicle)) return;
        InView.Show(vehicle, fromTop: before?.Id != vehicle.Id);
        filled[InView] = vehicle;
    }
}
