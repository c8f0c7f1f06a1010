using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same direction fits, the other clashes.</remarks>
public sealed class RotationCheckTests
{
    [Theory]
    [InlineData(Sense.Clockwise, Sense.Clockwise, Verdict.Fits)]
    [InlineData(Sense.Anticlockwise, Sense.Clockwise, Verdict.Clash)]
    public void An_engine_turns_the_way_the_gearbox_was_made_for(Sense engine, Sense box, Verdict verdict)
        => Assert.Equal(verdict, Find(engine, box).Verdict);

    [Fact]
    public void A_gearbox_for_that_sense_or_a_turned_axle_is_the_cure()
        => Assert.Equal(
            [
                "a gearbox made for an engine that turns anticlockwise",
                "an axle with its ring gear on the other side of the pinion, if the gearbox's oiling allows it",
            ],
            Find(Sense.Anticlockwise, Sense.Clockwise).Cures);

    private static Finding Find(Sense engine, Sense box) => CheckCase.Find(new RotationCheck(), InventedJoint.Of(new() { Turns = engine }, new() { Turns = box }));
}
