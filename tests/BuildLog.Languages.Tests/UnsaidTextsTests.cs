namespace BuildLog.Languages.Tests;

public sealed class UnsaidTextsTests
{
    [Fact]
    public void Nothing_is_told_to_people_that_is_not_said_in_their_language() => Assert.Empty(UnsaidTexts.All());
}
