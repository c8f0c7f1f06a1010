using System.Text.RegularExpressions;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Tui.Options;

/// <summary>Which end of a vehicle an axle is for, as far as the record says: a front one steers, and does not go in at the rear.</summary>
internal static partial class AxlePlace
{
    /// <summary>What a name or an advert says of it; null where it says neither, or both.</summary>
    public static Position? Said(string words) => (Front().IsMatch(words), Rear().IsMatch(words)) switch
    {
        (true, false) => Position.FrontAxle,
        (false, true) => Position.RearAxle,
        _ => null,
    };

    /// <summary>Why an axle is not combined; null where nothing speaks against the place.</summary>
    public static string? Barred(Position? made, Position wanted) => made is { } end && end != wanted
        ? end == Position.FrontAxle ? Spoken("front axle, not for the rear") : Spoken("rear axle, not for the front")
        : null;

    [GeneratedRegex(@"\bfront\b[^,;.]{0,20}\baxle\b|\baxle\b[ ,(]+front\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Front();

    [GeneratedRegex(@"\b(rear|back)\b[^,;.]{0,20}\baxle\b|\baxle\b[ ,(]+rear\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Rear();
}
