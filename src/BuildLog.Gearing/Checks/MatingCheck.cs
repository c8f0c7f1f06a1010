using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>Ends of parts that go together only if they are the same, as the shop calls them.</summary>
/// <remarks>
/// The same words fit, however they are spelt; other words clash. Where the number of splines is the same and the rest is not, it is a watch: it may be one
/// spline written in two ways. One end known and the other not is open; nothing is said until somebody has looked at one of the two.
/// <para>Limit: geometry.</para>
/// </remarks>
internal abstract class MatingCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("geometry: bolts, splines and bores go together or they do not");

    public abstract string Id { get; }

    public abstract string Title { get; }

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals) => Matings(driveline).Where(mating => mating.IsLookedAt).Select(Judge);

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => Matings(driveline).Where(mating => !mating.IsLookedAt)
            .SelectMany(mating => new[] { mating.One, mating.Other }.Where(end => end.IsUnlooked))
            .Select(end => new Unlooked(end.Part, end.Thing, end.Way));

    private protected abstract IEnumerable<Mating> Matings(Driveline driveline);

    private Finding Judge(Mating mating)
    {
        var (one, other) = (mating.One, mating.Other);
        if (one.Words is not { } here || other.Words is not { } there)
        {
            var missing = new[] { one, other }.Where(end => end.IsUnlooked).Select(end => new Missing(Spoken($"the {end.Name} is not known"), end.Way));
            return this.Open(mating.Between, Spoken($"Whether the {one.Name} and the {other.Name} go together"), missing, Limit);
        }

        if (Spelling.IsSame(here, there)) return this.Plain(mating.Between, Verdict.Fits, Because.Inside, $"The {one.Name} and the {other.Name} are both {here}.", Limit);

        var says = Spoken($"The {one.Name} is {here}, the {other.Name} is {there}");
        return mating.CountDecides && Spelling.FirstNumber(here) is { } count && count == Spelling.FirstNumber(there)
            ? this.Plain(mating.Between, Verdict.Watch, Because.UnverifiedLimit, $"{says}: as many, but written otherwise.", Limit, Spoken("try the two on each other by hand, and write both alike"))
            : this.Plain(mating.Between, Verdict.Clash, Because.Outside, $"{says}.", Limit, [.. mating.Cures(here, there)]);
    }
}
