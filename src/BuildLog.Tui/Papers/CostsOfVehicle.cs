using BuildLog.Data.Costs;
using BuildLog.Data.Vehicles;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>The money spent on a vehicle, the earliest first, each with its receipt.</summary>
public static class CostsOfVehicle
{
    private static readonly IReadOnlyList<string> Columns = ["date", "what", "supplier", "receipt", "amount", "currency"];

    /// <summary>For paper.</summary>
    public static MoneySpent Spent(VehicleFolder folder, AccountSpan span)
    {
        var costs = Lines(folder, span);
        return new(
            [.. costs.Select(cost => new CostRow(DayText.InShort(cost.Day), cost.What, cost.Supplier?.Name, cost.Receipt?.FileName, cost.Amount?.ToString()))],
            [.. Money.Totals(costs.Select(cost => cost.Amount)).Select(total => total.ToString())]);
    }

    public static Account Content(Vehicle vehicle, VehicleFolder folder, AccountSpan span, Paper paper, DateTimeOffset printed)
        => Account.Of(new CostSheet { Id = vehicle.Uid, Created = printed, Costs = Spent(folder, span) }, vehicle, span, paper, Columns, Lines(folder, span).Select(Cells));

    private static List<Cost> Lines(VehicleFolder folder, AccountSpan span) => [.. folder.Costs.Where(cost => span.Holds(cost.Date)).Reverse()];

    // The amount stands apart from its currency, so that a spreadsheet can add it.
    private static IReadOnlyList<string> Cells(Cost cost)
        => [DayText.Iso(cost.Day), cost.What, cost.Supplier?.Name ?? "", cost.Receipt?.FileName ?? "", cost.Amount?.Number ?? "", cost.Amount?.Currency ?? ""];
}
