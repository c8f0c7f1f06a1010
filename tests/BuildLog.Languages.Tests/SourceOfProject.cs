using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace BuildLog.Languages.Tests;

/// <summary>The source of one project of the house, compiled so far that one can ask what becomes of a text.</summary>
internal static class SourceOfProject
{
    /// <summary>From below to above: a text that a lower project has needs no second translation.</summary>
    public static IReadOnlyList<string> All { get; } = ["Gearing", "Data", "Sheet", "Tui"];

    public static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));

    public static string Folder(string project) => Path.Combine(Root(), "src", "BuildLog." + project);

    private static readonly CSharpParseOptions Options = new(LanguageVersion.CSharp14);
    private static readonly ConcurrentDictionary<string, Lazy<IReadOnlyList<(SyntaxTree File, SemanticModel Model)>>> Known = [];

    /// <summary>Its files, each with what can be asked about it.</summary>
    public static IReadOnlyList<(SyntaxTree File, SemanticModel Model)> Files(string project) => Known.GetOrAdd(project, each => new(() => Files(Read(each)))).Value;

    private static IReadOnlyList<(SyntaxTree File, SemanticModel Model)> Files(CSharpCompilation compilation)
        => [.. compilation.SyntaxTrees.Where(tree => tree.FilePath.Length > 0).Select(tree => (tree, compilation.GetSemanticModel(tree)))];

    /// <summary>A piece of source that can use the house's words.</summary>
    public static (SyntaxTree File, SemanticModel Model) Of(string code)
    {
        var compilation = Compile([CSharpSyntaxTree.ParseText(code, Options, "code.cs")], without: null);
        return Files(compilation)[0];
    }

    private static CSharpCompilation Read(string project)
    {
        var files = Directory.EnumerateFiles(Folder(project), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Where(file => !file.Contains("/bin/", StringComparison.Ordinal) && !file.Contains("/Migrations/", StringComparison.Ordinal))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/Languages/", StringComparison.Ordinal));
        var own = project == "Tui" ? "buildlog.dll" : $"BuildLog.{project}.dll";
        return Compile(files.Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), Options, file)), without: project == "Gearing" ? null : own);
    }

    private static CSharpCompilation Compile(IEnumerable<SyntaxTree> files, string? without)
    {
        const string usings = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Threading; global using System.Threading.Tasks;"
            + "global using BuildLog.Gearing.Languages; global using static BuildLog.Gearing.Languages.Words;";
        var loaded = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(file => Path.GetFileName(file) != without);
        return CSharpCompilation.Create(
            "looked into",
            [.. files, CSharpSyntaxTree.ParseText(usings, Options)],
            loaded.Select(file => MetadataReference.CreateFromFile(file)),
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
    }
}
