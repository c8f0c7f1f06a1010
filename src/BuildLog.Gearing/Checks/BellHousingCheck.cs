using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>The gearbox's bell housing has the bolt pattern of the engine.</summary>
/// <remarks>The gearbox's pattern is taken with its adapter plate on, where it has one. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class BellHousingCheck : MatingCheck
{
    public override string Id => "bell-housing";

    public override string Title => "Bell-housing pattern";

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        yield return new(
            new(Position.Engine, "bell-housing pattern", engine.Rear.BellHousing, "hold a bell housing that is known against the engine's back, or take the pattern on card"),
            new(Position.Transmission, "bell-housing pattern", box.Front.BellHousing, "hold the bell housing against an engine that is known, or take the pattern on card"),
            (has, needs) => [$"an adapter plate from {has} to {needs}", $"a bell housing of the pattern {has}"]);
    }
}
