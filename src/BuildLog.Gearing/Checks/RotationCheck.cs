using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>The engine turns the way the gearbox was made for.</summary>
/// <remarks>
/// The wrong way round there is one gear forward and a boxful in reverse, and an oil pump that pumps nothing. Seen from in front of the vehicle. Judged as
/// every <see cref="MatingCheck"/>.
/// </remarks>
internal sealed class RotationCheck : MatingCheck
{
    public override string Id => "rotation";

    public override string Title => Spoken("Direction of rotation");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        yield return new(
            new(Position.Engine, Spoken("direction of rotation"), Word(engine.Rear.Turns), Spoken("nudge the starter and watch the pulley from in front")),
            new(Position.Transmission, Spoken("direction of rotation"), Word(box.Front.Turns), Spoken("ask which engine it came from, and look which way that one turns")),
            (turns, _) => [Spoken($"a gearbox made for an engine that turns {turns}"), Spoken("an axle with its ring gear on the other side of the pinion, if the gearbox's oiling allows it")]);
    }

    private static string? Word(Sense? sense) => sense switch { Sense.Clockwise => Spoken("clockwise"), Sense.Anticlockwise => Spoken("anticlockwise"), _ => null };
}
