using BuildLog.Data;
using BuildLog.Data.Specs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>One optional number of a part or vehicle as a form asks for it.</summary>
/// <param name="Line">What it is called and what it can be.</param>
/// <param name="Id">Its entry.</param>
/// <param name="Caption">The trade's word, as short as a form needs.</param>
/// <param name="Hint">An example.</param>
/// <param name="Get">Reads it off the part.</param>
/// <param name="Set">Notes it on the part.</param>
internal sealed record SpecField<T>(SpecLine Line, string Id, string Caption, string Hint, Func<T, Noted?> Get, Action<T, Noted?> Set)
{
    public SpecField(Spec spec, string caption, string hint, Func<T, Noted?> get, Action<T, Noted?> set) : this(spec.Line(), spec.ToString(), caption, hint, get, set) { }

    public Func<FormValues, bool>? ShownWhen { get; init; }

    /// <summary>The message for a number that cannot be beside the others of the form; null for none, or where it stands alone.</summary>
    public Func<FormValues, string?>? Against { get; init; }

    /// <summary>What it means; null for what it is in the other units.</summary>
    public Func<FormValues, string?>? Echo { get; init; }

    public Entry Entry(T part) => new TextEntry(Id, Caption)
    {
        Initial = Get(part)?.Text ?? "",
        Hint = Hint,
        Check = Forms.Checks.IfTyped(Id, Line.Read, Against),
        Echo = Echo ?? OtherUnits.Of(Id, Line.Read),
        ShownWhen = ShownWhen,
    };

    /// <summary>A number that was not touched keeps the source it had, unless the form says otherwise of it.</summary>
    public void Apply(FormValues values, T part, Telling told)
    {
        if (told.Leaves(Get(part), values[Id])) return;
        Set(part, values.IsEmpty(Id) ? null : Noted.Of(Line, values[Id], told));
    }
}
