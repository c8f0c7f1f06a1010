using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What share of a vehicle stands on its front axle, and whether that is usual.</summary>
/// <remarks><code>share = m front / (m front + m rear)</code>Common practice, no source: an engine over the front wheels or behind the rear ones, laden or not. It is a question, never a refusal.</remarks>
public static class FrontShare
{
    /// <summary>From an engine in the tail to an empty van that drives in front.</summary>
    public static readonly Window Usual = new(0.35, 0.70);

    /// <summary>That the share is unusual, as a sentence; null where it is not.</summary>
    /// <param name="front">Kilograms on the front axle.</param>
    /// <param name="both">Kilograms on both.</param>
    public static string? Doubt(double front, double both)
        => Usual.Contains(front / both) ? null
            : Spoken($"{Rounded.Fixed(front / both * 100, 0)} % of it in front is unusual; {Rounded.Fixed(Usual.Low * 100, 0)} to {Rounded.Fixed(Usual.High * 100, 0)} % is common practice. Was an axle misread?");
}
