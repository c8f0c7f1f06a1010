using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Options;

/// <summary>Which candidate of each list.</summary>
internal readonly record struct Combination(int Gearbox, int Overdrive, int Axle, int Tyres) : IComparable<Combination>
{
    /// <summary>What is in place; the first of a list where nothing of it is.</summary>
    public static Combination InPlace(CandidateParts parts) => new(Place(parts.Gearboxes), Place(parts.Overdrives), Place(parts.Axles), Place(parts.Tyres));

    public int CompareTo(Combination other) => (Gearbox, Overdrive, Axle, Tyres).CompareTo((other.Gearbox, other.Overdrive, other.Axle, other.Tyres));

    public static bool operator <(Combination left, Combination right) => left.CompareTo(right) < 0;

    public static bool operator >(Combination left, Combination right) => left.CompareTo(right) > 0;

    public static bool operator <=(Combination left, Combination right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Combination left, Combination right) => left.CompareTo(right) >= 0;

    private static int Place<T>(IReadOnlyList<Candidate<T>> candidates)
        where T : class
        => Enumerable.Range(0, candidates.Count).FirstOrDefault(k => candidates[k].IsInPlace);
}

internal static class Combining
{
    /// <summary>The driveline with other parts in it; the other axle of a four-wheel drive goes with the driving one (<see cref="BothAxles"/>).</summary>
    public static Driveline With(this Driveline driveline, Transmission? gearbox, Overdrive? overdrive, Axle? axle, TyreSet? tyres)
        => BothAxles.With(driveline, axle) with { Transmission = gearbox, Overdrive = overdrive, Tyres = tyres };

    public static Driveline With(this Driveline driveline, CandidateParts parts, Combination at)
        => driveline.With(parts.Gearboxes[at.Gearbox].Part, parts.Overdrives[at.Overdrive].Part, parts.Axles[at.Axle].Part, parts.Tyres[at.Tyres].Part);
}
