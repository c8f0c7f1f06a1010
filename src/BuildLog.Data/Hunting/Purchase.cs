using BuildLog.Data.Components;
using BuildLog.Data.Costs;

namespace BuildLog.Data.Hunting;

/// <summary>What was bought for a wanted part, and what was paid for it.</summary>
/// <param name="What">What it is called among the costs.</param>
/// <param name="Day">When it was bought.</param>
/// <param name="Paid">Null where nobody said: then no cost is noted.</param>
public sealed record Purchase(string What, DateOnly Day, Money? Paid)
{
    /// <summary>The part, new or in the record already; null for what is no part with a history, such as a gasket set.</summary>
    public Component? Part { get; init; }

    /// <summary>What is put into a part that is in the record already.</summary>
    public Action<Component> Edit { get; init; } = _ => { };

    public long? SupplierId { get; init; }
}
