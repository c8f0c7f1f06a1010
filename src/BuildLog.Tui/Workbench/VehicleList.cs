using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>The vehicles at the left, each a small card: name, state, what its findings come to.</summary>
internal sealed class VehicleList : View
{
    private const int CardRows = 3;
    private IReadOnlyList<VehicleRow> vehicles = [];
    private int row;
    private int top;

    public VehicleList()
    {
        CanFocus = true;
        AddCommand(Command.Up, () => MoveTo(row - 1));
        AddCommand(Command.Down, () => MoveTo(row + 1));
        AddCommand(Command.PageUp, () => MoveTo(row - CardsShown));
        AddCommand(Command.PageDown, () => MoveTo(row + CardsShown));
        AddCommand(Command.Start, () => MoveTo(0));
        AddCommand(Command.End, () => MoveTo(int.MaxValue));
        this.BindMoves();
    }

    /// <summary>Another vehicle has been chosen.</summary>
    public event EventHandler<VehicleRow>? VehicleChosen;

    private int CardsShown => CardsIn(Viewport.Height - 1) >= vehicles.Count ? CardsIn(Viewport.Height - 1) : CardsIn(Viewport.Height - 2);

    private static int CardsIn(int rows) => Math.Max(1, rows / CardRows);

    public void Show(IReadOnlyList<VehicleRow> newVehicles, long? chosenId)
    {
        vehicles = newVehicles;
        var at = newVehicles.Select((vehicle, index) => (vehicle, index)).FirstOrDefault(v => v.vehicle.Id == chosenId, (null!, row)).index;
        row = Math.Clamp(at, 0, Math.Max(0, newVehicles.Count - 1));
        SetNeedsDraw();
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var width = Viewport.Width;
        top = Math.Clamp(top, row - CardsShown + 1, row);
        top = Math.Clamp(top, 0, Math.Max(0, vehicles.Count - CardsShown));

        this.Paint(0, 0, width, TextLine.Of(Spoken($" Vehicles {(vehicles.Count > 0 ? $"{vehicles.Count}" : "")}"), Tone.Quiet));
        this.PaintEmptyRows(1);
        for (var i = 0; i < CardsShown && top + i < vehicles.Count; i++) DrawCard(vehicles[top + i], 1 + (i * CardRows), width, top + i == row);
        this.Paint(1, Viewport.Height - 1, TextFit.Cut(new OutOfView(top, vehicles.Count - top - CardsShown).InWords, width - 1), Tone.Quiet);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !mouse.IsSingleClicked) return base.OnMouseEvent(mouse);
        SetFocus();
        var clicked = top + ((at.Y - 1) / CardRows);
        if (at.Y >= 1 && clicked < vehicles.Count) MoveTo(clicked);
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    private void DrawCard(VehicleRow vehicle, int y, int width, bool chosen)
    {
        var tone = vehicle.Counts?.Worst?.Tone() ?? Tone.Quiet;
        var name = TextFit.Exactly((chosen ? "›" : " ") + vehicle.Name, width);
        if (chosen) this.Paint(0, y, name, HasFocus ? Theme.Palette.Cursor : Theme.Palette.Chosen);
        else this.Paint(0, y, name, Tone.Strong);
        this.Paint(0, y + 1, width, TextLine.Of("  " + vehicle.State, Tone.Quiet));
        this.Paint(0, y + 2, width, TextLine.Of("  " + (vehicle.Counts?.Summary(width - 2) ?? "…"), tone));
    }

    private bool? MoveTo(int target)
    {
        var before = row;
        row = Math.Clamp(target, 0, Math.Max(0, vehicles.Count - 1));
        SetNeedsDraw();
        if (row != before) VehicleChosen?.Invoke(this, vehicles[row]);
        return true;
    }
}
