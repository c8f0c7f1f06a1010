using BuildLog.Gearing.Checks;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class AllChecksTests
{
    [Fact]
    public void Every_check_has_an_id_and_a_title_of_its_own()
    {
        Assert.Equal(AllChecks.List.Count, AllChecks.List.Select(check => check.Id).Distinct().Count());
        Assert.Equal(AllChecks.List.Count, AllChecks.List.Select(check => check.Title).Distinct().Count());
        Assert.All(AllChecks.List, check => Assert.NotEmpty(check.Title));
    }

    [Fact]
    public void Every_check_that_was_written_is_in_the_list()
        => Assert.Equal(Written.Order(StringComparer.Ordinal), AllChecks.List.Select(check => check.GetType().Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_check_has_a_test_class_of_its_name()
    {
        var classes = typeof(AllChecksTests).Assembly.GetTypes().Where(type => type.Namespace == typeof(AllChecksTests).Namespace).Select(type => type.Name).ToHashSet();

        Assert.All(Written, check => Assert.Contains($"{check}Tests", classes));
    }

    private static IEnumerable<string> Written
        => typeof(ICheck).Assembly.GetTypes().Where(type => type is { IsAbstract: false } && type.IsAssignableTo(typeof(ICheck))).Select(type => type.Name);
}
