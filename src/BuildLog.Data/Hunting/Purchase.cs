using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;

namespace BuildLog.Data.Hunting;

/// <summary>What was bought for a wanted part, and what was paid for it.</summary>
/// <param name="What">What it is called among the costs.</param>
/// <param name="Day">When it was bought.</param>
/// <param name="Paid">Null where nobody said: then no cost is noted.</param>
public sealed record Purchase(string What, LooseDay Day, Money? Paid)
{
    public Purchase(string what, DateOnly day, Money? paid) : this(what, LooseDay.On(day), paid) { }

    /// <summary>The part, new or in the record already; null for what is no part with a history, such as a gasket set.</summary>
    public Component? Part { get; init; }

    /// <summary>What is put into a part that is in the record already.</summary>
    public Action<Component> Edit { get; init; } = _ => { };

    public long? SupplierId { get; init; }
}
