using System.CommandLine;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Tui.Commands;

/// <summary>Words about tyres that several commands read alike.</summary>
internal static class TyreWords
{
    public static Construction Construction(ParseResult parse, Option<string?> option) => parse.GetValue(option) switch
    {
        null or "radial" => Gearing.Tyres.Construction.Radial,
        "bias" => Gearing.Tyres.Construction.Bias,
        var other => throw Reading.Wrong(option.Name, new Refusal("construction", Spoken($"'{other}' is not radial or bias."), "bias")),
    };
}
