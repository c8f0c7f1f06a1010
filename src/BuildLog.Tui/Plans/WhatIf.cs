using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Plans;

/// <summary>What is tried on the bench without being stored: a vehicle, other parts, and other wishes. It lasts as long as the program.</summary>
public sealed class WhatIf
{
    private long vehicleId;

    internal IReadOnlyList<PlannedChange> Changes { get; private set; } = [];

    internal TriedWishes Wishes { get; private set; } = TriedWishes.None;

    internal bool IsOf(long vehicle) => (Changes.Count > 0 || !Wishes.AreNone) && vehicleId == vehicle;

    internal void Put(long vehicle, IReadOnlyList<PlannedChange> changes, TriedWishes wishes) => (vehicleId, Changes, Wishes) = (vehicle, changes, wishes);

    internal void Clear() => (Changes, Wishes) = ([], TriedWishes.None);

    /// <summary>The vehicle as it is tried; as it is where nothing is tried, or where a part that was tried is gone.</summary>
    internal VehicleOnBench On(VehicleOnBench bench, Shop shop)
    {
        if (!IsOf(bench.Vehicle.Id)) return bench;

        try
        {
            return Wishes.On(bench.With(shop, Changes));
        }
        catch (RefusedException)
        {
            // The record has moved on under the trial: what is stored is shown, and the trial is over.
            Clear();
            return bench;
        }
    }
}
