using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>What the owner wants and what follows from it.</summary>
internal sealed class GoalPage : VehiclePage
{
    private readonly TextPage text = new() { Indent = 1, Width = Dim.Fill(), Height = Dim.Fill() };

    public GoalPage()
        : base("Goal", Spoken("Goal")) => Add(text);

    public override void Show(VehicleModel vehicle, bool fromTop) => text.Show(GoalText.Of(vehicle.Goal));
}
