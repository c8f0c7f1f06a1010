using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>What one check says of one driveline.</summary>
public sealed record Finding
{
    /// <summary>The source of a limit that the owner set.</summary>
    public const string OwnersGoal = "owner's goal";

    /// <summary>The check's id, such as <c>cruise</c>.</summary>
    public required string Check { get; init; }

    /// <summary>The trade's name of the matter.</summary>
    public required string Title { get; init; }

    public required Verdict Verdict { get; init; }

    public required Because Because { get; init; }

    /// <summary>The parts whose marriage it is about; the joint it hangs at. Empty where it is about the driveline as a whole.</summary>
    public required IReadOnlyList<Position> Between { get; init; }

    /// <summary>The sentence with the numbers.</summary>
    public required string Says { get; init; }

    /// <summary>The number that was judged, in the base unit of <see cref="Unit"/>; null where an input is missing.</summary>
    public Measured? Value { get; init; }

    public Unit Unit { get; init; } = Units.One;

    /// <summary>What was wanted, in the same base unit.</summary>
    public Window? Wanted { get; init; }

    /// <summary>Where the limit comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What would cure it, each a number or a part; the cheapest way to get a missing number where it is open.</summary>
    public IReadOnlyList<string> Cures { get; init; } = [];

    /// <summary>The same cures as numbers.</summary>
    public IReadOnlyList<PartWindow> Windows { get; init; } = [];

    /// <summary>The one measurement that would turn a watch into a fits or a clash.</summary>
    public string? SettledBy { get; init; }
}
