using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Hunting;

/// <summary>Listed parts that lie in a window: what to ask for by name, while anything inside would do.</summary>
internal static class WouldDo
{
    private const int Most = 4;

    /// <returns>The nearest to the middle of the window first; none where nothing listed lies there.</returns>
    public static IReadOnlyList<string> Of(Driveline driveline, OwnersGoals goals, WindowOfPart part)
    {
        var inside = Named(driveline, goals, part.Position).Where(each => (part.SureWindow?.ToldOnceWritten(part.Unit) ?? part.SureWindow ?? part.Window).Contains(each.Value)).ToList();
        var middle = double.IsFinite(part.Window.Low) && double.IsFinite(part.Window.High) ? (part.Window.Low + part.Window.High) / 2
            : double.IsFinite(part.Window.High) ? part.Window.High
            : part.Window.Low;
        return [.. inside.OrderBy(each => Math.Abs(each.Value - middle)).Select(each => each.Name).Distinct().Take(Most)];
    }

    private static IEnumerable<(string Name, double Value)> Named(Driveline driveline, OwnersGoals goals, Position position) => position switch
    {
        Position.RearAxle or Position.FrontAxle => Axles(driveline.DrivingAxle?.HubReduction?.Value.Value ?? 1),
        Position.Overdrive => ListedParts.Overdrives().Select(unit => (unit.Name, unit.Part!.Ratio!.Value.Value)),
        Position.Transmission when driveline.Transmission is { } box => ListedParts.Gearboxes(box).Select(each => (each.Name, each.Part!.Gears[^1].Ratio.Value.Value)),
        Position.Tyres when driveline.Tyres is { } tyres
            => ListedParts.Tyres(tyres, goals).Where(size => size.Barred is null).Select(size => (size.Name, size.Part!.RollingCircumference!.Value.Value)),
        _ => [],
    };

    private static IEnumerable<(string Name, double Value)> Axles(double hub)
        => ListedRatios.Common.Select(teeth => ($"{Rounded.Fixed(teeth.Ratio, 2)} ({teeth})", teeth.Ratio * hub));
}
