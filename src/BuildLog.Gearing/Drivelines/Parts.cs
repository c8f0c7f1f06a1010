using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Drivelines;

/// <summary>An engine as the driveline sees it; engine speeds in revolutions per second, null where nobody knows.</summary>
public sealed record Engine(string Name, Known? Idle = null, Known? Redline = null);

/// <summary>One forward gear: its name on the knob and its ratio.</summary>
public sealed record Gear(string Name, Known Ratio);

/// <summary>A gearbox; forward gears from the lowest to the top.</summary>
public sealed record Transmission(string Name, IReadOnlyList<Gear> Gears);

/// <summary>A separate overdrive unit behind the gearbox, engaged in top gear.</summary>
public sealed record Overdrive(string Name, Known? Ratio);

/// <summary>A transfer case; high is for the road.</summary>
public sealed record TransferCase(string Name, Known? High, Known? Low);

/// <summary>An axle; its ratio is propshaft turns per wheel turn, with a hub reduction inside.</summary>
public sealed record Axle(string Name, Known? Ratio)
{
    /// <summary>What a tag, a table or somebody says of the ratio, where something stronger counts; a hub reduction inside.</summary>
    public Known? Quoted { get; init; }

    /// <summary>The hubs' part of the ratio; null for none.</summary>
    public Known? HubReduction { get; init; }
}

/// <summary>A set of wheels and tyres.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="RollingCircumference">Metres a turn under load.</param>
/// <param name="Size">The marking, where it was read.</param>
public sealed record TyreSet(string Name, Known? RollingCircumference, TyreSize? Size);
