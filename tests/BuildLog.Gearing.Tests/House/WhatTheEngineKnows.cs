using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.House;

/// <summary>The compiled engine itself says what it reaches for: numbers, and no file, day, machine or screen.</summary>
public sealed class WhatTheEngineKnows
{
    private static readonly string[] Strangers = ["System.IO.", "System.Net.", "System.Data.", "System.Diagnostics.Process", "System.Console", "System.TimeProvider", "System.Threading.Tasks.Task"];
    private static readonly string[] FromOutside = ["get_Now", "get_UtcNow", "get_Today", "NewGuid", "get_Shared", "GetEnvironmentVariable", "GetFolderPath", "get_MachineName"];

    // Its own texts in other languages travel inside the assembly and are read from there.
    private static readonly string[] ToReadItsOwnTexts = ["System.IO.Stream", "System.IO.StreamReader", "System.IO.TextReader"];

    [Fact]
    public void Is_no_file_machine_or_screen()
        => Assert.DoesNotContain(Types().Except(ToReadItsOwnTexts), type => Strangers.Any(stranger => type.StartsWith(stranger, StringComparison.Ordinal)));

    [Fact]
    public void Is_no_day_no_setting_and_no_chance_without_a_seed() => Assert.Empty(Members().Intersect(FromOutside));

    [Fact]
    public void Is_looked_for_where_it_would_be_found()
    {
        Assert.Contains("System.Math", Types());
        Assert.Contains("Sqrt", Members());
    }

    private static IReadOnlyList<string> Types() => Read(metadata => metadata.TypeReferences.Select(metadata.GetTypeReference).Select(type => $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}"));

    private static IReadOnlyList<string> Members() => Read(metadata => metadata.MemberReferences.Select(metadata.GetMemberReference).Select(member => metadata.GetString(member.Name)));

    private static IReadOnlyList<string> Read(Func<MetadataReader, IEnumerable<string>> read)
    {
        using var file = File.OpenRead(typeof(Driveline).Assembly.Location);
        using var assembly = new PEReader(file);
        return [.. read(assembly.GetMetadataReader())];
    }
}
