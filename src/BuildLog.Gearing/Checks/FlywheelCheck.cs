using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>A clutch has its flywheel, a converter its flexplate.</summary>
/// <remarks>What the gearbox needs follows from what is behind it. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class FlywheelCheck : MatingCheck
{
    public override string Id => "flywheel";

    public override string Title => Spoken("Flywheel or flexplate");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        yield return new(
            new(Position.Engine, Spoken("plate on the crankshaft"), engine.Rear.Plate is { } plate ? Word(plate) : null, Spoken("look through the starter's opening: thick and heavy is a flywheel, thin sheet a flexplate")),
            new(Position.Transmission, Spoken("plate"), Word(box.Converter is null ? Plate.Flywheel : Plate.Flexplate), "") { IsImplied = true, IsNeed = true },
            (_, needs) => [Spoken($"{needs} for this engine, with the ring gear its starter wants")]);
    }

    private static string Word(Plate plate) => plate == Plate.Flywheel ? Spoken("a flywheel") : Spoken("a flexplate");
}
