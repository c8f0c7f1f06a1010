using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The values of one part that would meet a goal, the other parts staying as they are.</summary>
/// <param name="Position">The part.</param>
/// <param name="Quantity">What of it, such as <c>axle ratio</c>.</param>
/// <param name="Unit">How to show it; the windows are in its base unit.</param>
/// <param name="Window">With the other parts at their best values.</param>
/// <param name="SureWindow">Narrowed so that the verdict would be fits with today's uncertainties of the others; null if there is none.</param>
/// <param name="OpenedBy">The measurement that would open a sure window where there is none.</param>
public sealed record PartWindow(Position Position, string Quantity, Unit Unit, Window Window, Window? SureWindow, string? OpenedBy)
{
    /// <summary>It is of the gear that the vehicle cruises in, whatever that gear is called.</summary>
    public bool IsOfTopGear { get; init; }

    /// <summary>What is wanted falls as the part rises, in inverse proportion.</summary>
    internal bool IsInverse { get; private init; }

    /// <summary>Between which values such a part is made.</summary>
    public Window Made { get; init; } = PartsMade.Of(Position);

    /// <summary>The same where some of it is made; null where nothing is: a window may lie beyond where another part is what is wrong.</summary>
    /// <remarks>Its ends stay those of the wish, so that they are one number wherever they are told; <see cref="InPractice"/> tells how far such parts are made.</remarks>
    public PartWindow? AsMade
        => !Made.Overlaps(Window) ? null
            : this with { SureWindow = SureWindow is { } sure && Made.Overlaps(sure) ? sure : null };

    /// <summary>Goal = others · part.</summary>
    public static PartWindow Proportional(Position position, string quantity, Unit unit, Measured others, Window goal)
        => Make(position, quantity, unit, others, new(goal.Low / others.Value, goal.High / others.Value), Surely(others, goal));

    /// <summary>The parts that surely make goal = others · part; empty where there is none.</summary>
    public static Window Surely(Measured others, Window goal)
    {
        var (narrow, wide) = Spread(others);
        return new(narrow > 0 ? goal.Low / narrow : double.NaN, goal.High / wide);
    }

    /// <summary>Goal = others / part.</summary>
    public static PartWindow Inverse(Position position, string quantity, Unit unit, Measured others, Window goal)
    {
        var (narrow, wide) = Spread(others);

        // An open side of the goal is the open other side of the part.
        var window = Make(
            position, quantity, unit, others,
            new(Under(others.Value, goal.High), Over(others.Value, goal.Low)),
            new(Under(wide, goal.High), Over(narrow, goal.Low)));
        return window with { IsInverse = true };
    }

    /// <summary>The values that meet another wish of the same part as well; empty where none does.</summary>
    /// <remarks>Both have to be of one quantity in one base unit. Where nothing surely meets both, what opens a finding stays named.</remarks>
    public PartWindow And(PartWindow other)
    {
        var both = And(other.Window, other.SureWindow);
        return both with { OpenedBy = both.SureWindow is null ? OpenedBy ?? other.OpenedBy : null };
    }

    /// <summary>The values that lie in another window as well, and those that surely do.</summary>
    public PartWindow And(Window other, Window? sure)
        => this with { Window = Window.And(other), SureWindow = SureWindow is { } mine && sure is { } theirs && mine.Overlaps(theirs) ? mine.And(theirs) : null };

    /// <summary><c>axle ratio 2.85 to 3.21</c>, rounded inwards.</summary>
    public string InWords() => InWords(Unit);

    /// <summary>The same in another unit of the same kind.</summary>
    public string InWords(Unit unit) => $"{Quantity} {Window.InWords(unit)}";

    /// <summary>What would be sure with today's uncertainties; null where nothing is.</summary>
    /// <param name="unit">The unit to say it in, of the same kind.</param>
    /// <remarks>Whoever enters an end as it is written is known to half its last digit, rectangular: it is still sure then.</remarks>
    public string? SureInWords(Unit unit) => SureWindow?.AsTyped(unit) is { } sure ? $"{Quantity} {sure}" : null;

    /// <summary>What would be sure; where nothing is, what would do with the other numbers as they are, and that it is not sure.</summary>
    /// <param name="unit">The unit to say it in, of the same kind.</param>
    public string BestInWords(Unit unit) => SureInWords(unit) is { } sure
        ? $"{sure}{PartsMade.InPractice(SureWindow?.Told(unit) ?? Window, Made, unit)}"
        : Spoken($"{InWords(unit)}{InPractice(unit)}, though not surely{(OpenedBy is { } step ? Spoken($": {step} first") : "")}");

    /// <summary><c>, in practice 2.567 m or less</c>, where it reaches beyond what is made; else empty.</summary>
    /// <param name="unit">The unit to say it in, of the same kind.</param>
    public string InPractice(Unit unit) => PartsMade.InPractice(Window, Made, unit);

    private static PartWindow Make(Position position, string quantity, Unit unit, Measured others, Window window, Window sure)
        => sure.IsEmpty
            ? new(position, quantity, unit, window, null, Settling.BestStep(others))
            : new(position, quantity, unit, window, sure, null);

    private static (double Narrow, double Wide) Spread(Measured others) => (others.Interval95.Low, others.Interval95.High);

    private static double Under(double value, double limit) => double.IsPositiveInfinity(limit) ? double.NegativeInfinity : value / limit;

    private static double Over(double value, double limit) => limit > 0 ? value / limit : double.PositiveInfinity;
}
