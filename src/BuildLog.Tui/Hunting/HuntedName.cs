using BuildLog.Data;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Hunting;

/// <summary>What a hunt is called: counts from the yard and the command line know it by its name, so no two of a vehicle share one.</summary>
internal static class HuntedName
{
    /// <summary>The name itself, or with the first number behind it that nothing else of the vehicle is called by.</summary>
    public static string Free(Shop shop, Vehicle vehicle, string name) => FreeName.Of(name, shop.Wanted(vehicle).Select(wanted => wanted.Title));
}
