using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Tui.Plans;

/// <summary>What a plan changes, in words: <c>axle 3.36, tyres 205/65R15, mass 1600 kg</c>.</summary>
internal static class PlannedWords
{
    public static string Of(Shop shop, IReadOnlyList<PlannedChange> changes, TriedWishes wishes)
        => string.Join(", ", ((string[])[Of(shop, changes), wishes.InWords]).Where(words => words.Length > 0));

    private static string Of(Shop shop, IReadOnlyList<PlannedChange> changes)
    {
        var names = changes.Any(change => change.ComponentId is not null) ? shop.Parts().ToDictionary(part => part.Component.Id, part => part.Component.Name) : [];
        return string.Join(", ", changes.Select(change => NamedPart.InWords(change.Position.InWords(), change.ComponentId is { } id ? names.GetValueOrDefault(id) ?? Spoken("that is gone") : change.Listed)));
    }
}
