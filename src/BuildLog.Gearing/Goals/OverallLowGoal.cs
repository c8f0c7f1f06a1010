using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>The overall ratio that the owner wants in the lowest gear and range, at least.</summary>
/// <param name="Ratio">Engine turns per wheel turn, as typed.</param>
public sealed record OverallLowGoal(Typed Ratio)
{
    private const double Lowest = 2;
    private const double Highest = 1000;

    /// <summary>Engine turns per wheel turn: above 0, at most 1000; typed, from 2.</summary>
    public Typed Ratio { get; init => field = value.AboveZero(Spoken("An overall low ratio"), "40", Highest); } = Ratio.AboveZero(Spoken("An overall low ratio"), "40", Highest);

    /// <summary>This ratio or a lower gearing, which is the greater number.</summary>
    public Window Wanted => Window.AtLeast(Ratio.Value);

    /// <param name="ratio">Such as <c>40</c>.</param>
    public static Parsed<OverallLowGoal> Read(string ratio)
        => QuantityText.ReadPlain(ratio, Kind.Number).Then<OverallLowGoal>(typed => typed.Value is >= Lowest and <= Highest
            ? new OverallLowGoal(typed)
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no overall low ratio: it lies between 2 and 1000."), "40"));
}
