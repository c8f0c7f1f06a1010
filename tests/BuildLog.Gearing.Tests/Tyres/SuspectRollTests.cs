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

    [Fact]
    public void Of_two_marks_that_disagree_both_are_named() => Assert.Equal([0, 1], Among("1:2040mm", "4:10200mm").Select(suspect => suspect.Index));

    [Fact]
    public void Marks_within_tape_and_chalk_are_left_in_peace() => Assert.Empty(Among("1:2038mm", "2:4084mm", "3:6120mm"));

    private static IReadOnlyList<SuspectRoll> Among(params string[] marks)
        => SuspectRoll.Among(RollOut.Of([.. marks.Select(mark => RollReading.Read(mark).OrRefuse())], new(Loaded: true)));
}
