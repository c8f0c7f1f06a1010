using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres are no wider than the owner's limit.</summary>
/// <remarks>
/// <code>S = S₁ + 0.4 · (A − A₁)</code>
/// <para>S section width; S₁ the marked one; A rim width, A₁ the measuring rim's. On a rim of unknown width the marked one is taken.</para>
/// <para>Tyres differ: up to 4 % over the marked width is permitted, u = 2 %. Source: UN R30, par. 6.1.1.1 and 6.1.4 (the second from memory).</para>
/// </remarks>
public sealed class TyreWidthCheck : ICheck
{
    private const double PerRim = 0.4;
    private const double Spread = 0.02;

    public string Id => "tyre-width";

    public string Title => "Tyre width";

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.TyreWidth is { } limit && driveline.Tyres is { } tyres
            ? new[] { tyres, tyres.FrontPair }.OfType<TyreSet>().Select(set => Judge(set, limit))
            : [];

    private Finding Judge(TyreSet set, LengthLimit limit)
    {
        IReadOnlyList<Position> joint = [Position.Tyres];
        if (set.Size is not { } size)
        {
            return this.Open(
                joint, $"Whether the tyres ({set.Name}) stay within {limit.Most.Text}",
                [new("their size is not known", "read the tyre's marking, or measure across the side walls")], "owner's limit");
        }

        var width = OnRim(size, set.Wheel?.RimWidth?.Value);
        var wanted = Window.AtMost(limit.Most.Value);
        return this.Judged(new(
            joint, width, Units.Millimetre, wanted,
            $"{size.Designation} is {Said.Number(width, Units.Millimetre, 0)} wide{(set.Wheel?.RimWidth is null ? "" : " on its rim")}; wanted {limit.Most.Text} or less.",
            "owner's limit")
        {
            Cures = [$"a tyre of {Said.OrLess(limit.Most.Value, Units.Millimetre, 0)} section"],
        });
    }

    private static Measured OnRim(TyreSize size, Measured? rim)
    {
        var nominal = Measured.From(
            size.SectionWidth,
            new Input("section width from the label only", size.SectionWidth * Spread, new Evidence($"tyre label {size.Designation}", _ => "measure the mounted tyre across its side walls")));
        return rim is null ? nominal : nominal + (PerRim * (rim - Units.Inch.ToBase(size.RimWidth.Measuring)));
    }
}
