using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Checks;

/// <summary>Each propshaft's front end goes to the output before it: flange to flange, or slip yoke on its spline.</summary>
/// <remarks>The output is that of the last unit in the chain: transfer case, overdrive or gearbox. Judged as every <see cref="MatingCheck"/>.</remarks>
internal sealed class OutputFlangeCheck : MatingCheck
{
    // As the shop writes it, in any language that is spoken here.
    private static readonly string[] SplineWords = ["spline", "vertand", "spie"];

    public override string Id => "output-flange";

    public override string Title => Spoken("Output flange or spline");

    private protected override IEnumerable<Mating> Matings(Driveline driveline)
    {
        foreach (var shaft in FittedShaft.Of(driveline))
        {
            if (Output(driveline, shaft.Position) is not var (unit, thing, words)) continue;

            yield return new(
                new(unit, thing, words, Spoken("count the output's bolts or splines and measure across them")),
                new(shaft.Position, Spoken("front end"), shaft.Shaft.FrontEnd, Spoken("count the front flange's bolts or the yoke's splines and measure across them")),
                (output, _) => [Spoken($"a {shaft.Position.InWords()} whose front end is {output}")])
            {
                CountDecides = words is not null && SplineWords.Any(word => words.Contains(word, StringComparison.OrdinalIgnoreCase)),
            };
        }
    }

    private static (Position Unit, string Thing, string? Words)? Output(Driveline driveline, Position shaft)
        => driveline.TransferCase is { } transfer
                ? shaft == Position.FrontPropshaft ? (Position.TransferCase, Spoken("front output"), transfer.FrontOutput) : (Position.TransferCase, Spoken("output"), transfer.Output)
            : driveline.Overdrive is { } overdrive ? (Position.Overdrive, Spoken("output"), overdrive.Output)
            : driveline.Transmission is { } box ? (Position.Transmission, Spoken("output"), box.Output)
            : null;
}
