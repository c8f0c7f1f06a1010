using BuildLog.Data;
using BuildLog.Data.Vehicles;

namespace BuildLog.Tui.Hunting;

/// <summary>What a hunt is called: counts from the yard and the command line know it by its name, so no two of a vehicle share one.</summary>
internal static class HuntedName
{
    /// <summary>The name itself, or with the first number behind it that nothing else of the vehicle is called by.</summary>
    public static string Free(Shop shop, Vehicle vehicle, string name)
    {
        var taken = shop.Wanted(vehicle).Select(wanted => wanted.Title).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(1, taken.Count + 1).Select(k => k == 1 ? name : $"{name} ({k})").First(free => !taken.Contains(free));
    }
}
