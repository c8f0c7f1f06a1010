using BuildLog.Data;
using BuildLog.Data.Goals;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Sets, changes and takes out what the owner wants of a vehicle.</summary>
internal sealed class GoalActs(Shop shop, Vehicle vehicle, IReadOnlyList<string> gears, UnitSystem units)
{
    private const string Cruise = "cruise";
    private const string Hill = "hill";

    /// <summary>Asks which goal and what it is.</summary>
    /// <returns>What happened, or null if nothing did.</returns>
    public string? Run(IFormHost host)
    {
        var goals = shop.Goals(vehicle);
        return host.Choose(Spoken($"What should {vehicle.Name} do?"), [.. Options(goals)], help: "Goal") switch
        {
            null => null,
            Cruise => Set(host, goals.OfType<CruiseGoalEntry>().FirstOrDefault(), () => new CruiseGoalEntry(vehicle), (goal, save) => GoalForm.For(goal, gears, save, units)),
            Hill => Set(host, goals.OfType<HillGoalEntry>().FirstOrDefault(), () => new HillGoalEntry(vehicle), (goal, save) => HillForm.For(goal, gears, save, units)),
            var limit when Enum.TryParse<Limited>(limit, out var limited) => Set(
                host, goals.OfType<LimitGoalEntry>().FirstOrDefault(goal => goal.Limited == limited), () => new LimitGoalEntry(vehicle, limited), (goal, save) => LimitForm.For(goal, save, units)),
            var taken => TakeOut(goals.First(goal => IdOf(goal) == taken)),
        };
    }

    private static IEnumerable<ChoiceOption> Options(IReadOnlyList<GoalEntry> goals)
    {
        yield return new(Cruise, Spoken("cruise at an engine speed"));
        yield return new(Hill, Spoken("hold a speed on a hill"));
        foreach (var limited in Enum.GetValues<Limited>()) yield return new(limited.ToString(), Spoken($"limit: {limited.InWords()}"));
        foreach (var goal in goals) yield return new(IdOf(goal), Spoken($"no longer: {InWords(goal)}"));
    }

    private string? Set<T>(IFormHost host, T? stored, Func<T> make, Func<T, Action<Action<T>>, Form> form)
        where T : GoalEntry
        => host.Fill(form(stored ?? make(), edit =>
        {
            if (stored is not null)
            {
                shop.Change(stored, edit);
                return;
            }

            shop.Add(make(), edit);
        })) ? Spoken("The goal is set.") : null;

    private string TakeOut(GoalEntry goal)
    {
        shop.Remove(goal);
        return Spoken($"No longer wanted: {InWords(goal)}.");
    }

    private static string IdOf(GoalEntry goal) => FormattableString.Invariant($"out {goal.Id}");

    private static string InWords(GoalEntry goal) => goal switch
    {
        CruiseGoalEntry cruise => Spoken($"{cruise.EngineSpeed} at {cruise.Speed}"),
        HillGoalEntry hill => Spoken($"{hill.Speed} on {hill.Gradient}"),
        LimitGoalEntry limit => $"{limit.Limited.InWords()} {limit.Limit}",
        BudgetGoalEntry budget => Spoken($"budget {budget.Most}"),
        _ => throw new ArgumentException("A goal without words.", nameof(goal)),
    };
}
