using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.CompilerServices;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Mutation;

/// <summary>Makes the static values of engine and tests ready while no change of the engine is active.</summary>
/// <remarks>
/// One process tries many changes one after another, and a static value is made once in it. Made under a change it would fail, or save, all the changes that
/// come after it. The runner names the active change in a file of four bytes; until the values are made, that file says "none".
/// </remarks>
internal static class StaticsFirst
{
    private static readonly byte[] None = BitConverter.GetBytes(-1);

    [ModuleInitializer]
    [SuppressMessage("Usage", "CA2255:The 'ModuleInitializer' attribute should not be used in libraries", Justification = "A test project is a program, and nothing of it may run before this.")]
    internal static void MakeReady()
    {
        if (Environment.GetEnvironmentVariable("STRYKER_MUTANT_FILE") is not { } file || !File.Exists(file)) return;

        var active = File.ReadAllBytes(file);
        Write(file, None);
        Assembly[] both = [typeof(Measured).Assembly, typeof(StaticsFirst).Assembly];
        foreach (var type in both.SelectMany(assembly => assembly.GetTypes()).Where(type => !type.ContainsGenericParameters && type.TypeInitializer is not null && type.Name != "MutantControl"))
        {
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
        }

        Write(file, active);
        both[0].GetTypes().FirstOrDefault(type => type.Name == "MutantControl")?.GetMethod("ResetCoverage")?.Invoke(null, null);
    }

    // In place: the engine has the file mapped.
    private static void Write(string file, byte[] active)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        stream.Write(active);
    }
}
