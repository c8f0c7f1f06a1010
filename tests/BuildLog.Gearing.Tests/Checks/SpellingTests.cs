using BuildLog.Gearing.Checks;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class SpellingTests
{
    [Theory]
    [InlineData("M12×1.5", "m12 x 1.50")]
    [InlineData("M12×1.5", "M12*1,5")]
    [InlineData("5 × 120", "5x120.0")]
    [InlineData("Corvane six", "CORVANE SIX")]
    [InlineData("26 × 1 1/8 in", "26x1 1/8in")]
    public void One_thing_is_one_however_it_is_written(string one, string other) => Assert.True(Spelling.IsSame(one, other));

    [Theory]
    [InlineData("M12×1.5", "M12×1.25")]
    [InlineData("M12×1.5", "M12×1.05")]
    [InlineData("5 × 112", "5 × 11.2")]
    [InlineData("10 × 1", "10 × 10")]
    public void Other_numbers_are_other_things(string one, string other) => Assert.False(Spelling.IsSame(one, other));
}
