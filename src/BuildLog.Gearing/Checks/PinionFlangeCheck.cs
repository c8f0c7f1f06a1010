using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Checks;

/// <summary>Each propshaft's rear end bolts to its axle's pinion.</summary>
/// <remarks>For a front propshaft, the end at the front axle. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class PinionFlangeCheck : MatingCheck
{
    public override string Id => "pinion-flange";

    public override string Title => Spoken("Pinion flange");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
        => FittedShaft.Of(driveline).Where(shaft => shaft.Axle is not null).Select(shaft => new Mating(
            new(shaft.Position, Spoken("axle end"), shaft.Shaft.RearEnd, Spoken("count the flange's bolts and measure their circle, or measure the joint's caps")),
            new(shaft.AxlePosition, Spoken("pinion flange"), shaft.Axle!.PinionFlange, Spoken("count the pinion flange's bolts and measure their circle, or measure the yoke")),
            (end, pinion) => [Spoken($"a {shaft.Position.InWords()} whose axle end is {pinion}"), Spoken($"a pinion flange that is {end}")]));
}
