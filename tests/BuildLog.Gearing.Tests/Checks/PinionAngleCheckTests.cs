using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: 1°, a shaft maker's manual.</remarks>
public sealed class PinionAngleCheckTests
{
    // Pad 1° and pinion 2° over the perches make 3°; the output lies at 3.5°, within the degree, or at 6°, three off.
    [Theory]
    [InlineData(3.5, Verdict.Fits)]
    [InlineData(6, Verdict.Watch)]
    [InlineData(1, Verdict.Watch)]
    public void The_pinion_will_lie_parallel_to_the_output(double output, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new PinionAngleCheck(), Car(output, 1)).Verdict);

    [Fact]
    public void A_wedge_turns_the_pinion_back()
    {
        Assert.Equal(["wedges of 3.0° at the perches that turn the pinion's front end up"], CheckCase.Find(new PinionAngleCheck(), Car(6, 1)).Cures);
        Assert.Equal(["wedges of 2.0° at the perches that turn the pinion's front end down"], CheckCase.Find(new PinionAngleCheck(), Car(1, 1)).Cures);
    }

    [Fact]
    public void The_springs_angle_is_asked_for()
        => Assert.Contains("lay an angle gauge on the spring", Assert.Single(CheckCase.Find(new PinionAngleCheck(), Car(3, null)).Cures), StringComparison.Ordinal);

    private static Driveline Car(double output, double? pad) => InventedCar.Plain with
    {
        Propshaft = new("shaft", new ShaftPiece()) { Line = [new(Degrees(output)), new(null), new(null)] },
        RearAxle = InventedCar.Axle(4.1) with { PinionToPerch = Degrees(2) },
        RearHanging = new(Pad: pad is { } known ? Degrees(known) : null),
    };

    private static Known Degrees(double value) => InventedShaft.Known(value * InventedShaft.Degree);
}
