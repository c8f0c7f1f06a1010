using BuildLog.Data.Components;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>Asks for what is known of a part, without moving it.</summary>
public static class PartForm
{
    public static Form For(Component part, Action<Action<Component>> save)
    {
        var entries = PartEntries.For(part.Positions[0]);
        return new()
        {
            Title = $"Edit {part.Name}",
            HelpPage = "Parts",
            Entries = entries.Entries(part),
            Save = values => Forms.Checks.Try(() => save(edited => entries.Apply(values, edited))),
        };
    }
}
