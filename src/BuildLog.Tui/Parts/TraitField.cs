using BuildLog.Data.Specs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>Something optional in the shop's own words, as a form asks for it.</summary>
/// <param name="Trait">What it is called and what it can be; also its entry.</param>
/// <param name="Caption">The trade's word, as short as a form needs.</param>
/// <param name="Hint">An example.</param>
/// <param name="Get">Reads it off the part.</param>
/// <param name="Set">Notes it on the part.</param>
internal sealed record TraitField<T>(Trait Trait, string Caption, string Hint, Func<T, string?> Get, Action<T, string?> Set)
{
    private string Id => Trait.ToString();

    public Entry Entry(T part) => new TextEntry(Id, Caption) { IsRemembered = true, Initial = Get(part) ?? "", Hint = Hint, Check = Forms.Checks.IfTyped(Id, Trait.Line().Read) };

    public void Apply(FormValues values, T part) => Set(part, values.IsEmpty(Id) ? null : values[Id]);
}
