using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Tyres;

public sealed class SuspectRollTests
{
    // Marks every 2.04 m; the third stands where the fourth should: 4 × 2.04 = 8.16.
    [Fact]
    public void A_turn_that_was_not_counted_is_named()
    {
        var suspect = Assert.Single(Among("1:2040mm", "2:4080mm", "3:8160mm", "5:10200mm"));
        Assert.Equal((2, "one wheel turn was not counted"), (suspect.Index, suspect.Says));
    }

    // 6320 - 6120 = 200 mm; tape and chalk leave 4 · √(2² + 20.4²)/√3 ≈ 50 mm and the line a little more.
    [Fact]
    public void A_misread_tape_is_named_with_its_distance()
    {
        var suspect = Assert.Single(Among("1:2040mm", "2:4080mm", "3:6320mm", "5:10200mm"));
        Assert.Equal(2, suspect.Index);
        Assert.StartsWith("it lies 200 mm too far", suspect.Says, StringComparison.Ordinal);
    }

    // The third stands where the second does, 4.08 m, or where the fifth should, 10.20.
    [Theory]
    [InlineData("3:4080mm", "one wheel turn too many")]
    [InlineData("3:10200mm", "2 wheel turns were not counted")]
    [InlineData("6:8160mm", "2 wheel turns too many")]
    public void Turns_miscounted_either_way_are_named(string mark, string says)
        => Assert.Equal((2, says), Assert.Single(Among("1:2040mm", "2:4080mm", mark, "5:10200mm", "4:8160mm")) is var suspect ? (suspect.Index, suspect.Says) : default);

    [Fact]
    public void A_mark_too_near_is_named_with_its_distance()
        => Assert.StartsWith("it lies 200 mm too near", Assert.Single(Among("1:2040mm", "2:4080mm", "3:5920mm", "5:10200mm")).Says, StringComparison.Ordinal);

    // Two are off, by one turn and by three: the further one spoils the line most.
    [Fact]
    public void Of_several_the_furthest_is_named()
        => Assert.Equal(4, Assert.Single(Among("1:2040mm", "2:4080mm", "3:8160mm", "4:8160mm", "5:16320mm", "6:12240mm", "7:14280mm")).Index);

    [Fact]
    public void One_mark_alone_has_nothing_to_be_held_against() => Assert.Empty(Among("3:6120mm"));

    [Fact]
    public void Of_two_marks_that_disagree_both_are_named() => Assert.Equal([0, 1], Among("1:2040mm", "4:10200mm").Select(suspect => suspect.Index));

    [Fact]
    public void Marks_within_tape_and_chalk_are_left_in_peace() => Assert.Empty(Among("1:2038mm", "2:4084mm", "3:6120mm"));

    private static IReadOnlyList<SuspectRoll> Among(params string[] marks)
        => SuspectRoll.Among(RollOut.Of([.. marks.Select(mark => RollReading.Read(mark).OrRefuse())], new(Loaded: true)));
}
