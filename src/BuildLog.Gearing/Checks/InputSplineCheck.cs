using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>The clutch disc, or the converter, slides on the gearbox's input shaft.</summary>
/// <remarks>The engine's maker chooses the clutch, the gearbox's maker the spline. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class InputSplineCheck : MatingCheck
{
    public override string Id => "input-spline";

    public override string Title => Spoken("Input spline");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        if (driveline is not { Engine: not null, Transmission: { } box }) yield break;

        var (mate, cure) = box.Converter is null ? (Spoken("clutch-disc spline"), Spoken("a clutch disc")) : (Spoken("converter spline"), Spoken("a converter"));
        yield return new(
            new(Position.Transmission, Spoken("input spline"), box.Front.InputSpline, Spoken("count the input shaft's splines and measure across them")),
            new(Position.Transmission, mate, box.Front.DiscSpline, Spoken("count the splines in the hub and measure across them")),
            (input, _) => [Spoken($"{cure} with a spline of {input}")])
        {
            Between = [Position.Engine, Position.Transmission],
            CountDecides = true,
        };
    }
}
