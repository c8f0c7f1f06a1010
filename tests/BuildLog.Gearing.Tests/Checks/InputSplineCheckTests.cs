using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry: the same words fit, another number of splines clashes.</remarks>
public sealed class InputSplineCheckTests
{
    // Count and size decide; a size written in other units may be the same.
    [Theory]
    [InlineData("26 × 1 1/8 in", "26x1 1/8in", Verdict.Fits)]
    [InlineData("26 × 1 1/8 in", "26 × 29 mm", Verdict.Watch)]
    [InlineData("26 × 1 1/8 in", "10 × 1 1/8 in", Verdict.Clash)]
    [InlineData("coarse", "fine", Verdict.Clash)]
    public void A_disc_slides_on_as_many_splines(string input, string disc, Verdict verdict)
    {
        var finding = CheckCase.Find(new InputSplineCheck(), InventedJoint.Of(new(), new() { InputSpline = input, DiscSpline = disc }));

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Clash) Assert.Equal([$"a clutch disc with a spline of {input}"], finding.Cures);
    }

    [Fact]
    public void Behind_a_converter_it_is_the_converter_that_slides_on()
    {
        var finding = CheckCase.Find(new InputSplineCheck(), InventedJoint.Of(new(), new() { InputSpline = "30 splines", DiscSpline = "24 splines" }, automatic: true));

        Assert.Equal(["a converter with a spline of 30 splines"], finding.Cures);
        Assert.Equal([Position.Engine, Position.Transmission], finding.Between);
    }
}
