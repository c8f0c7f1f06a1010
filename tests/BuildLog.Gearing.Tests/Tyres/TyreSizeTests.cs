using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class TyreSizeTests
{
    // By hand: 215/65R15 is 381 + 279.5 = 660.5 mm high; π D = 2075.0 mm; · 0.971 = 2014.8 mm.
    [Fact]
    public void The_circumferences_follow_from_the_label()
    {
        var size = Read("215/65R15");

        Assert.Equal(0.6605, size.OverallDiameter, 1e-12);
        Assert.Equal(2.0750, size.FreeCircumference, 5e-5);
        Assert.Equal(2.0149, size.RollingCircumference.Value, 1e-4);
    }

    // 1 % for tyres of one marking that differ, 0.010 of 0.971 for the loaded factor: √(0.01² + (0.010/0.971)²) = 1.4355 %.
    [Fact]
    public void A_label_says_a_circumference_to_about_one_and_a_half_per_cent()
        => Assert.Equal(0.014355, Read("215/65R15").RollingCircumference.RelativeUncertainty, 1e-6);

    [Fact]
    public void Two_labels_share_the_loaded_factor_and_nothing_else()
    {
        var quotient = Read("215/65R15").RollingCircumference / Read("205/65R15").RollingCircumference;

        Assert.Equal(Math.Sqrt(2) * 0.01, quotient.RelativeUncertainty, 1e-9);
    }

    [Fact]
    public void What_the_label_does_not_carry_is_null()
    {
        var bare = Read("205/65R15");

        Assert.Null(bare.LoadCapacityKg);
        Assert.Null(bare.LoadCapacityDualKg);
        Assert.Null(bare.SpeedLimitKmh);
    }

    // Load indices 120 and 116 are 1400 and 1250 kg, Q is 160 km/h (Directive 92/23/EEC).
    [Fact]
    public void Load_and_speed_follow_from_their_index_and_symbol()
    {
        var size = Read("LT235/85R16 120/116Q");

        Assert.Equal((1400.0, 1250.0, 160), (size.LoadCapacityKg, size.LoadCapacityDualKg, size.SpeedLimitKmh));
    }

    private static TyreSize Read(string text) => TyreSizeText.Read(text).OrRefuse();
}
