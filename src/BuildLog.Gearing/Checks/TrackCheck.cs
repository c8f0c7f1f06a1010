using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The track is no wider than the owner's limit: the wings, or the rule of the country.</summary>
/// <remarks>Formula see <see cref="WheelPlace"/>. A cure is the offset that would do, and its like as hub faces.</remarks>
internal sealed class TrackCheck : ICheck
{
    public string Id => "track";

    public string Title => Spoken("Track");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.Track is { } limit && driveline.Tyres is { } tyres
            ? new[] { (At: Position.FrontAxle, Axle: driveline.FrontAxle), (At: Position.RearAxle, Axle: driveline.RearAxle) }
                .Where(place => place.Axle is not null)
                .Select(place => Judge(place.At, place.Axle!, tyres.On(place.At), limit))
            : [];

    private Finding Judge(Position at, Axle axle, TyreSet tyres, LengthLimit limit)
    {
        IReadOnlyList<Position> joint = [at, Position.Tyres];
        if (axle.HubFaces is not { } faces || tyres.Wheel?.Offset is not { } offset)
            return this.Open(joint, Spoken($"The {at.InWords()}'s track"), [.. Lacking(at.InWords(), axle, tyres)], Spoken("owner's limit"));

        var track = WheelPlace.Track(faces.Value, offset.Value);
        var wanted = Window.AtMost(limit.Most.Value);
        return this.Judged(new(
            joint, track, Units.Millimetre, wanted,
            $"The {at.InWords()}'s track is {Said.Number(track, Units.Millimetre, 0)}; wanted {limit.Most.InWords} or less.",
            Spoken("owner's limit"))
        {
            Cures = [
                Offset((faces.Value.Interval95.High - limit.Most.Value) / 2, tyres.Wheel.RimWidth),
                $"an axle of {Said.AsTyped(Window.AtMost(limit.Most.Value + (2 * offset.Value.Interval95.Low)), Units.Millimetre, 0)} between its hub faces",
            ],
        });
    }

    // Wheels are sold by either.
    private static Sentence Offset(double offset, Known? rim)
    {
        var backspace = rim is null ? "" : Said.As($", on this rim a backspace of {Said.AsTyped(Window.AtLeast(WheelPlace.Backspace(rim.Value, offset).Value), Units.Millimetre, 0)}");
        return Said.As($"wheels with an offset of {Said.AsTyped(Window.AtLeast(offset), Units.Millimetre, 0)}{backspace}");
    }

    private static IEnumerable<Missing> Lacking(string name, Axle axle, TyreSet tyres)
    {
        if (axle.HubFaces is null) yield return new(Spoken($"the {name}'s hub faces are not measured"), $"measure the {name} from mounting face to mounting face");
        if (tyres.Wheel?.Offset is null) yield return new(Spoken("the wheels' offset is not known"), Spoken("read it on the wheel, such as ET 25, or lay a straight edge over the rim and measure to the mounting face"));
    }
}
