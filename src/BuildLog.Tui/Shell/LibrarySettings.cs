using System.Runtime.CompilerServices;
using Terminal.Gui.Configuration;

namespace BuildLog.Tui.Shell;

/// <summary>What the library is told of our look before it reads its settings: it does so when it is loaded, and a second time would take as long as a frame.</summary>
internal static class LibrarySettings
{
    private const string Variable = "TUI_CONFIG"; // read last of all, so that a stray ./.tui file cannot restyle the workbench
    private const string Theme = "Bench";

    private const string Ours =
        """
        {
          "Theme": "Bench",
          "Themes": {
            "Bench": {
              "Dialog": { "DefaultBorderStyle": "Single", "DefaultShadow": "None" },
              "MessageBox": { "DefaultBorderStyle": "Single" },
              "Button": { "DefaultShadow": "None" }
            }
          }
        }
        """;

    /// <summary>Loads the library with our settings.</summary>
    public static void Load()
    {
        var before = Environment.GetEnvironmentVariable(Variable);
        Environment.SetEnvironmentVariable(Variable, Ours);
        try
        {
            Touch();
        }
        finally
        {
            Environment.SetEnvironmentVariable(Variable, before);
        }

        if (!AreRead()) ReadAgain();
    }

    // Apart, because a method that names the library loads it before its own first line.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Touch() => RuntimeHelpers.RunModuleConstructor(typeof(ThemeSettings).Module.ModuleHandle);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool AreRead() => ThemeSettings.Defaults.Theme == Theme;

    // Somebody loaded it before us, as tests do.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void ReadAgain()
    {
        TuiConfigurationBuilder.Shared.RuntimeConfig = Ours;
        TuiConfigurationBuilder.Shared.ApplyToStaticFacades();
    }
}
