using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Hunting;

/// <summary>What the windows of a driveline are as windows of a part that is hunted.</summary>
internal static class WantedWindows
{
    /// <summary>The kind that is hunted for a place in the driveline; null where none is.</summary>
    public static WantedKind? Kind(Position position) => position switch
    {
        Position.Transmission => WantedKind.Transmission,
        Position.Overdrive => WantedKind.Overdrive,
        Position.RearAxle or Position.FrontAxle => WantedKind.Axle,
        Position.Tyres => WantedKind.Tyres,
        _ => null,
    };

    /// <summary>What of a wanted part such a window limits; null for nothing that is hunted by a number.</summary>
    public static WindowOf? Quantity(WindowOfPart part) => part.Position switch
    {
        Position.RearAxle or Position.FrontAxle => WindowOf.AxleRatio,
        Position.Overdrive => WindowOf.OverdriveRatio,
        Position.Transmission when part.IsOfTopGear => WindowOf.TopGearRatio,
        Position.Tyres => WindowOf.Circumference,
        _ => null,
    };

    /// <summary>The window rounded inwards, as it would be typed and as it is shown everywhere; null for what no wanted part is limited by, or where nothing is left.</summary>
    public static WantedWindow? Of(WindowOfPart part)
        => Quantity(part) is { } of && !part.Window.IsEmpty && Typed(of, part.Window) is { } typed ? typed : null;

    /// <summary><c>2.85 to 3.21</c>, <c>at most 3.21</c>.</summary>
    public static string InWords(this WantedWindow window) => (window.Low.Length, window.High.Length) switch
    {
        (0, _) => Spoken($"at most {window.High}"),
        (_, 0) => Spoken($"at least {window.Low}"),
        _ => Spoken($"{WithoutUnit(window.Low, window.High)} to {window.High}"),
    };

    // "1.862 m to 2.057 m" names its unit once.
    private static string WithoutUnit(string low, string high)
        => low.LastIndexOf(' ') is > 0 and var at && high.EndsWith(low[at..], StringComparison.Ordinal) ? low[..at] : low;

    private static WantedWindow? Typed(WindowOf quantity, Window window)
    {
        var unit = quantity == WindowOf.Circumference ? Units.Metre : Units.One;
        var (low, high) = window.Written(unit);
        if (window.Low <= 0) low = "";
        if (low.Length == 0 && high.Length == 0) return null;

        string Text(string side) => side.Length == 0 ? "" : Rounded.WithUnit(side, unit);
        return new WantedWindow(quantity, Text(low), Text(high)) is var typed && typed.Read().IsEmpty ? null : typed;
    }
}
