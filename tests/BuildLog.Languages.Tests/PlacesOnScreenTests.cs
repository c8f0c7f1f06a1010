using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace BuildLog.Languages.Tests;

/// <summary>
/// What stands in a place of its own on a screen of 80 columns is not cut off in any language: a caption of a form has 22 cells, the heading of a column the width of the
/// column, what a key of a page does 12. Everything else on a screen is wrapped, or its place is measured by what stands in it.
/// </summary>
public sealed class PlacesOnScreenTests
{
    private const int Caption = 22;
    private const int Does = 12;

    public static TheoryData<string> Languages => [.. CatalogueFile.Languages];

    [Theory, MemberData(nameof(Languages))]
    public void Captions_headings_and_keys_have_room_in_every_language(string language)
    {
        var other = SourceOfProject.All.SelectMany(project => CatalogueFile.Of(project, language)).DistinctBy(entry => entry.Key).ToDictionary(entry => entry.Key, entry => entry.Value, StringComparer.Ordinal);
        var places = SourceOfProject.Files("Tui").SelectMany(file => Places(file.File, file.Model)).Distinct().ToList();

        Assert.NotEmpty(places);
        Assert.Empty(places.Where(place => place.Text.Length > place.Cells).Select(place => $"{place.Text}: {place.Text.Length} of {place.Cells}"));
        Assert.Empty(places.Where(place => other.GetValueOrDefault(place.Text, "").Length > place.Cells).Select(place => $"{place.Text} → {other[place.Text]}: {other[place.Text].Length} of {place.Cells}"));
    }

    private static IEnumerable<(string Text, int Cells)> Places(SyntaxTree file, SemanticModel model)
    {
        foreach (var argument in file.GetRoot().DescendantNodes().OfType<ArgumentSyntax>())
        {
            if (argument.Expression is not InvocationExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "Spoken" }, ArgumentList.Arguments: [var only] } || model.GetConstantValue(only.Expression).Value is not string text) continue;

            switch ((model.GetOperation(argument) as IArgumentOperation)?.Parameter)
            {
                case { Name: "caption" }:
                    yield return (text, Caption);
                    break;
                case { Name: "Does", ContainingType.Name: "KeyHint" } when IsOfAPage(argument, model):
                    yield return (text, Does);
                    break;
                case { Name: "Heading", ContainingType.Name: "RowColumn" } when argument.Parent is ArgumentListSyntax { Arguments: [_, var width, ..] } && model.GetConstantValue(width.Expression).Value is int and > 0 and var cells:
                    yield return (text, cells);
                    break;
            }
        }
    }

    // Its keys share a line with those of the workbench; a window of its own has few.
    private static bool IsOfAPage(ArgumentSyntax hint, SemanticModel model)
        => hint.Ancestors().OfType<BaseObjectCreationExpressionSyntax>().Skip(1).FirstOrDefault() is { } act && model.GetTypeInfo(act).Type?.Name is "PageAct" or "KeyAct";
}
