using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Drivelines;

/// <summary>A number of a part that was measured more than once.</summary>
/// <param name="Position">The part.</param>
/// <param name="Number">What was measured, such as <c>ratio</c>.</param>
/// <param name="Unit">How to show it.</param>
/// <param name="Used">What the driveline is computed with: teeth, or else the latest, unless an earlier one agrees with it and is clearly better known.</param>
/// <param name="Other">Another measurement of the same.</param>
public sealed record MeasuredAgain(Position Position, string Number, Unit Unit, Known Used, Known Other)
{
    /// <summary>What is computed with instead, as wide as to hold all measurements; null where that is <see cref="Used"/>.</summary>
    public Known? RoomForAll { get; init; }

    /// <summary>Whether both can be right.</summary>
    public bool Agrees => Used.Value.AgreesWith(Other.Value);
}
