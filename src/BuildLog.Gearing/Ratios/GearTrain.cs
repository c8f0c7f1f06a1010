using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>All forward gears of a gearbox from its counted teeth, from the lowest to the top.</summary>
/// <remarks>
/// Written <c>29/19 31/14 25/18 1 20/23</c>: the constant mesh, then each gear's own pair, driven over driver; <c>1</c> is the direct gear. A box without constant
/// mesh begins with <c>1</c>. The three-speed automatic of two planetary sets is written <c>planetary 75/30 75/33</c>: ring over sun of the input set, then of the
/// output set.
/// <para>Exact: no uncertainty. Formulas and their source see <see cref="TwoStageGear"/> and <see cref="SimpsonTrain"/>.</para>
/// </remarks>
public sealed record GearTrain(IReadOnlyList<TrainGear> Gears)
{
    /// <summary>Of two planetary sets, as a plain number; null where the text says nothing of it.</summary>
    public double? Reverse { get; private init; }

    /// <summary>The pair that turns the layshaft; null where there is none.</summary>
    public GearMesh? ConstantMesh { get; private init; }

    private const string Direct = "1";
    private const string PlanetarySets = "planetary";
    private const string Right = "29/19 31/14 25/18 1";
    private const int MostGears = 20;

    /// <summary>Reads the constant mesh and each gear's pair, or two planetary sets; refused are teeth that cannot be, a ratio that no gear has, and gears out of order.</summary>
    public static Parsed<GearTrain> Read(string text)
    {
        var tokens = text.Replace(';', ' ').Replace(',', ' ').Split(default(char[]), StringSplitOptions.RemoveEmptyEntries);
        return tokens is [PlanetarySets, .. var sets] ? Automatic(text, sets)
            : tokens is [var mesh, _, ..] ? Parsed.From(() => Layshaft(mesh, tokens.Skip(1).Take(MostGears))).In(text).Then(train => Ordered(train, text))
            : new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is no gearbox: write the constant mesh, then each gear's own pair."), Right);
    }

    private static Parsed<GearTrain> Automatic(string text, string[] sets)
        => sets is [var input, var output]
            ? Planetary.Read(input).Then(first => Planetary.Read(output).Then<GearTrain>(second =>
            {
                var train = new SimpsonTrain(first, second);
                return new GearTrain([new(train.First, Spoken($"{first} and {second}")), new(train.Second, $"{first}"), new(1, Spoken("direct"))]) { Reverse = -train.Reverse };
            }))
            : new Refusal("teeth", Spoken($"{Shown.Quoted(text)}: an automatic of this kind has two planetary sets, ring over sun of each."), "planetary 75/30 75/33");

    // The constant mesh is read before its gears: a slip in it is not each gear's.
    private static GearTrain Layshaft(string mesh, IEnumerable<string> gears)
    {
        GearMesh? constant = mesh == Direct ? null : Pair(mesh);
        return new([.. gears.Select(own => Gear(constant, own))]) { ConstantMesh = constant };
    }

    private static TrainGear Gear(GearMesh? mesh, string own)
    {
        if (own == Direct) return new(1, Spoken("direct"));

        var pair = Pair(own);
        if (mesh is null) return new(RatioRange.Gear.Checked(pair.Ratio), pair.ToString());

        var gear = new TwoStageGear(mesh.Value, pair);
        return new(gear.Ratio, gear.ToString());
    }

    private static GearMesh Pair(string text) => GearMesh.Read(text) is { Refusal: { } refusal } ? throw new RefusedException(refusal with { Example = Right }) : GearMesh.Read(text).OrRefuse();

    private static Parsed<GearTrain> Ordered(GearTrain train, string text)
    {
        for (var k = 1; k < train.Gears.Count; k++)
        {
            if (train.Gears[k].Ratio >= train.Gears[k - 1].Ratio)
            {
                return new Refusal("teeth", Spoken($"{Shown.Quoted(text)}: gears stand from the lowest to the top, but gear {k + 1} makes {train.Gears[k].Ratio:0.000} after {train.Gears[k - 1].Ratio:0.000}. Is a pair turned round?"), Right);
            }
        }

        return train;
    }
}

/// <summary>One gear of a train.</summary>
/// <param name="Ratio">Input turns per output turn.</param>
/// <param name="Says">Its teeth, such as <c>29/19 x 31/14</c>.</param>
public sealed record TrainGear(double Ratio, string Says);
