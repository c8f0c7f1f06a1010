using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Hunting;

public sealed class HuntingAPart : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Keeps_its_window_as_typed_and_in_numbers()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(Axle(vehicle, "2.85", "3.21"));
        test.Reopen();
        var wanted = Assert.Single(test.Shop.Wanted(vehicle));
        Assert.Equal(new WantedWindow(WindowOf.AxleRatio, "2.85", "3.21"), wanted.Windows[0]);
        Assert.Equal(new MustHave("bolt circle", "5 × 114.3"), Assert.Single(wanted.MustHaves));
        Assert.Equal(25_000, wanted.Most!.Minor);
        Assert.Equal(3.21, test.Ask("SELECT HighSi FROM WantedWindows"));
    }

    // 2.85 to 3.21 is the window; half the last digit of the claim is its doubt.
    [Theory]
    [InlineData("3.08", Verdict.Fits)]
    [InlineData("3.55", Verdict.Clash)]
    [InlineData("3.2", Verdict.Watch)]
    [InlineData("", Verdict.Open)]
    [InlineData("a long one", Verdict.Open)]
    public void Judges_an_offer_by_what_is_claimed(string claimed, Verdict verdict)
    {
        var vehicle = test.Vehicle("Brindle");
        var wanted = test.Shop.Add(Axle(vehicle, "2.85", "3.21"));
        test.Shop.Add(new Offer(wanted) { What = "yard axle", Claimed = claimed, Seen = new(2026, 5, 3), Price = Money.Of(26_000, Currency.Euro) });
        var offer = Assert.Single(test.Shop.Offers(vehicle));
        var judged = OfferJudgement.Of(offer);
        Assert.Equal(verdict, judged.Verdict);
        Assert.True(judged.IsTooDear);
    }

    // The seller's 3.08 lies inside; the count of 3.35 does not.
    [Fact]
    public void Judges_by_the_count_where_there_is_one_and_keeps_the_claim()
    {
        var wanted = test.Shop.Add(Axle(test.Vehicle("Brindle"), "2.85", "3.21"));
        var offer = test.Shop.Add(new Offer(wanted) { What = "yard axle", Claimed = "3.08; counted 3.350±0.027", Seen = new(2026, 5, 3) });

        Assert.Equal(Verdict.Clash, OfferJudgement.Of(wanted, offer.Claimed, null).Verdict);
        Assert.Equal(Verdict.Fits, OfferJudgement.Of(wanted, "3.08", null).Verdict);
    }

    // 5 × 114.3 is wanted.
    [Theory]
    [InlineData("", Verdict.Watch, false)]
    [InlineData("bolt circle 5x114.3, dry", Verdict.Fits, false)]
    [InlineData("Bolt circle: 5 x 108; dry", Verdict.Clash, true)]
    public void Holds_what_it_must_have_against_what_is_told(string notes, Verdict verdict, bool isOutside)
    {
        var wanted = test.Shop.Add(Axle(test.Vehicle("Brindle"), "2.85", "3.21"));
        test.Shop.Add(new Offer(wanted) { What = "yard axle", Claimed = "3.08", Notes = notes, Seen = new(2026, 5, 3) });

        var judged = OfferJudgement.Of(Assert.Single(test.Shop.Offers(wanted)));

        Assert.Equal((verdict, isOutside), (Assert.Single(judged.MustHaves).Verdict, judged.IsOutsideTheHunt));
    }

    [Fact]
    public void Judges_tyres_by_the_size_claimed()
    {
        var vehicle = test.Vehicle("Brindle");
        var wanted = test.Shop.Add(new WantedPart(vehicle, WantedKind.Tyres) { Title = "taller tyres", Windows = [new(WindowOf.Circumference, "2.1 m", "")] });
        test.Shop.Add(new Offer(wanted) { What = "set of four", Claimed = "235/75R15", Seen = new(2026, 5, 3) });
        Assert.Equal(Verdict.Fits, OfferJudgement.Of(Assert.Single(test.Shop.Offers(wanted))).Verdict);
    }

    [Theory]
    [InlineData("3.21", "2.85", "No axle ratio lies between 3.21 and 2.85.")]
    [InlineData("", "", "Between which values will the axle ratio do?")]
    [InlineData("long", "", "'long' is not a number: reading stopped at 'long'.")]
    public void Refuses_a_window_that_is_none(string low, string high, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusedException>(() => test.Shop.Add(Axle(test.Vehicle("Brindle"), low, high))).Message);

    [Fact]
    public void Is_dropped_with_the_rule_that_failed()
    {
        var wanted = test.Shop.Add(Axle(test.Vehicle("Brindle"), "2.85", "3.21"));
        Assert.Throws<RefusedException>(() => test.Shop.Change(wanted, part => part.State = WantedState.Dropped));
        test.Shop.Change(wanted, part => (part.State, part.DroppedFor) = (WantedState.Dropped, "propshaft would turn too fast"));
    }

    [Fact]
    public void May_end_in_a_plan_that_was_rejected()
    {
        var vehicle = test.Vehicle("Brindle");
        var axle = test.Axle("3.08 axle");
        var plan = test.Shop.Add(new Plan(vehicle) { Name = "long legs", Date = new(2026, 5, 3), Changes = [new(Position.Tyres, "235/75R15"), new(Position.RearAxle, axle)] });
        Assert.Throws<RefusedException>(() => test.Shop.Change(plan, p => p.State = PlanState.Rejected));
        test.Shop.Change(plan, p => (p.State, p.Reason) = (PlanState.Rejected, "propshaft would turn too fast"));
        test.Reopen();
        Assert.Equal([new(Position.RearAxle, "", axle.Id), new(Position.Tyres, "235/75R15")], Assert.Single(test.Shop.Plans(vehicle)).Changes);
    }

    [Fact]
    public void May_end_in_a_plan_of_another_load_and_other_wishes()
    {
        var vehicle = test.Vehicle("Brindle");
        test.Shop.Add(new Plan(vehicle) { Name = "with a trailer", Date = new(2026, 5, 3), Wishes = [new(Wish.Cruise, "90 km/h at 2600 rpm"), new(Wish.Mass, " 2.4 t ")] });
        test.Reopen();
        Assert.Equal([new(Wish.Mass, "2.4 t"), new(Wish.Cruise, "90 km/h at 2600 rpm")], Assert.Single(test.Shop.Plans(vehicle)).Wishes);

        Refuses("A plan changes at least one part, the load or a wish.", []);
        Refuses("The mass is changed twice in one plan; keep two plans.", [new(Wish.Mass, "2 t"), new(Wish.Mass, "3 t")]);
        Refuses("'90 km/h' is no cruise: a speed, the word at, and an engine speed.", [new(Wish.Cruise, "90 km/h")]);
        void Refuses(string sentence, IReadOnlyList<PlannedWish> wishes)
            => Assert.Equal(sentence, Assert.Throws<RefusedException>(() => test.Shop.Add(new Plan(vehicle) { Name = "n", Date = new(2026, 5, 3), Wishes = wishes })).Message);
    }

    [Fact]
    public void For_a_plan_is_one_change_with_it_and_holds_it()
    {
        var vehicle = test.Vehicle("Brindle");
        var plan = new Plan(vehicle) { Name = "tall", Date = new(2026, 5, 3), Wishes = [new(Wish.OverallLow, "40"), new(Wish.Hill, "6 % at 90 km/h")] };
        Assert.Throws<RefusedException>(() => test.Shop.Hunt(new WantedPart(vehicle, WantedKind.Axle), plan));
        Assert.Equal((0, 0), (plan.Id, test.Shop.Plans(vehicle).Count));

        test.Shop.Hunt(Axle(vehicle, "2.85", "3.21"), plan);
        test.Reopen();
        Assert.Equal(Assert.Single(test.Shop.Plans(vehicle)).Id, Assert.Single(test.Shop.Wanted(vehicle)).PlanId);
        Assert.Throws<RefusedException>(() => test.Shop.Remove(test.Shop.Plans(vehicle)[0]));

        Assert.Equal("hunted longer axle and kept the plan tall", test.Shop.Undo());
        Assert.Empty(test.Shop.Plans(vehicle));
        Assert.Empty(test.Shop.Wanted(vehicle));
        test.Shop.Redo();
        Assert.NotNull(Assert.Single(test.Shop.Wanted(vehicle)).PlanId);
    }

    private static WantedPart Axle(BuildLog.Data.Vehicles.Vehicle vehicle, string low, string high) => new(vehicle, WantedKind.Axle)
    {
        Title = "longer axle",
        Windows = [new(WindowOf.AxleRatio, low, high)],
        MustHaves = [new("bolt circle", "5 × 114.3")],
        Most = Money.Of(25_000, Currency.Euro),
    };
}
