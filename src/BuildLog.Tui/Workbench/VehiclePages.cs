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
        PageShown += (_, _) => FillPage();
    }

    /// <summary>The page in view.</summary>
    public VehiclePage InView => (VehiclePage)Page;

    public void Show(VehicleModel newVehicle)
    {
        vehicle = newVehicle;
        FillPage();
    }

    private void FillPage()
    {
        var before = filled.GetValueOrDefault(InView);
        if (vehicle is null || ReferenceEquals(before, vehicle)) return;
        filled[InView] = vehicle;
        InView.Show(vehicle, fromTop: before?.Id != vehicle.Id);
    }
}
