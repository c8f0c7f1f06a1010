using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>The bell housing is open for the starter on the side where the engine has room for it.</summary>
/// <remarks>Sides as seen from the driver's seat. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class StarterCheck : MatingCheck
{
    public override string Id => "starter";

    public override string Title => Spoken("Starter side");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        yield return new(
            new(Position.Engine, Spoken("starter side"), Word(engine.Rear.Starter), Spoken("look on which side the block leaves room for the starter, from the driver's seat")),
            new(Position.Transmission, Spoken("starter opening"), Word(box.Front.Starter), Spoken("look on which side the bell housing is open for the starter, from the driver's seat")),
            (engineSide, _) => [Spoken($"a bell housing with its starter opening on the {engineSide}"), Spoken("a starter that sits on the gearbox's side and clears the block")]);
    }

    private static string? Word(StarterSide? side) => side switch { StarterSide.Left => Spoken("left"), StarterSide.Right => Spoken("right"), _ => null };
}
