using System.Diagnostics;

namespace BuildLog.Benchmarks.Workbench;

/// <summary>The smallest program of the same platform, published the same way, to measure the machine by.</summary>
internal static class HelloWorld
{
    public const string Says = "Hello, world";

    /// <param name="folder">Where to.</param>
    /// <param name="asOneFile">Together with the runtime, in one file.</param>
    /// <returns>The program's path.</returns>
    public static string PublishIn(string folder, bool asOneFile = false)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "Program.cs"), $"System.Console.WriteLine(\"{Says}\");\n");
        File.WriteAllText(
            Path.Combine(folder, "hello.csproj"),
            $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><PublishReadyToRun>true</PublishReadyToRun></PropertyGroup>
              <PropertyGroup><SelfContained>{asOneFile}</SelfContained><PublishSingleFile>{asOneFile}</PublishSingleFile></PropertyGroup>
            </Project>
            """);
        foreach (var name in new[] { "Directory.Build.props", "Directory.Packages.props" }) File.WriteAllText(Path.Combine(folder, name), "<Project />");

        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = folder, RedirectStandardOutput = true };
        foreach (var word in new[] { "publish", "-c", "Release", "-r", "linux-x64", "-o", "out", "-v", "q" }) start.ArgumentList.Add(word);
        using var publish = Process.Start(start)!;
        var said = publish.StandardOutput.ReadToEnd();
        publish.WaitForExit();
        return publish.ExitCode == 0 ? Path.Combine(folder, "out", "hello") : throw new InvalidOperationException($"The smallest program could not be published: {said}");
    }
}
