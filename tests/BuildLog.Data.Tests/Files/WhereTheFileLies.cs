using BuildLog.Data.Files;
using Xunit;

namespace BuildLog.Data.Tests.Files;

public sealed class WhereTheFileLies
{
    [Fact]
    public void In_the_data_folder_that_is_set()
        => Assert.Equal("/data/me/buildlog/shop.db", OnUnix(("XDG_DATA_HOME", "/data/me"), ("HOME", "/home/me")));

    [Fact]
    public void In_the_usual_one_if_none_is_set()
        => Assert.Equal("/home/me/.local/share/buildlog/shop.db", OnUnix(("HOME", "/home/me")));

    // XDG Base Directory Specification: "All paths set in these environment variables must be absolute. If an implementation encounters a
    // relative path in any of these variables it should consider the path invalid and ignore it."
    [Theory]
    [InlineData("")]
    [InlineData("relative/folder")]
    public void In_the_usual_one_if_the_set_one_is_no_absolute_path(string set)
        => Assert.Equal("/home/me/.local/share/buildlog/shop.db", OnUnix(("XDG_DATA_HOME", set), ("HOME", "/home/me")));

    [Fact]
    public void In_the_local_application_data_on_windows()
        => Assert.Equal(Path.Combine("C:/Users/me/AppData/Local", "BuildLog", "shop.db"), ShopFile.DefaultPath(name => name == "LOCALAPPDATA" ? "C:/Users/me/AppData/Local" : null, windows: true));

    private static string OnUnix(params (string Name, string Value)[] set)
        => ShopFile.DefaultPath(name => set.Where(entry => entry.Name == name).Select(entry => entry.Value).FirstOrDefault(), windows: false);
}
