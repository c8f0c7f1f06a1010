using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>The gearbox's bell housing has the bolt pattern of the engine.</summary>
/// <remarks>The gearbox's pattern is taken with its adapter plate on, where it has one. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class BellHousingCheck : MatingCheck
{
    public override string Id => "bell-housing";

    public override string Title => Spoken("Bell-housing pattern");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        yield return new(
            new(Position.Engine, Spoken("bell-housing pattern"), engine.Rear.BellHousing, Spoken("hold a bell housing that is known against the engine's back, or take the pattern on card")),
            new(Position.Transmission, Spoken("bell-housing pattern"), box.Front.BellHousing, Spoken("hold the bell housing against an engine that is known, or take the pattern on card")),
            (has, needs) => [Spoken($"an adapter plate from {has} to {needs}"), Spoken($"a bell housing of the pattern {has}")]);
    }
}
