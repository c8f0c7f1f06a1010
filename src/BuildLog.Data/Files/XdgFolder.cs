namespace BuildLog.Data.Files;

/// <summary>Where a user's programs keep what is of one kind: data, state or cache.</summary>
/// <remarks>The XDG Base Directory Specification, which ignores a relative path. A home that is not there yet is named all the same.</remarks>
public static class XdgFolder
{
    /// <param name="variable">Such as <c>XDG_STATE_HOME</c>.</param>
    /// <param name="usual">Below the home, where the variable says nothing.</param>
    /// <param name="environment">Asked for the variable and for the home; the process's where none is given.</param>
    public static string Of(string variable, string usual, Func<string, string?>? environment = null)
    {
        environment ??= Environment.GetEnvironmentVariable;
        if (environment(variable) is { } named && named.StartsWith('/')) return named;

        var home = environment("HOME") is { Length: > 0 } told ? told : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify);
        return Path.Combine(home, usual);
    }
}
