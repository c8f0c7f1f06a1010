using BuildLog.Gearing.Ratios;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Ratios;

public sealed class TurnsToSettleTests
{
    // By hand, one held, r = 0.25, a = 0: u(W) = 0.25/√3/W = 0.14434/W; 4.1 from 3.9 is 0.2 = 4 u(W): W = 2.887, three turns.
    // 4.10 from 37/9 = 4.1111: W = 4 · 0.14434 / 0.01111 = 51.96.
    [Theory]
    [InlineData(4.1, 3.9, Wheels.OneHeld, 3)]
    [InlineData(4.1, 3.9, Wheels.Together, 2)]
    [InlineData(4.1, 4.1111111, Wheels.OneHeld, 52)]
    [InlineData(4.1, 4.1111111, Wheels.Together, 26)]
    [InlineData(2, 9, Wheels.OneHeld, 1)]
    public void Turns_are_counted_until_the_ratios_lie_four_uncertainties_apart(double one, double other, Wheels wheels, int turns)
        => Assert.Equal(turns, TurnCount.WheelTurnsToTell(one, other, wheels, new CountPrecision(0.25, 0)));

    [Fact]
    public void One_turn_less_would_not_do()
        => Gen.Select(Gen.Double[2, 8], Gen.Double[0.01, 1], Gen.Enum<Wheels>(), Gen.Double[0.05, 0.5], Gen.Double[0, 0.05])
            .Sample((ratio, apart, wheels, readTo, align) =>
            {
                var how = new CountPrecision(readTo, align);
                var turns = TurnCount.WheelTurnsToTell(ratio, ratio + apart, wheels, how);
                var wheelsTurned = wheels == Wheels.OneHeld ? 1 : 2;

                Assert.True(apart >= (4 * TurnCount.UncertaintyOver(turns * wheelsTurned, ratio, wheels, how)) - 1e-9);
                if (turns > 1) Assert.True(apart < 4 * TurnCount.UncertaintyOver((turns - 1) * wheelsTurned, ratio, wheels, how));
            });
}
