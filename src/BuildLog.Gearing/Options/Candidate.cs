namespace BuildLog.Gearing.Options;

/// <summary>Where a candidate would come from.</summary>
public enum Pool
{
    /// <summary>In the shop's record and on the shelf.</summary>
    Owned,

    /// <summary>Somebody offers it, at a price.</summary>
    Offered,

    /// <summary>Merely sold somewhere: a published ratio, a tyre size.</summary>
    Listed,

    /// <summary>In the shop's record, and fitted to another vehicle that would have to go without.</summary>
    Elsewhere,
}

/// <summary>What a part costs.</summary>
/// <param name="Minor">In the smallest coin, such as cents.</param>
/// <param name="Currency">Three letters, such as <c>EUR</c>.</param>
public sealed record Price(long Minor, string Currency);

/// <summary>One part that could be fitted.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Part">The part; null for going without one, such as without an overdrive.</param>
/// <param name="Pool">Where it would come from.</param>
public sealed record Candidate<T>(string Name, T? Part, Pool Pool)
    where T : class
{
    // Less than any number of parts adds up to.
    private const double NotFree = 1.0 / 1024;

    /// <summary>Null where nobody has named one.</summary>
    public Price? Price { get; init; }

    /// <summary>Its number in the record; null for what is not in it.</summary>
    public long? ComponentId { get; init; }

    /// <summary>What makes the same part again where it is typed; empty for a part of the record.</summary>
    public string Typed { get; init; } = "";

    /// <summary>Nobody but its seller says what it is.</summary>
    public bool IsWordAlone { get; init; }

    /// <summary>The vehicle it would have to come off; null for none.</summary>
    public string? FittedTo { get; init; }

    /// <summary>What the record says of it that has to be known first, such as why it came off; null for nothing.</summary>
    public string? Told { get; init; }

    /// <summary>It was taken off or noted as damaged, or it is somebody else's: nobody just bolts it on.</summary>
    public bool IsDoubtful { get; init; }

    /// <summary>It lies outside what its own hunt was limited to, whatever the goals say of it.</summary>
    public bool IsOutsideTheHunt { get; init; }

    /// <summary>Why it is not worth combining, in the words of a count such as <c>not made for a rim of 6 in</c>; null where it is.</summary>
    public string? Barred { get; init; }

    /// <summary>What has to be changed with it, at a price that nobody has named: the other axle of a four-wheel drive, geared alike; null for nothing.</summary>
    public T? Beside { get; init; }

    /// <summary>It is in place already: no change and no cost.</summary>
    public bool IsInPlace { get; init; }

    /// <summary>What it costs in the smallest coin; infinite where it is not known or in another currency.</summary>
    internal double Cost(string? currency) => this switch
    {
        { IsInPlace: true } => 0,
        { Beside: not null } => double.PositiveInfinity,
        { Price: { } price } => price.Currency == currency ? price.Minor : double.PositiveInfinity,
        { Pool: Pool.Owned or Pool.Elsewhere } => 0,
        _ when Part is null => 0,
        _ => double.PositiveInfinity,
    };

    /// <summary>Nothing has to come off another vehicle, be mended or be asked for first.</summary>
    public bool IsFree => FittedTo is null && !IsDoubtful;

    /// <summary>One part or two, and a little more where it is not free or not what is hunted: so of two that do the same the other one is better, and is never thrown out for this.</summary>
    internal double Changes => IsInPlace ? 0 : (Beside is null ? 1 : 2) + (IsFree && !IsOutsideTheHunt ? 0 : NotFree);
}
