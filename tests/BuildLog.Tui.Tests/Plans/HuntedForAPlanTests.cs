using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Files;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Options;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Plans;

/// <summary>A part that is hunted for a plan is judged with the rest of that plan in place: its window, its offers and its card.</summary>
public sealed class HuntedForAPlanTests : IDisposable
{
    private const string With = "Judged with tyres 2.400 m, of plan tall.";

    private readonly string path = DemoShop.CreateFreshCopy();
    private readonly Shop shop;
    private readonly Vehicle brindle;
    private readonly AnsweringView view;
    private readonly PlansActs plans;
    private readonly WantedActs wanted;

    public HuntedForAPlanTests()
    {
        shop = ShopFile.Open(path);
        brindle = shop.FindVehicle("Brindle");
        view = new(new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric).Open());
        (plans, wanted) = (new(shop, TimeProvider.System, new()), new(shop, TimeProvider.System, new()));
    }

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    // At one cruise the axle ratio goes with the circumference: its window of today times 2.400 over the tyres of today.
    [Fact]
    public void Its_window_and_its_offers_are_those_beside_the_other_parts_of_the_plan()
    {
        var today = Window(new(brindle, WantedKind.Axle));
        var ratio = 2.400 / Bench.Driveline.DrivingTyres!.RollingCircumference!.Value.Value;
        CarryOut();

        var hunted = Hunt("axle for Brindle, plan tall");
        var planned = Window(hunted);
        Assert.Equal(today.Low * ratio, planned.Low, today.Low * 2e-3);
        Assert.Equal(today.High * ratio, planned.High, today.High * 2e-3);
        Assert.Empty(hunted.Windows);
        Assert.Contains(With, Row(hunted).Lines);

        // Too short for the tyres of today, right for those of the plan.
        var between = FormattableString.Invariant($"counted {(today.High + planned.High) / 2:0.000}±0.002");
        Assert.EndsWith(With, wanted.Offer(view.Type(("what", "plan's axle"), ("claimed", between)), brindle.Id, Row(hunted)), StringComparison.Ordinal);
        wanted.Offer(view.Type(("what", "axle for now"), ("claimed", between)), brindle.Id, Row(Hunt("longer axle")));
        Assert.Equal(Verdict.Clash, Offered("axle for now").Verdict);
        Assert.NotEqual(Verdict.Clash, Offered("plan's axle").Verdict);

        wanted.Card(view, brindle.Id, Row(hunted));
        Assert.Contains("of plan tall", string.Join(' ', view.Told[^1].Select(line => line.Trim())), StringComparison.Ordinal);
        Assert.Equal("tall", Said.By("wanted", "Brindle", "--database", path, "--json").Json.GetProperty("wanted").EnumerateArray().Single(hunt => hunt.GetProperty("name").GetString() == hunted.Title).GetProperty("plan").GetString());
    }

    [Fact]
    public void A_rejected_plan_leaves_its_hunts_on_the_vehicle_as_it_is_and_says_so()
    {
        CarryOut();
        var (today, hunted) = (Window(new(brindle, WantedKind.Axle)), Hunt("axle for Brindle, plan tall"));

        view.Type(("state", nameof(PlanState.Rejected)), ("reason", "too tall"));
        var said = plans.Decide(view, brindle.Id, plans.Read(brindle.Id).Rows.Single(row => row.Name == "tall"));

        Assert.Contains("Still hunted, but judged on the vehicle as it is now: ", said, StringComparison.Ordinal);
        Assert.Contains(hunted.Title, said, StringComparison.Ordinal);
        Assert.Equal(today, Window(hunted));
        Assert.Contains("Plan tall is rejected (too tall): judged on the vehicle as it is now.", Row(hunted).Lines);
    }

    // The tyres come home with another number than planned: first that counts, and once they are fitted the vehicle itself.
    [Fact]
    public void What_was_bought_for_the_plan_counts_as_it_was_bought_and_then_as_it_is_fitted()
    {
        CarryOut();
        var (axle, tyres) = (Hunt("axle for Brindle, plan tall"), Hunt("tyres for Brindle, plan tall"));
        var planned = Window(axle);
        shop.Add(new Offer(tyres) { What = "Norwell tall ones", Claimed = "2.300 m", Seen = new(2026, 5, 4) });
        var set = new WheelSetComponent { Name = "Norwell tall ones", StatedCircumference = Noted.Length("2.300 m", Gearing.Measurements.Source.OwnersWord) };
        shop.Buy(tyres, new("Norwell tall ones", new DateOnly(2026, 5, 6), Money.Of(20_000, Currency.Euro)) { Part = set });

        var bought = Window(axle);
        Assert.Equal(planned.Low * 2.300 / 2.400, bought.Low, planned.Low * 2e-3);
        Assert.Contains("Judged with tyres Norwell tall ones, of plan tall.", Row(axle).Lines);

        shop.FitSometime(shop.Parts().Single(place => place.Component.Name == set.Name).Component, brindle, Position.Tyres, Data.Days.LooseDay.On(new(2026, 5, 7)));
        Assert.Equal(bought.Low, Window(axle).Low, 1e-6);
        Assert.Contains("All else of plan tall is on the vehicle: judged on it as it is now.", Row(axle).Lines);
    }

    // Its wishes are part of it: the plan cruises at 2600, the owner at another engine speed.
    [Fact]
    public void The_wishes_of_a_plan_go_with_its_hunts()
    {
        shop.Add(new Plan(brindle) { Name = "quick", Date = new(2026, 5, 3), Changes = [new(Position.RearAxle, "3.36")], Wishes = [new(Wish.Cruise, "100 km/h at 2600 rpm")] });

        plans.CarryOut(view, brindle.Id, plans.Read(brindle.Id).Rows.Single(row => row.Name == "quick"));

        var hunt = Hunt("axle for Brindle, plan quick");
        Assert.Contains("Judged with cruise 100 km/h at 2600 rpm, of plan quick.", Row(hunt).Lines);
        Assert.NotEqual(Window(new(brindle, WantedKind.Axle)), Window(hunt));
    }

    [Fact]
    public async Task A_part_of_a_way_out_of_several_is_hunted_with_the_way_out_kept_as_a_plan_in_one_change()
    {
        var acts = new OptionsActs(shop, TimeProvider.System, new());
        var found = await acts.Find(brindle.Id, new Progress<double>(), TestContext.Current.CancellationToken);
        var way = found.Rows.First(row => row.Changes == 2 && row.Parts.Any(part => part.StartsWith("axle", StringComparison.Ordinal)));
        var hunts = shop.Wanted(brindle).Count;

        Assert.Contains("All of it is kept as the plan ", acts.Want(view.Pick(nameof(Position.RearAxle)), way.Place), StringComparison.Ordinal);
        var plan = Assert.Single(shop.Plans(brindle));
        Assert.Equal((plan.Id, 2), (shop.Wanted(brindle).Single(hunt => hunt.PlanId is not null).PlanId!.Value, plan.Changes.Count));
        Assert.StartsWith("Hunted already", acts.Want(view.Pick(nameof(Position.RearAxle)), way.Place), StringComparison.Ordinal);

        shop.Undo();
        Assert.Empty(shop.Plans(brindle));
        Assert.Equal(hunts, shop.Wanted(brindle).Count);
    }

    [Fact]
    public void A_name_that_a_plan_has_already_is_refused_beside_its_field()
    {
        shop.Add(new Plan(brindle) { Name = "Tall", Date = new(2026, 5, 3), Changes = [new(Position.RearAxle, "3.36")] });

        view.Type().Fill(PlanForm.For("Keep", "tall", shop, brindle, [new(Position.RearAxle, "3.08")], new(2026, 5, 4)));
        Assert.Equal(["tall (2)", "Tall"], shop.Plans(brindle).Select(plan => plan.Name));

        view.Type(("name", "TALL")).Fill(PlanForm.For("Keep", "tall", shop, brindle, [new(Position.RearAxle, "3.08")], new(2026, 5, 4)));
        Assert.Equal("There is a plan 'TALL' already: give this one a name of its own. Example: TALL (3)", Assert.Single(view.Refused));
        Assert.Equal(2, shop.Plans(brindle).Count);
    }

    private VehicleOnBench Bench => VehicleOnBench.Read(shop, brindle, new(2026, 5, 20));

    private void CarryOut()
    {
        shop.Add(new Plan(brindle) { Name = "tall", Date = new(2026, 5, 3), Changes = [new(Position.RearAxle, "3.36"), new(Position.Tyres, "2.400 m")] });
        plans.CarryOut(view, brindle.Id, plans.Read(brindle.Id).Rows.Single(row => row.Name == "tall"));
    }

    private WantedPart Hunt(string title) => shop.Wanted(brindle).Single(hunt => hunt.Title == title);

    private Window Window(WantedPart hunt) => WantedWindows.Today(HuntBench.Of(shop, Bench, hunt)).Single().Window;

    private WantedRow Row(WantedPart hunt) => wanted.Read(brindle.Id).Rows.Single(row => row.WantedId == hunt.Id && row is { OfferId: null, CountedId: null });

    private WantedRow Offered(string what) => wanted.Read(brindle.Id).Rows.Single(row => row.What == what);
}
