namespace BuildLog.Languages.Tests;

public sealed class UnsaidTextsTests
{
    // Each beside a text that is said, so that its place is one for people.
    [Theory]
    [InlineData("private static readonly string[] Asked = [\"how many\"]; static void Show() { foreach (var each in Asked) Tell(each); }", "how many")]
    [InlineData("private static readonly IReadOnlyList<string> Asked = [\"how many\"]; static object Show() => Asked.Select(Row); static object Row(string text) => Cell(text);", "how many")]
    [InlineData("private static readonly IReadOnlyList<string> Asked = [\"how many\"]; static object Show() => Asked.Where(each => each.Length > 0).Select(each => Cell(each));", "how many")]
    [InlineData("private static readonly IReadOnlyList<string> Asked = [\"how many\"]; static void Show() => TellAll([.. Asked]);", "how many")]
    [InlineData("static string Show(int[] numbers) => Spoken($\"missing: {string.Join(\", \", numbers.Select(InWords))}\"); static string InWords(int number) => number == 1 ? \"--speed\" : \"the tyre\";", "the tyre")]
    [InlineData("static void Show() => Console.Error.WriteLine(\"no terminal here\");", "no terminal here")]
    public void A_text_that_reaches_people_by_a_list_or_a_method_is_found(string members, string text)
        => Assert.EndsWith(text, Assert.Single(UnsaidTexts.In($$"""
            namespace BuildLog.Example;
            internal static class Example
            {
                {{members}}
                static void Tell(string text) { }
                static void TellAll(IReadOnlyList<string> texts) { }
                static object Cell(string text) => text;
                static void Said() { Tell(Spoken("said")); TellAll([Spoken("said")]); Cell(Spoken("said")); }
            }
            """)), StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_told_to_people_that_is_not_said_in_their_language() => Assert.Empty(UnsaidTexts.All());
}
