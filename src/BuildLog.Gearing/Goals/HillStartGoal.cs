using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>A hill that the owner wants to pull away on.</summary>
/// <param name="Gradient">Rise over run as typed.</param>
public sealed record HillStartGoal(Typed Gradient)
{
    /// <summary>Rise over run: above 0, at most 1.</summary>
    public Typed Gradient { get; init => field = value.AboveZero(Spoken("A hill to want, rise over run,"), "20 %", 1); } = Gradient.AboveZero(Spoken("A hill to want, rise over run,"), "20 %", 1);

    /// <summary>This gradient or a steeper one, rise over run.</summary>
    public Window Wanted => Window.AtLeast(Gradient.Value);

    /// <param name="gradient">Such as <c>25 %</c>; a bare number is per cent.</param>
    public static Parsed<HillStartGoal> Read(string gradient) => Goals.Gradient.Read(gradient).Then<HillStartGoal>(hill => new HillStartGoal(hill));
}
