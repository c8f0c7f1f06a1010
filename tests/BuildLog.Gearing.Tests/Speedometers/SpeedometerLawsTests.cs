using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Speedometers;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Speedometers;

/// <summary>What holds of speedometers and their drives whatever the numbers are.</summary>
public sealed class SpeedometerLawsTests
{
    private static readonly Gen<double> Axles = Gen.Double[2.5, 6];

    private static readonly Gen<double> Tyres = Gen.Double[1.6, 2.8];

    private static readonly Gen<int> Teeth = Gen.Int[5, 25];

    // The drum and the posts are off alike in every run: runs together show what lies between them, and one run cut in pieces is known worse by their number.
    [Fact]
    public void Runs_together_show_what_lies_between_them_and_one_run_in_pieces_is_no_surer()
        => Gen.Select(Gen.Double[5_000, 50_000], Gen.Double[5_000, 50_000], Gen.Double[0.8, 1.2], Gen.Double[0.8, 1.2], Gen.Int[2, 6]).Sample((one, other, share, otherShare, pieces) =>
        {
            var together = Of(new(one, one * share, ""), new(other, other * otherShare, "")).Value;
            var (whole, cut) = (Of(new RunReading(one, one * share, "")), Of([.. Enumerable.Repeat(new RunReading(one / pieces, one * share / pieces, ""), pieces)]));

            Assert.InRange(together, Math.Min(share, otherShare) - 1e-12, Math.Max(share, otherShare) + 1e-12);
            Assert.Equal(whole.Value, cut.Value, 1e-9);
            Assert.Equal(pieces * whole.StandardUncertainty, cut.StandardUncertainty, 1e-9);
        });

    [Fact]
    public void A_shorter_axle_or_a_smaller_tyre_turns_the_cable_faster_by_as_much()
        => Gen.Select(Teeth, Teeth, Axles, Tyres, Gen.Double[1, 1.5]).Sample((drive, driven, axle, tyre, more) =>
        {
            var gears = SpeedometerDrive.Gears(drive, driven);
            var turns = CableTurns.PerMetre(gears, axle, 1, tyre).Value;

            Assert.Equal(turns * more, CableTurns.PerMetre(gears, axle * more, 1, tyre).Value, turns * 1e-9);
            Assert.Equal(turns / more, CableTurns.PerMetre(gears, axle, 1, tyre * more).Value, turns * 1e-9);
        });

    [Fact]
    public void A_swap_and_the_swap_back_leave_the_reading_as_it_was()
        => Gen.Select(Gen.Double[0.7, 1.3], Axles, Axles, Tyres, Tyres).Sample((share, axle, otherAxle, tyre, otherTyre) =>
        {
            var there = new Reading(share).After(axle, otherAxle, tyre, otherTyre);

            Assert.Equal(share, there.After(otherAxle, axle, otherTyre, tyre).Share.Value, 1e-9);
        });

    [Fact]
    public void More_teeth_on_the_driven_gear_never_read_higher()
        => Gen.Select(Teeth, Axles, Tyres, Gen.Double[0.4, 1.2]).Sample((drive, axle, tyre, wanted) =>
        {
            var exactly = DrivenGear.Exactly(SpeedometerDrive.Gears(drive, 20), axle, 1, tyre, wanted);
            var beside = DrivenGear.Beside(exactly);

            Assert.NotEmpty(beside);
            Assert.All(beside.Zip(beside.Skip(1)), pair => Assert.Equal(pair.First.Teeth < pair.Second.Teeth, pair.First.Reading.Share.Value > pair.Second.Reading.Share.Value));
            Assert.All(beside, gear => Assert.InRange(Math.Abs(gear.Teeth - exactly.Value), 0, 1));
        });

    private static Measured Of(params IReadOnlyList<RunReading> runs) => OdometerRun.Of(runs, goodTo: 20, drum: 100).Share;
}
