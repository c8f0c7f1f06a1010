using System.Numerics;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What is gone through a million times a search makes nothing for the garbage collector.</summary>
public sealed class InnerRelationTests
{
    private const int Tyres = 64;

    [Fact]
    public void A_row_of_tyres_is_judged_without_allocating()
    {
        var goals = new OwnersGoals([InventedCar.Goal("110 km/h", "2400 rpm")]);
        var columns = new TyreColumns(InventedCar.Plain, goals, Shop(), Vector<double>.Count, stepsPerLog: 10);
        var pull = new PullVerdict[] { new(1, 0, 0, false), new(0, 0, 1, true) };

        Assert.Equal(0, Allocated(() => JudgeAll(columns, pull)));
    }

    [Fact]
    public void A_walk_for_the_top_speed_allocates_nothing_at_a_step()
    {
        var car = InventedLoad.Car;
        var reserve = InventedLoad.Pull(car).NominalReserve(InventedLoad.Step(car));

        Assert.Equal(0, Allocated(() => reserve(20)));
    }

    private static double JudgeAll(TyreColumns columns, PullVerdict[] pull)
    {
        ReadOnlySpan<CruiseTerm> terms = [new(25, 1e-5, new Window(38, 42), 40, 1)];
        var row = new CruiseRow(columns, terms, default, StudentT.Normal975, 2.1, pull: new(pull, 8));
        var worst = 0.0;
        for (var start = 0; start < Tyres; start += Vector<double>.Count) worst = Math.Max(worst, row.Judge(start)[0].Distance);
        return worst;
    }

    // Bytes of a hundred goes, after a first one that the compiler needed.
    private static long Allocated(Func<double> work)
    {
        _ = work();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var k = 0; k < 100; k++) _ = work();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static CandidateParts Shop() => CandidateParts.InPlace(InventedCar.Plain) with
    {
        Tyres = [.. Enumerable.Range(0, Tyres).Select(k => new Candidate<TyreSet>($"set {k}", InventedCar.Rolling(InventedCar.Of(1.8 + (0.01 * k), 0.01)), Pool.Owned))],
    };
}
