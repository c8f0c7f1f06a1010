using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class GearTrainTests
{
    // By hand: 29/19 · 31/14 = 3.3797; 29/19 · 25/18 = 2.1199; 29/19 · 20/23 = 1.3272.
    [Fact]
    public void A_layshaft_box_is_its_constant_mesh_with_each_gears_own_pair()
    {
        var train = GearTrain.Read("29/19 31/14 25/18 20/23 1").OrRefuse();

        Assert.Equal([3.3797, 2.1199, 1.3272, 1], train.Gears.Select(gear => Math.Round(gear.Ratio, 4)));
        Assert.Equal(["29/19 x 31/14", "29/19 x 25/18", "29/19 x 20/23", "direct"], train.Gears.Select(gear => gear.Says));
    }

    [Fact]
    public void A_box_without_constant_mesh_has_one_pair_a_gear()
        => Assert.Equal([3.5, 2], GearTrain.Read("1 42/12 40/20").OrRefuse().Gears.Select(gear => gear.Ratio));

    // Equal sets, a = 36/75 = 0.48: 2.48, 1.48, 1 by i1 = 2 + a, i2 = 1 + a.
    [Fact]
    public void An_automatic_is_two_planetary_sets()
        => Assert.Equal([2.48, 1.48, 1], GearTrain.Read("planetary 75/36 75/36").OrRefuse().Gears.Select(gear => Math.Round(gear.Ratio, 9)));

    [Theory]
    [InlineData("29/19", "write the constant mesh, then each gear's own pair")]
    [InlineData("", "write the constant mesh, then each gear's own pair")]
    [InlineData("29/19 31", "is not a pair of tooth counts")]
    [InlineData("19 31/14", "is not a pair of tooth counts")]
    [InlineData("29/19 25/18 31/14", "Is a pair turned round?")]
    [InlineData("29/19 200/4", "no gear ratio")]
    [InlineData("planetary 75/30", "has two planetary sets")]
    [InlineData("planetary 75/30 75", "is no planetary set")]
    public void What_makes_no_gearbox_is_refused_with_an_example_that_does(string text, string sentence)
    {
        var refusal = GearTrain.Read(text).Refusal!;

        Assert.Contains(sentence, refusal.Sentence, StringComparison.Ordinal);
    }
}
