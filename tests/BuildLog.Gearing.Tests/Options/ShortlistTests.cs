using System.Numerics;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What may yet be better than the best that every check was asked of.</summary>
public sealed class ShortlistTests
{
    private static readonly OptionScore Best = new(1, 0, 2, 0, 0, 0);

    // One clash less is better whatever else there is, and so is one watch less; as much is not.
    [Fact]
    public void It_names_what_has_better_verdicts_the_most_promising_first()
    {
        var list = new Shortlist(Best.Verdicts, at => at.Tyres == 3, 2);
        foreach (var (clash, open, watch, tyres) in ((double, double, double, int)[])[(1, 0, 1, 0), (0, 9, 9, 1), (1, 0, 2, 2), (0, 0, 0, 3), (0, 1, 0, 4), (1, 1, 0, 5)]) Take(list, new(clash, open, watch, 0, 0, 0), tyres);

        Assert.Equal(3, list.Count);
        Assert.Equal([4, 1], list.Named.Select(each => each.At.Tyres));
    }

    [Fact]
    public void What_two_cores_came_to_is_one()
    {
        Shortlist one = new(Best.Verdicts, _ => false, 2), other = new(Best.Verdicts, _ => false, 2);
        for (var k = 0; k < 5; k++) Take(one, Best with { Clash = 0, Watch = k }, k);
        for (var k = 5; k < 12; k++) Take(other, Best with { Clash = 0, Watch = 11 - k }, k);
        one.Add(other);

        Assert.Equal(12, one.Count);
        Assert.Equal([0, 11], one.Named.Select(each => each.At.Tyres));
    }

    // 3.35 on 2.56 m meets the cruise (40 rev/s want 2.618 on 2.00 m), and neither alone; but all those wheels have four holes for five studs, so each pair clashes as much as the one
    // wish does now. 900 pairs are more than every check is asked of.
    [Fact]
    public void What_was_too_much_to_ask_every_check_of_is_said()
    {
        var car = InventedCar.Plain with { RearAxle = Geared(4.10), Tyres = Holed(2.00, 5) };
        var here = CandidateParts.InPlace(car);
        var parts = here with
        {
            Axles = [.. here.Axles, .. Enumerable.Range(0, 30).Select(k => new Candidate<Axle>($"axle {k}", Geared(3.35 + (0.0005 * k)), Pool.Owned))],
            Tyres = [.. here.Tyres, .. Enumerable.Range(0, 30).Select(k => new Candidate<TyreSet>($"set {k}", Holed(2.56 + (0.0005 * k), 4), Pool.Owned))],
        };

        var answer = OptionSearch.Run(car, new([RandomShop.Wishes.Cruise[0]]), parts, cancel: TestContext.Current.CancellationToken);

        Assert.Equal(31 * 31, answer.Tried);
        Assert.True(answer.JudgedFully < 400);
        Assert.Equal(answer.Tried - answer.JudgedFully, answer.MightBeBetter);
    }

    private static Axle Geared(double ratio) => InventedCar.Axle(ratio) with { Hub = new(Studs: 5) };

    private static TyreSet Holed(double metres, int holes) => InventedCar.Rolling(metres) with { Wheel = new(Bolting: new(Studs: holes)) };

    private static void Take(Shortlist list, OptionScore score, int tyres)
    {
        static Vector<double> All(double value) => new(value);
        list.Take(new(All(score.Clash), All(score.Open), All(score.Watch), All(score.Cost), All(score.Changes), All(score.Distance), Vector<long>.Zero), new(0, 0, 0, tyres), 1);
    }
}
