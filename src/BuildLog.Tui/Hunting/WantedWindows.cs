using System.Globalization;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Hunting;

/// <summary>What the windows of a driveline are as windows of a part that is hunted.</summary>
internal static class WantedWindows
{
    private const int Thousandths = 3;

    /// <summary>The kind that is hunted for a place in the driveline; null where none is.</summary>
    public static WantedKind? Kind(Position position) => position switch
    {
        Position.Transmission => WantedKind.Transmission,
        Position.Overdrive => WantedKind.Overdrive,
        Position.RearAxle or Position.FrontAxle => WantedKind.Axle,
        Position.Tyres => WantedKind.Tyres,
        _ => null,
    };

    /// <summary>The window rounded inwards, as it would be typed; null for what no wanted part is limited by, or where nothing is left.</summary>
    public static WantedWindow? Of(WindowOfPart part)
    {
        WindowOf? quantity = part.Position switch
        {
            Position.RearAxle or Position.FrontAxle => WindowOf.AxleRatio,
            Position.Overdrive => WindowOf.OverdriveRatio,
            Position.Transmission when part.Quantity.StartsWith("ratio of", StringComparison.Ordinal) => WindowOf.TopGearRatio,
            Position.Tyres => WindowOf.Circumference,
            _ => null,
        };
        return quantity is { } of && !part.Window.IsEmpty && Typed(of, part.Window) is { } typed ? typed : null;
    }

    /// <summary><c>2.85 to 3.21</c>, <c>at most 3.21</c>.</summary>
    public static string InWords(this WantedWindow window) => (window.Low.Length, window.High.Length) switch
    {
        (0, _) => $"at most {window.High}",
        (_, 0) => $"at least {window.Low}",
        _ => $"{WithoutUnit(window.Low, window.High)} to {window.High}",
    };

    // "1.862 m to 2.057 m" names its unit once.
    private static string WithoutUnit(string low, string high)
        => low.LastIndexOf(' ') is > 0 and var at && high.EndsWith(low[at..], StringComparison.Ordinal) ? low[..at] : low;

    private static WantedWindow? Typed(WindowOf quantity, Window window)
    {
        var places = quantity == WindowOf.Circumference ? Thousandths : 2;
        var step = Math.Pow(10, -places);
        var (low, high) = (Math.Ceiling(window.Low / step) * step, Math.Floor(window.High / step) * step);
        if (low > high || (double.IsInfinity(low) && double.IsInfinity(high))) return null;

        string Text(double side) => double.IsInfinity(side) ? "" : side.ToString($"F{places}", CultureInfo.InvariantCulture) + (quantity == WindowOf.Circumference ? " m" : "");
        return new(quantity, low > 0 ? Text(low) : "", Text(high));
    }
}
