using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What each part alone brings decides which parts are combined in which round.</summary>
public sealed class PartsAloneTests
{
    private static readonly Finding Any = AllChecks.Look(InventedCar.Plain, new([InventedCar.Goal("108 km/h", "3000 rpm")])).First(finding => finding.Check == "cruise");

    private static readonly Finding[] Now = [Unseen(Verdict.Clash), Unseen(Verdict.Open), Unseen(Verdict.Watch)];

    private static readonly Dictionary<string, Finding[]> Brings = new()
    {
        ["axle"] = Now,
        ["alike"] = Now,
        ["better"] = [],
        ["clash"] = [.. Now, Unseen(Verdict.Clash)],
        ["open"] = [.. Now, Unseen(Verdict.Open)],
        ["watch"] = [.. Now, Unseen(Verdict.Watch)],
        ["cruise"] = [.. Now, Any with { Verdict = Verdict.Clash }],
    };

    // What the fast way judges anyhow keeps nobody out, and what stands already is nobody's doing.
    [Fact]
    public void All_are_combined_then_those_that_bring_no_clash_and_then_those_that_bring_nothing_at_all()
        => Assert.Equal(
            ["axle alike better clash open watch cruise", "axle alike better open watch cruise", "axle alike better cruise"],
            Alone(inPlace: true).Rounds.Select(round => string.Join(' ', round.Parts.Axles.Select(axle => axle.Name))));

    // Where nothing is in place, the first is what the others are held against.
    [Fact]
    public void Where_nothing_is_in_place_the_first_stands_for_it() => Assert.Equal(0, Alone(inPlace: false).AsItIs.Distance);

    [Fact]
    public void A_round_knows_its_combinations_among_all()
        => Assert.Equal(new(0, 0, 6, 0), Alone(inPlace: true).Rounds[^1].Of(new(0, 0, 3, 0)));

    private static PartsAlone Alone(bool inPlace)
    {
        var here = CandidateParts.InPlace(InventedCar.Plain);
        var parts = here with { Axles = [.. Brings.Keys.Select((name, k) => new Candidate<Axle>(name, InventedCar.Axle(4.1), Pool.Owned) { IsInPlace = inPlace && k == 0 })] };
        return new(parts, Judge, 1, TestContext.Current.CancellationToken);

        Option Judge(Combination at) => new(parts.Gearboxes[0], parts.Overdrives[0], parts.Axles[at.Axle], parts.Tyres[0], InventedCar.Plain, new(0, 0, 0, 0, 0, at.Axle)) { Findings = Brings[parts.Axles[at.Axle].Name] };
    }

    // Of a check that the fast way does not know.
    private static Finding Unseen(Verdict verdict) => Any with { Check = "wheel-bolts", Verdict = verdict };
}
