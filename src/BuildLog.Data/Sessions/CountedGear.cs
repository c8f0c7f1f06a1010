using BuildLog.Data.Components;

namespace BuildLog.Data.Sessions;

/// <summary>What was turned to count, in words.</summary>
public static class CountedGear
{
    /// <summary><c>gear 3</c>; of an overdrive unit whether it was engaged.</summary>
    public static string InWords(string gear) => gear switch
    {
        OverdriveComponent.Engaged => Spoken("overdrive engaged"),
        OverdriveComponent.NotEngaged => Spoken("overdrive not engaged"),
        _ => Spoken($"gear {gear}"),
    };
}
