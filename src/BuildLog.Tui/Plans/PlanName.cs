using BuildLog.Data;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Plans;

/// <summary>What a plan is called: it is decided and hunted for by its name, so no two of a vehicle share one.</summary>
internal static class PlanName
{
    /// <summary>Why it cannot be called so; null where it can.</summary>
    public static Refusal? Taken(Shop shop, Vehicle vehicle, string name)
        => Free(shop, vehicle, name.Trim()) is var free && free == name.Trim()
            ? null
            : new("taken", Spoken($"There is a plan {Shown.Quoted(name.Trim())} already: give this one a name of its own."), free);

    /// <summary>The name itself, or with the first number behind it that no plan of the vehicle is called by.</summary>
    public static string Free(Shop shop, Vehicle vehicle, string name) => FreeName.Of(name, shop.Plans(vehicle).Select(plan => plan.Name));
}
