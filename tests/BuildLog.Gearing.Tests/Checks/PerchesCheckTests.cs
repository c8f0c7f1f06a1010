using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry; the allowances of 2 and 6 mm are our own choice, without a source.</remarks>
public sealed class PerchesCheckTests
{
    [Theory]
    [InlineData(1020, 1020, Verdict.Fits)]
    [InlineData(1024, 1020, Verdict.Watch)]
    [InlineData(1080, 1020, Verdict.Watch)]
    public void Perches_stand_where_the_springs_hang(double perches, double springs, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new PerchesCheck(), Car(perches, springs)).Verdict);

    [Fact]
    public void Perches_are_welded_on_where_the_springs_are()
        => Assert.Equal(["perches welded on 1019 to 1021 mm apart"], CheckCase.Find(new PerchesCheck(), Car(1080, 1020)).Cures);

    [Fact]
    public void One_of_the_two_measured_asks_for_the_other_and_neither_says_nothing()
    {
        Assert.Equal(["measure the springs apart, middle to middle, and enter it with the vehicle"], CheckCase.Find(new PerchesCheck(), Car(1080, null)).Cures);
        Assert.Equal(["measure the perches apart, centre hole to centre hole"], CheckCase.Find(new PerchesCheck(), Car(null, 1020)).Cures);
        Assert.Empty(CheckCase.Look(new PerchesCheck(), Car(null, null)));
    }

    private static Driveline Car(double? perches, double? springs) => InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(4.1) with { Perches = InventedJoint.Millimetres(perches) },
        RearHanging = new(InventedJoint.Millimetres(springs)),
    };
}
