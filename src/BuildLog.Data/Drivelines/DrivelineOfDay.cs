using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>What was fitted to a vehicle at the end of one day, with what is known of it today.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Day">The day.</param>
/// <param name="Driveline">The same as a chain to compute with.</param>
/// <param name="Fitted">The fitments that held, from engine to tyres.</param>
/// <param name="Numbers">Every number of its parts, then of the vehicle itself, and the evidence it rests on.</param>
public sealed record DrivelineOfDay(Vehicle Vehicle, DateOnly Day, Driveline Driveline, IReadOnlyList<Fitment> Fitted, IReadOnlyList<NumberKnown> Numbers)
{
    /// <summary>Sentences about what cannot be said for certain of that day, as it lies within what is left open of a fitting; empty where all is known.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>What sits there; null if nothing does.</summary>
    public Component? At(Position position) => Fitted.FirstOrDefault(fitment => fitment.Position == position)?.Component;
}

/// <summary>One number of the driveline and why it is believed.</summary>
/// <param name="Position">The part it belongs to; null for the vehicle itself.</param>
/// <param name="Number">What it is, such as <c>ratio</c>, <c>gear 3</c> or <c>rolling circumference</c>.</param>
/// <param name="Unit">How to show it.</param>
/// <param name="Used">The evidence that counts.</param>
/// <param name="Session">The session behind it, where there is one.</param>
/// <param name="PassedOver">What weaker evidence says, the strongest first; it may contradict.</param>
public sealed record NumberKnown(Position? Position, string Number, Unit Unit, Known Used, Session? Session, IReadOnlyList<Known> PassedOver)
{
    /// <summary><see cref="Used"/> leaves room for measurements that exclude each other, the first of those passed over among them.</summary>
    internal bool LeavesRoom { get; init; }

    /// <summary>The other measurements of it, where it was measured more than once.</summary>
    internal IEnumerable<MeasuredAgain> MeasuredAgain
        => Position is not { } part || !IsMeasured(Used) ? []
            : LeavesRoom ? PassedOver.Skip(1).Where(IsMeasured).Select(other => new MeasuredAgain(part, Number, Unit, PassedOver[0], other) { RoomForAll = Used })
            : PassedOver.Where(IsMeasured).Select(other => new MeasuredAgain(part, Number, Unit, Used, other));

    private static bool IsMeasured(Known known) => known.Source is Source.Measured or Source.TeethCounted;
}
