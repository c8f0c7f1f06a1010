using System.Collections.Concurrent;
using System.Reflection;

namespace BuildLog.Gearing.Languages;

/// <summary>All texts of one language. Each project of the house brings its own in a resource named after the language, <c>nl.po</c>; they are read when the language is first spoken.</summary>
/// <remarks>A text that two projects say has its translation in one of them, and that one may not be loaded yet when the other says it: a project's are read with those of all it knows.</remarks>
internal sealed class Catalogue
{
    private readonly ConcurrentDictionary<string, string> texts = [];
    private readonly string resource;

    public Catalogue(string code)
    {
        resource = code + ".po";
        AppDomain.CurrentDomain.AssemblyLoad += (_, loaded) => Add(loaded.LoadedAssembly);
        foreach (var assembly in AppDomain.CurrentDomain.GetAssemblies()) Add(assembly);
    }

    public string Of(string text) => texts.GetValueOrDefault(text, text);

    private static bool IsOurs(AssemblyName name) => name.Name?.StartsWith("BuildLog", StringComparison.OrdinalIgnoreCase) == true;

    private void Add(Assembly assembly)
    {
        // What the machine brings along has no texts of ours, and some of it may not be asked for resources.
        if (!IsOurs(assembly.GetName())) return;
        using var stream = assembly.GetManifestResourceStream(resource);
        if (stream is null) return;
        using var reader = new StreamReader(stream);
        foreach (var entry in PoFile.Read(reader).Where(entry => entry.Translation.Length > 0)) texts[entry.Text] = entry.Translation;
        foreach (var known in assembly.GetReferencedAssemblies().Where(IsOurs)) Assembly.Load(known); // those that were not there yet are added as they come
    }
}
