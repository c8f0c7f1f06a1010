using BuildLog.Data.Components;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>Asks for what is known of a part, without moving it.</summary>
public static class PartForm
{
    /// <param name="part">The part.</param>
    /// <param name="nowOn">The vehicle it sits on; null for the shelf.</param>
    /// <param name="save">Stores the part with the edit applied.</param>
    /// <param name="read">Reads the part anew, to try on it what was typed.</param>
    /// <param name="effect">Says what the part as typed would do.</param>
    public static Form For(Component part, string? nowOn, Action<Action<Component>> save, Func<Component> read, Func<Component, IReadOnlyList<string>> effect)
    {
        var entries = PartEntries.For(part.Positions[0]);
        return new()
        {
            Title = Spoken($"Edit {part.Name}"),
            HelpPage = "Parts",
            Entries = [.. entries.Entries(part), new ChoiceEntry("owner", Spoken("Whose it is"), [new("", Spoken("the shop's")), .. Enum.GetValues<Ownership>().Select(owner => new ChoiceOption(owner.ToString(), owner.InWords()))]) { Initial = part.Ownership?.ToString() ?? "", Hint = Spoken("gone: sold, scrapped or left elsewhere; it is not proposed any more") }],
            Echo = values => [nowOn is null ? Spoken("On the shelf.") : Spoken($"Now on {nowOn}."), .. entries.Said(values, read(), effect)],
            Save = values => Forms.Checks.Try(() => save(edited =>
            {
                entries.Apply(values, edited);
                edited.Ownership = values.IsEmpty("owner") ? null : Enum.Parse<Ownership>(values["owner"]);
            })),
        };
    }
}
