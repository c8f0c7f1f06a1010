using System.Collections.Concurrent;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BuildLog.Languages.Tests;

/// <summary>A text that the code says, as catalogues have it.</summary>
/// <param name="Text">Values as {0}, {1}.</param>
/// <param name="File">Where it is said.</param>
/// <param name="Values">What stands in the places, for who translates it.</param>
internal sealed record SaidText(string Text, string File, IReadOnlyList<string> Values);

/// <summary>Finds what is said through <c>Spoken</c>, kept in a <c>Later</c>, or written as a <c>Sentence</c>.</summary>
internal static class SaidTexts
{
    /// <summary>Of one project, each text once with all the files that say it, in the order they are met; without those of the projects below.</summary>
    public static IReadOnlyList<SaidText> Own(string project)
    {
        var below = project switch { "Gearing" => [], "Tui" => (string[])["Gearing", "Data", "Sheet"], _ => ["Gearing"] };
        var known = below.SelectMany(Of).Select(said => said.Text).ToHashSet(StringComparer.Ordinal);
        return [.. Of(project).Where(said => !known.Contains(said.Text)).GroupBy(said => said.Text, StringComparer.Ordinal).Select(same => same.First() with { File = string.Join(' ', same.Select(said => said.File).Distinct()) })];
    }

    private static readonly ConcurrentDictionary<string, IReadOnlyList<SaidText>> Found = [];

    private static IReadOnlyList<SaidText> Of(string project) => Found.GetOrAdd(project, each => [.. Find(each)]);

    private static IEnumerable<SaidText> Find(string project)
    {
        foreach (var (tree, model) in SourceOfProject.Files(project))
        {
            var file = Path.GetRelativePath(SourceOfProject.Folder(project), tree.FilePath);
            foreach (var said in tree.GetRoot().DescendantNodes().OfType<ExpressionSyntax>().Select(expression => Said(expression, model)).OfType<ExpressionSyntax>())
            {
                List<string> values = [];

                // The compiler makes one text of constants, except where it is to be a sentence.
                var text = model.GetConstantValue(said) is { HasValue: true, Value: string constant } && model.GetTypeInfo(said).ConvertedType?.Name != "Sentence" ? constant : Written(said, values);
                if (text.Any(char.IsLetter)) yield return new(text, file, values);
            }
        }
    }

    private static ExpressionSyntax? Said(ExpressionSyntax expression, SemanticModel model) => expression switch
    {
        InvocationExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "Spoken" } or MemberAccessExpressionSyntax { Name.Identifier.Text: "Spoken" }, ArgumentList.Arguments: [var only] } when IsText(only.Expression) => only.Expression,
        ObjectCreationExpressionSyntax { Type: IdentifierNameSyntax { Identifier.Text: "Later" }, ArgumentList.Arguments: [var only] } when IsText(only.Expression) => only.Expression,
        InterpolatedStringExpressionSyntax or BinaryExpressionSyntax when IsText(expression) && model.GetTypeInfo(expression).ConvertedType?.Name == "Sentence" && expression.DescendantNodesAndSelf().OfType<InterpolatedStringExpressionSyntax>().Any() => expression,
        _ => null,
    };

    private static bool IsText(ExpressionSyntax expression) => expression is InterpolatedStringExpressionSyntax
        || expression.IsKind(SyntaxKind.StringLiteralExpression)
        || (expression is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression } sum && IsText(sum.Left) && IsText(sum.Right));

    // As the program itself makes the name of a text.
    private static string Written(ExpressionSyntax expression, List<string> values)
    {
        if (expression is BinaryExpressionSyntax sum) return Written(sum.Left, values) + Written(sum.Right, values);
        if (expression is not InterpolatedStringExpressionSyntax text) return ((LiteralExpressionSyntax)expression).Token.ValueText;

        var written = new StringBuilder();
        foreach (var piece in text.Contents)
        {
            if (piece is InterpolationSyntax value)
            {
                written.Append('{').Append(values.Count).Append('}');
                values.Add(value.Expression.ToString());
            }
            else
            {
                written.Append(((InterpolatedStringTextSyntax)piece).TextToken.ValueText.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
            }
        }

        return written.ToString();
    }
}
