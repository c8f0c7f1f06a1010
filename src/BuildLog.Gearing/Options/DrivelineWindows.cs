using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>What each part may be, from all goals and limits together.</summary>
/// <remarks>
/// The intersection of the windows that the checks' findings already carry, and of those that only a search asks for
/// (<see cref="SoughtWindows"/>). A limit that is only common practice warns and never clashes, so it narrows no window.
/// </remarks>
public static class DrivelineWindows
{
    /// <summary>What each part may be, all checks looked at first.</summary>
    public static IReadOnlyList<WindowOfPart> Of(Driveline driveline, OwnersGoals goals) => Of(driveline, goals, AllChecks.Look(driveline, goals));

    /// <param name="driveline">The parts.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="findings">What the checks said of them.</param>
    public static IReadOnlyList<WindowOfPart> Of(Driveline driveline, OwnersGoals goals, IReadOnlyList<Finding> findings)
    {
        var wishes = findings
            .Where(finding => finding.LimitIsVerified)
            .SelectMany(finding => finding.Windows.Where(window => !IsOfTheOtherAxle(driveline, finding, window)).Select(window => new Wish(finding, window)))
            .Concat(SoughtWindows.Of(driveline, goals, findings));
        return
        [
            .. wishes
                .Where(wish => wish.Window.Position != Position.Speedometer)
                .GroupBy(wish => (wish.Window.Position, wish.Window.Quantity))
                .Select(group => Together([.. group]))
                .Select(window => window with { Made = PartsMade.Of(window.Position, window.IsOfTopGear, driveline) })
                .OrderBy(window => window.Position),
        ];
    }

    /// <summary>What the driving axle's ratio may be; null where nothing wanted depends on it, or too little is known.</summary>
    public static WindowOfPart? OfAxle(Driveline driveline, OwnersGoals goals)
        => Of(driveline, goals).FirstOrDefault(window => window.Position == driveline.DrivingPosition);

    // The other axle is geared alike with it, so it does not hold it.
    private static bool IsOfTheOtherAxle(Driveline driveline, Finding finding, PartWindow window)
        => window.Position == driveline.DrivingPosition && finding.Between.Contains(driveline.OtherPosition);

    private static WindowOfPart Together(IReadOnlyList<Wish> wishes)
    {
        var (lowest, highest) = (wishes.MaxBy(wish => wish.Window.Window.Low)!, wishes.MinBy(wish => wish.Window.Window.High)!);
        var window = new Window(lowest.Window.Window.Low, highest.Window.Window.High);
        var sure = Sure(wishes);
        var (position, quantity, unit) = (wishes[0].Window.Position, wishes[0].Window.Quantity, wishes[0].Window.Unit);
        return new(position, quantity, unit, window, sure, sure is null && !window.IsEmpty ? OpenedBy(wishes) : null)
        {
            IsOfTopGear = wishes[0].Window.IsOfTopGear,
            Lowest = double.IsFinite(window.Low) ? Demand.Of(lowest, window.Low) : null,
            Highest = double.IsFinite(window.High) ? Demand.Of(highest, window.High) : null,
        };
    }

    private static Window? Sure(IReadOnlyList<Wish> wishes)
    {
        if (wishes.Any(wish => wish.Window.SureWindow is null)) return null;

        var sure = new Window(wishes.Max(wish => wish.Window.SureWindow!.Value.Low), wishes.Min(wish => wish.Window.SureWindow!.Value.High));
        return sure.IsEmpty ? null : sure;
    }

    // Where each wish alone leaves a sure window but all together none, the number that is judged least surely comes first.
    private static string? OpenedBy(IReadOnlyList<Wish> wishes)
        => wishes.Select(wish => wish.Window.OpenedBy).FirstOrDefault(step => step is not null)
            ?? wishes.Select(wish => wish.Finding.Value).Where(value => value is not null).OrderByDescending(value => value!.RelativeUncertainty)
                .Select(value => Settling.BestStep(value!)).FirstOrDefault(step => step is not null);
}

/// <summary>One finding's window of one part.</summary>
internal sealed record Wish(Finding Finding, PartWindow Window);
