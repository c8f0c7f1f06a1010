using BuildLog.Data.Components;

namespace BuildLog.Data.Hunting;

/// <summary>A part that was counted or rolled in the yard for a hunt and is not the shop's: it stands in the record for its count alone.</summary>
/// <remarks>It is known again by what is written into it, which therefore is the same in all languages.</remarks>
public static class YardPart
{
    private const string NotBought = "Not bought: ";

    /// <summary>It stands in the record for its count alone.</summary>
    public static bool IsNotBought(Component part) => part.Notes.StartsWith(NotBought, StringComparison.Ordinal);

    /// <summary>It is the shop's to use: neither looked at only for its count, nor gone.</summary>
    public static bool IsAtHand(Component part) => part.Ownership != Ownership.Gone && !IsNotBought(part);

    /// <summary>What such a part is called.</summary>
    public static string NameOf(WantedPart wanted) => NameOf(wanted.Title);

    /// <summary>It was counted for this hunt.</summary>
    public static bool IsOf(WantedPart wanted, Component part) => IsOf(wanted.Title, part);

    internal static bool IsOf(string title, Component part) => IsNotBought(part) && part.Name == NameOf(title);

    internal static void Put(string title, Component part)
    {
        part.Name = NameOf(title);
        part.Notes = $"{NotBought}counted for {title}.";
    }

    private static string NameOf(string title) => $"{title}, counted in the yard";
}
