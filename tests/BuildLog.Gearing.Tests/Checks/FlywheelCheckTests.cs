using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: a clutch needs a flywheel, a converter a flexplate.</remarks>
public sealed class FlywheelCheckTests
{
    [Theory]
    [InlineData(Plate.Flywheel, false, Verdict.Fits)]
    [InlineData(Plate.Flexplate, false, Verdict.Clash)]
    [InlineData(Plate.Flexplate, true, Verdict.Fits)]
    [InlineData(Plate.Flywheel, true, Verdict.Clash)]
    public void A_clutch_wants_a_flywheel_and_a_converter_a_flexplate(Plate plate, bool automatic, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new FlywheelCheck(), InventedJoint.Of(new() { Plate = plate }, new(), automatic)).Verdict);

    [Fact]
    public void The_plate_that_is_needed_is_the_cure()
        => Assert.Equal(
            ["a flexplate for this engine, with the ring gear its starter wants"],
            CheckCase.Find(new FlywheelCheck(), InventedJoint.Of(new() { Plate = Plate.Flywheel }, new(), automatic: true)).Cures);

    [Fact]
    public void What_a_gearbox_needs_is_no_look_at_the_engine() => Assert.Empty(CheckCase.Look(new FlywheelCheck(), InventedJoint.Of(new(), new())));
}
