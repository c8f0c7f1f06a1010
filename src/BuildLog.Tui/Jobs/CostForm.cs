using BuildLog.Data.Costs;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Asks for money spent, or got back.</summary>
public static class CostForm
{
    /// <param name="for">What it was spent on, in words: the job or the vehicle.</param>
    /// <param name="currency">Of a bare number.</param>
    public static Form For(string @for, Currency currency, DateOnly today, Action<Action<Cost>> save) => new()
    {
        Title = Spoken($"Cost: {@for}"),
        HelpPage = "Jobs",
        Entries =
        [
            new TextEntry("what", Spoken("What")) { AnswersFor = ["cost"], IsRemembered = true, RememberedAs = "cost", Hint = Spoken("such as gasket set"), Check = Forms.Checks.Filled("what", Spoken("Say what it was for, such as gasket set.")) },
            MoneyEntry.Needed("amount", Spoken("Amount"), Spoken($"such as 45.50; bare is {currency.Code}; -20 was got back"), text => MoneyText.Read(text, currency)),
            DayEntry.Past("day", Spoken("Date"), today) with { AnswersFor = ["date-of-the-cost"] },
        ],
        Save = values => Forms.Checks.Try(() => save(cost =>
            (cost.What, cost.Amount, cost.Day) = (values["what"], MoneyText.Read(values["amount"], currency).OrRefuse(), DayEntry.In(values, "day", today)))),
    };
}
