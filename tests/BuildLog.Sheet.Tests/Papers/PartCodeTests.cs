using BuildLog.Sheet.Papers.Labels;

namespace BuildLog.Sheet.Tests.Papers;

public sealed class PartCodeTests
{
    private static readonly Guid Part = new("3f0a4c51-6f54-4c0e-9a94-0d2a5c1d7e22");

    // By a second route, in another language: the first eight bytes of SHA-256 over the number's sixteen, least byte first, in base 23.
    [Fact]
    public void A_code_belongs_to_its_part_for_good() => Assert.Equal("GJ4-THF", PartCode.Of(Part));

    [Fact]
    public void Codes_have_no_signs_that_are_taken_for_each_other()
        => Assert.All(Enumerable.Range(1, 2000), i => Assert.Matches("^[34679ACDEFGHJKMNPQRTWXY]{3}-[34679ACDEFGHJKMNPQRTWXY]{3}$", PartCode.Of(Numbered(i))));

    [Fact]
    public void The_parts_of_a_large_shop_have_codes_of_their_own()
        => Assert.Equal(2000, Enumerable.Range(1, 2000).Select(i => PartCode.Of(Numbered(i))).Distinct().Count());

    private static Guid Numbered(int i) => new(i, 0, 0, 1, 2, 3, 4, 5, 6, 7, 8);
}
