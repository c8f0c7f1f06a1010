using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres are no taller than the owner's limit: the arch, or the rule of the country.</summary>
/// <remarks>
/// <code>D = C_free / π</code>
/// <para>
/// By a loose wheel that was rolled, where one was; else by the marking, which tyres leave by up to some per cent: u = 1 %, see <see cref="TyreSize"/>. A roll-out with
/// the vehicle on it says no more than the marking: what the load takes off its way is known to 1 % too, see <see cref="LoadedFactor"/>.
/// </para>
/// </remarks>
internal sealed class TyreDiameterCheck : ICheck
{
    public string Id => "tyre-diameter";

    public string Title => Spoken("Tyre diameter");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.TyreDiameter is { } limit && driveline.Tyres is { } tyres
            ? new[] { tyres, tyres.FrontPair }.OfType<TyreSet>().Select(set => Judge(set, limit))
            : [];

    private Finding Judge(TyreSet set, LengthLimit limit)
    {
        IReadOnlyList<Position> joint = [Position.Tyres];
        if ((set.FreeCircumference?.Value ?? set.Size?.FreeCircumferenceAsLabelled) is not { } free)
        {
            return this.Open(
                joint, Spoken($"Whether the tyres ({set.Name}) stay below {limit.Most.InWords}"),
                [new(Spoken("their size is not known"), Spoken("read the tyre's marking, or roll one of the wheels loose along the floor"))], Spoken("owner's limit"));
        }

        var diameter = free * (1 / Math.PI);
        var judged = this.Judged(new(
            joint, diameter, Units.Millimetre, Window.AtMost(limit.Most.Value),
            $"{set.Size?.Designation ?? set.Name} stands {Said.Number(diameter, Units.Millimetre, 0)} high{(set.FreeCircumference is null ? "" : Spoken(", as a loose wheel rolled"))}; wanted {limit.Most.InWords} or less.",
            Spoken("owner's limit"))
        {
            Cures = [$"a tyre of {Said.OrLess(limit.Most.Value, Units.Millimetre, 0)} overall"],
        });

        // However well the loaded tyre's way is known, it does not tell the height of the free one.
        return judged.SettledBy is not null && set.FreeCircumference is null ? judged with { SettledBy = Spoken("roll one of the wheels loose along the floor: its way a turn over π is the diameter") } : judged;
    }
}
