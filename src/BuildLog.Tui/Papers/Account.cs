using BuildLog.Data.Vehicles;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>An account of a vehicle: for paper, and the same lines as plain cells for a spreadsheet.</summary>
public sealed record Account(PaperContent Sheet, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>The account with its head: whose it is, of which days, on which paper.</summary>
    /// <param name="sheet">Its lines alone.</param>
    /// <param name="vehicle">Whose it is.</param>
    /// <param name="span">The days.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="columns">Of the plain cells.</param>
    /// <param name="rows">The plain cells.</param>
    public static Account Of(AccountContent sheet, Vehicle vehicle, AccountSpan span, Paper paper, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
        => new(sheet with { Paper = paper, PrintedOn = DayText.InWords(sheet.Created), About = vehicle.Name, Span = span.InWords() }, columns, [.. rows]);
}
