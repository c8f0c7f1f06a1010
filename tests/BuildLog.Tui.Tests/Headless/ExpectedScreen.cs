namespace BuildLog.Tui.Tests.Headless;

/// <summary>Holds a screen against its picture in Screens/NAME.txt.</summary>
/// <remarks>To take new pictures after an intended change: BUILDLOG_SCREENS=path/to/Screens dotnet test …, then read the difference.</remarks>
internal static class ExpectedScreen
{
    public static void Matches(string name, string screen)
    {
        if (Environment.GetEnvironmentVariable("BUILDLOG_SCREENS") is { Length: > 0 } folder)
        {
            File.WriteAllText(Path.Combine(folder, name + ".txt"), screen);
            return;
        }

        var file = Path.Combine(AppContext.BaseDirectory, "Screens", name + ".txt");
        Assert.True(File.Exists(file), $"There is no picture Screens/{name}.txt yet. The screen is:\n{screen}");
        Assert.Equal(File.ReadAllText(file), screen);
    }
}
