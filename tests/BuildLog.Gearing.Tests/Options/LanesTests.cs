using System.Numerics;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>As many combinations as a vector holds, judged at once.</summary>
public sealed class LanesTests
{
    private static readonly OptionScore Even = new(1, 1, 1, 1, 1, 1);

    // One thing worse is enough, whichever it is; one thing better is enough not to be.
    [Fact]
    public void Lanes_are_dominated_as_single_scores_are()
    {
        OptionScore[] others =
        [
            Even, Even with { Clash = 2 }, Even with { Open = 2 }, Even with { Watch = 2 }, Even with { Cost = 2 }, Even with { Changes = 2 }, Even with { Distance = 2 },
            Even with { Clash = 0 }, Even with { Clash = 2, Distance = 0 }, Even with { Open = 2, Changes = 0 },
        ];

        Assert.All(others, other => Assert.Equal(Even.Dominates(other) ? Vector<long>.AllBitsSet : Vector<long>.Zero, All(other).DominatedBy(Even)));

        static Lanes All(OptionScore score)
            => new(new(score.Clash), new(score.Open), new(score.Watch), new(score.Cost), new(score.Changes), new(score.Distance), Vector<long>.Zero);
    }

    // 40 rev/s times metres on 1.00 m, 36 to 44 wanted, known to 5 % (u): 1.96 of it is 3.9, 2.4 of it 4.8, which need not be within; so twice over. Known to 6 %, it is not within by 1.96 either.
    [Fact]
    public void Two_wishes_that_cannot_be_told_leave_it_unsure()
    {
        var columns = new TyreColumns(InventedCar.Plain, OwnersGoals.None, Shop(1), Vector<double>.Count);
        CruiseTerm term = new(40, 0.03 * 0.03, new(36, 44), 40, 1);

        Assert.Equal(0, Judge(term).Unsure[0]);
        Assert.Equal(-1, Judge(term with { Spread = 0.05 * 0.05 }).Unsure[0]);
        Assert.Equal((0, 1), (Judge(term with { Spread = 0.06 * 0.06 }).Unsure[0], Judge(term with { Spread = 0.06 * 0.06 }).Watch[0]));
        Assert.Equal(-1, Judge(term with { Spread = 0.05 * 0.05 }, term with { Spread = 0.05 * 0.05 }).Unsure[0]);

        Lanes Judge(params CruiseTerm[] terms) => new CruiseRow(columns, terms, default, 1.96, 2.4).Judge(0);
    }

    // 1/2.5, 1/2 and 1/1.6 turns a metre, ten steps for a factor of e; the others of the vector stand for nothing.
    [Fact]
    public void Columns_know_how_far_tyres_move_an_axle_and_who_is_known_least()
    {
        var columns = new TyreColumns(InventedCar.Plain, OwnersGoals.None, Shop(2.5, 2, Measured.From(1.6, new Input("count", 0.01, new Evidence("count"), 3)), 1.7), 8, stepsPerLog: 10);

        Assert.Equal((4, 8), (columns.Count, columns.Turns.Length));
        Assert.Equal((10 * Math.Log(0.4), 10 * Math.Log(0.625)), (columns.LeastPullSteps, columns.MostPullSteps));
        Assert.Equal(4, new TyreColumns(InventedCar.Plain, OwnersGoals.None, Shop(2.5, 2, 1.6, 1.7), 4).Turns.Length);
        Assert.Equal(3, columns.LeastFreedom, 1e-9);
        Assert.Equal(0.00625 * 0.00625, columns.Spread[2], 1e-12);
    }

    private static CandidateParts Shop(params Measured[] circumferences) => CandidateParts.InPlace(InventedCar.Plain) with
    {
        Tyres = [.. circumferences.Select(circumference => new Candidate<TyreSet>("set", InventedCar.Rolling(circumference), Pool.Owned))],
    };
}
