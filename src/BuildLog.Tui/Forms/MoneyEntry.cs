using BuildLog.Data.Costs;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>An entry that asks for an amount of money, with what was understood below it: a point may part thousands or cents, and a bare number has a currency.</summary>
internal static class MoneyEntry
{
    /// <summary>An amount that may be left out.</summary>
    /// <param name="id">Its value.</param>
    /// <param name="caption">What it is paid for.</param>
    /// <param name="hint">An example, and what no amount means.</param>
    /// <param name="read">Reads it, such as a price of zero or more.</param>
    /// <param name="known">What stands there at first.</param>
    public static TextEntry IfAny(string id, string caption, string hint, Func<string, Parsed<Money>> read, Money? known = null)
        => Needed(id, caption, hint, read) with { Initial = known?.ToString() ?? "", Check = Checks.IfTyped(id, read) };

    /// <summary>The same of one that has to be there.</summary>
    public static TextEntry Needed(string id, string caption, string hint, Func<string, Parsed<Money>> read) => new(id, caption)
    {
        AnswersFor = ["money"],
        Hint = hint,
        Check = Checks.Needed(id, read),
        Echo = values => read(values[id]).Understood(out var amount) && $"{amount}" != values[id].Trim() ? $"= {amount}" : null,
    };
}
