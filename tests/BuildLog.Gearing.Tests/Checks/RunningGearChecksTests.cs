using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class RunningGearChecksTests
{
    private static readonly string[] Ids =
    [
        "propshaft-speed", "propshaft-half-critical", "joint-angles", "torsional-residual", "phasing", "slip-travel", "joint-torque", "four-wheel-match",
        "wheel-bolts", "track", "rim-width", "tyre-load", "tyre-speed", "tyre-diameter", "tyre-width", "speedometer",
    ];

    // One way each to take a number or a part away.
    private static readonly Func<Driveline, Driveline>[] Losses =
    [
        car => car with { Engine = null },
        car => car with { Transmission = null },
        car => car with { TransferCase = null },
        car => car with { TransferCase = car.TransferCase is null ? null : car.TransferCase with { FrontDrive = null } },
        car => car with { TransferCase = new("case", null, null) },
        car => car with { RearAxle = null },
        car => car with { RearAxle = new("axle", null) },
        car => car with { FrontAxle = null },
        car => car with { FrontAxle = new("axle", null) { Hub = new(), Travel = new() } },
        car => car with { Tyres = null },
        car => car with { Tyres = new("tyres", null, null) { Wheel = new() } },
        car => car with { Tyres = car.Tyres is null ? null : car.Tyres with { FrontPair = new("front tyres", null, null) } },
        car => car with { Propshaft = null },
        car => car with { Propshaft = new("bare", new ShaftPiece(), new ShaftPiece()) { Slip = new() } },
        car => car with { FrontPropshaft = new("bare", InventedShaft.Piece) { Line = [new(null), new(null), new(null)] } },
        car => car with { AxleMasses = new() },
        car => car with { Speedometer = new("bare") },
    ];

    [Fact]
    public void Every_check_says_something_of_a_vehicle_on_which_all_is_known()
    {
        var findings = Look(InventedTruck.Whole, InventedTruck.Goals);

        Assert.Equal(Ids.Order(), findings.Select(finding => finding.Check).Distinct().Order());
        Assert.DoesNotContain(findings, finding => finding.Verdict == Verdict.Open);
    }

    [Fact]
    public void Of_a_car_of_which_nothing_was_asked_they_say_nothing() => Assert.Empty(Look(InventedCar.Plain, OwnersGoals.None));

    // Whatever is missing: nobody throws, every verdict but fits names a cure, and what is open names no number.
    [Fact]
    public void Whatever_is_missing_is_named_with_a_cure()
        => Gen.Select(Gen.Bool.Array[Losses.Length], Gen.Bool).Sample((lost, goals) =>
        {
            var car = Losses.Where((_, k) => lost[k]).Aggregate(InventedTruck.Whole, (left, loss) => loss(left));

            Assert.All(Look(car, goals ? InventedTruck.Goals : OwnersGoals.None), finding =>
            {
                Assert.NotEmpty(finding.Says);
                Assert.Equal(finding.Verdict == Verdict.Open, finding.Because == Because.MissingInput);
                if (finding.Verdict != Verdict.Fits) Assert.NotEmpty(finding.Cures);
                if (finding.Verdict == Verdict.Open) Assert.Null(finding.Value);
            });
        });

    private static List<Finding> Look(Driveline car, OwnersGoals goals) => [.. AllChecks.Look(car, goals).Where(finding => Ids.Contains(finding.Check))];
}
