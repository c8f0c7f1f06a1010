namespace BuildLog.Tui.Reference;

/// <summary>Completion for PowerShell: <c>buildlog completion powershell | Out-String | Invoke-Expression</c>.</summary>
internal static class PowerShellCompletion
{
    public static IReadOnlyList<string> Write(CommandEntry program) =>
    [
        "# Completion of buildlog for PowerShell. Written by: buildlog completion powershell",
        "Register-ArgumentCompleter -Native -CommandName buildlog -ScriptBlock {",
        "    param($typed, $line, $cursor)",
        "    $words = @{",
        .. program.All.Select(command => $"        '{command.Name}' = {List(command.WordsAfter(program))}"),
        "    }",
        "    $choices = @{",
        .. program.All.SelectMany(command => command.Options.Where(option => option.Takes.Length > 0 && !Choices.IsFile(option.Takes))
            .Select(option => $"        '{command.Name}:{option.Name}' = {List(Choices.Of(option.Takes))}")),
        "    }",
        "    $command = ''",
        "    $before = @($line.CommandElements | Select-Object -Skip 1 | Where-Object { $_.Extent.EndOffset -lt $cursor } | ForEach-Object { $_.ToString() })",
        "    foreach ($word in $before) { if ($words.ContainsKey(\"$command $word\".Trim())) { $command = \"$command $word\".Trim() } }",
        "    $previous = if ($before.Count -gt 0) { $before[-1] } else { '' }",
        "    $offered = $words[$command]",
        "    foreach ($key in \"${command}:$previous\", \":$previous\") { if ($choices.ContainsKey($key)) { $offered = $choices[$key]; break } }",
        "    $offered | Where-Object { $_ -like \"$typed*\" } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }",
        "}",
    ];

    private static string List(IEnumerable<string> words) => $"@({string.Join(", ", words.Select(word => $"'{word}'"))})";
}
