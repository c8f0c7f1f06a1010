using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace BuildLog.Languages.Tests;

/// <summary>Finds texts for people that are not said.</summary>
/// <remarks>
/// Which places are for people nobody has to list: one that is given a said text anywhere is one, and whatever else is written straight into it has to be said too.
/// A place is a parameter, a property, a field, a value of a tuple or the result of a method; whatever is passed on to such a place is one itself, a list and what goes through it as well. The holes of a said
/// text and the terminal are for people always.
/// </remarks>
internal static partial class UnsaidTexts
{
    // Places that are given a said text now and then, and otherwise what a program reads.
    private static readonly HashSet<string> NotForPeople =
    [
        "Entry.Initial",                // "today" is a word one may type; all other entries begin with values
        "Form.HelpPage", "PrintForm.For(help)", "TallyForms.Ready(helpPage)", // names of pages
        "Unit..ctor(symbol)",           // what units have of their own in a language is said, mm and hp stay
        "DriveStep..ctor(Name)",        // "3 low" is typed as well
        "SheetFonts.Embedded(name)", "AttachmentStore..ctor(folder)", // names of files
        "YardPart.NameOf",              // stands in the record and is known again there
        "OverdriveComponent.Engaged", "OverdriveComponent.NotEngaged", // stored, and typed on the command line
    ];

    public static IReadOnlyList<string> All()
        => Among([.. SourceOfProject.All.SelectMany(project => SourceOfProject.Files(project).AsParallel().SelectMany(file => In(project, file.File, file.Model)))]);

    /// <summary>The same in a piece of source by itself.</summary>
    public static IReadOnlyList<string> In(string code)
    {
        var (file, model) = SourceOfProject.Of(code);
        return Among([.. In("code", file, model)]);
    }

    private static IReadOnlyList<string> Among(IReadOnlyList<Given> given)
    {
        var forPeople = given.Where(each => each.IsSaid).Select(each => each.Place).Concat([Hole, Terminal, MadeForHole]).ToHashSet(StringComparer.Ordinal);
        forPeople.ExceptWith(NotForPeople);
        for (var before = 0; before < forPeople.Count;)
        {
            before = forPeople.Count;
            forPeople.UnionWith(given.Where(each => each.From is not null && each.Place != Hole && forPeople.Contains(each.Place)).Select(each => each.From!));
            forPeople.ExceptWith(NotForPeople);
        }

        return [.. given.Where(each => each.Text is not null && forPeople.Contains(each.Place)).Select(each => $"{each.Where} → {each.Place}: {each.Text}")];
    }

    private const string Hole = "a said text";
    private const string Terminal = "the terminal";
    private const string MadeForHole = "made by a method for a said text";

    /// <summary>Something that is written or passed into a place.</summary>
    /// <param name="Text">A text of the code; null for anything else.</param>
    /// <param name="From">The place it comes from, where it is passed on.</param>
    private sealed record Given(string Place, string Where, bool IsSaid, string? Text, string? From);

    private static IEnumerable<Given> In(string project, SyntaxTree file, SemanticModel model)
    {
        foreach (var expression in file.GetRoot().DescendantNodes().OfType<ExpressionSyntax>())
        {
            var isSaid = IsSaid(expression, model);
            var text = isSaid ? null : Words(expression);
            var end = End(expression);
            var isPassedOn = !isSaid && text is null && end.Parent is not InterpolationSyntax && expression is IdentifierNameSyntax or MemberAccessExpressionSyntax;
            if ((!isSaid && text is null && !isPassedOn) || !IsPlace(end) || (isPassedOn && !IsText(expression, model))) continue;

            var from = isPassedOn ? Named(model.GetSymbolInfo(expression).Symbol) : null;
            if ((from is not null || !isPassedOn) && Place(end, model) is { } place) yield return new(place, At(expression), isSaid, text, from);
        }

        foreach (var (place, where, from) in HandedOn(file, model)) yield return new(place, At(where), IsSaid: false, Text: null, from);

        string At(SyntaxNode node) => $"{project}/{Path.GetFileName(file.FilePath)}:{file.GetLineSpan(node.Span).StartLinePosition.Line + 1}";
    }

    // A list is handed on a text at a time: to whoever goes through it, and to each function it is given to.
    private static IEnumerable<(string Place, SyntaxNode Where, string From)> HandedOn(SyntaxTree file, SemanticModel model)
    {
        foreach (var node in file.GetRoot().DescendantNodes())
        {
            switch (node)
            {
                case ForEachStatementSyntax each when ListOf(each.Expression, model) is { } from && Named(model.GetDeclaredSymbol(each)) is { } place:
                    yield return (place, each, from);
                    break;
                case InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax called } call when ListOf(called.Expression, model) is { } from:
                    foreach (var place in call.ArgumentList.Arguments.Select(argument => Named(TakesIn(argument.Expression, model))).OfType<string>()) yield return (place, call, from);
                    break;
                case IdentifierNameSyntax or MemberAccessExpressionSyntax when MethodGroup(node, model) is { } method && Named(method) is { } from && Place(End(WholeCall(node)), model) is { } place && IsPlace(End(WholeCall(node))):
                    yield return (place == Hole ? MadeForHole : place, node, from);
                    break;
            }
        }
    }

    private static string? ListOf(ExpressionSyntax expression, SemanticModel model)
    {
        while (expression is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax called } && IsTexts(called.Expression, model)) expression = called.Expression;
        return expression is IdentifierNameSyntax or MemberAccessExpressionSyntax && IsTexts(expression, model) ? Named(model.GetSymbolInfo(expression).Symbol) : null;
    }

    private static IParameterSymbol? TakesIn(ExpressionSyntax function, SemanticModel model)
        => (model.GetSymbolInfo(function).Symbol as IMethodSymbol)?.Parameters.FirstOrDefault() is { Type.SpecialType: SpecialType.System_String } first && function is AnonymousFunctionExpressionSyntax or IdentifierNameSyntax or MemberAccessExpressionSyntax ? first : null;

    private static IMethodSymbol? MethodGroup(SyntaxNode node, SemanticModel model)
        => node.Parent is ArgumentSyntax { Parent.Parent: InvocationExpressionSyntax } && IsText(WholeCall(node), model) && model.GetSymbolInfo(node).Symbol is IMethodSymbol { ReturnType: { SpecialType: SpecialType.System_String } or { Name: "Later" or "Sentence" } } found ? found : null;

    // Of Select(InWords).Distinct(), or of string.Join(", ", list.Select(InWords)), all of it.
    private static ExpressionSyntax WholeCall(SyntaxNode methodGroup)
    {
        var whole = methodGroup.Ancestors().OfType<InvocationExpressionSyntax>().First();
        while (true)
        {
            switch (whole.Parent)
            {
                case MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax next } called when called.Expression == whole:
                    whole = next;
                    continue;
                case ArgumentSyntax { Parent.Parent: InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Expression: PredefinedTypeSyntax, Name.Identifier.Text: "Join" or "Concat" } } joined }:
                    whole = joined;
                    continue;
                default:
                    return whole;
            }
        }
    }

    private static bool IsSaid(ExpressionSyntax expression, SemanticModel model)
        => IsSpoken(expression) || (expression is InterpolatedStringExpressionSyntax && model.GetTypeInfo(Sum(expression)).ConvertedType?.Name == "Sentence");

    private static ExpressionSyntax Sum(ExpressionSyntax piece) => piece.Parent is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression } sum ? Sum(sum) : piece;

    private static bool IsSpoken(ExpressionSyntax expression) => expression switch
    {
        InvocationExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "Spoken" } or MemberAccessExpressionSyntax { Name.Identifier.Text: "Spoken" } } => true,
        ObjectCreationExpressionSyntax { Type: IdentifierNameSyntax { Identifier.Text: "Later" } } => true,
        _ => false,
    };

    private static bool IsText(ExpressionSyntax expression, SemanticModel model)
        => model.GetTypeInfo(expression).Type is { SpecialType: SpecialType.System_String } or { Name: "Later" or "Sentence" } || IsTexts(expression, model);

    private static bool IsTexts(ExpressionSyntax expression, SemanticModel model) => model.GetTypeInfo(expression).Type switch
    {
        IArrayTypeSymbol array => IsString(array.ElementType),
        INamedTypeSymbol { TypeArguments: [var only], Name: "IReadOnlyList" or "IEnumerable" or "IReadOnlyCollection" or "List" or "IList" } => IsString(only),
        _ => false,
    };

    private static bool IsString(ITypeSymbol type) => type.SpecialType == SpecialType.System_String;

    private static string? Words(ExpressionSyntax expression)
    {
        var text = expression switch
        {
            LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression) => literal.Token.ValueText,
            InterpolatedStringExpressionSyntax pieces => string.Concat(pieces.Contents.Select(piece => piece is InterpolatedStringTextSyntax words ? words.TextToken.ValueText : "{}")),
            _ => "",
        };
        return !text.StartsWith("--", StringComparison.Ordinal) && Word().IsMatch(Unit().Replace(text, "")) ? text : null; // the names of options are the same in every language
    }

    // What stands in the place: the value itself, or the choice or list that it is part of.
    private static SyntaxNode End(SyntaxNode node)
    {
        while (true)
        {
            switch (node.Parent)
            {
                case ParenthesizedExpressionSyntax or SwitchExpressionArmSyntax or CollectionExpressionSyntax or ExpressionElementSyntax or SpreadElementSyntax or ImplicitArrayCreationExpressionSyntax or CastExpressionSyntax:
                case ConditionalExpressionSyntax choice when choice.Condition != node:
                case SwitchExpressionSyntax choices when choices.GoverningExpression != node:
                case BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression or (int)SyntaxKind.CoalesceExpression }:
                case InitializerExpressionSyntax { RawKind: (int)SyntaxKind.ArrayInitializerExpression or (int)SyntaxKind.CollectionInitializerExpression }:
                    node = node.Parent;
                    continue;
                default:
                    return node;
            }
        }
    }

    private static bool IsPlace(SyntaxNode end) => end.Parent is InterpolationSyntax or EqualsValueClauseSyntax or ArrowExpressionClauseSyntax or ReturnStatementSyntax or YieldStatementSyntax
        || (end.Parent is ArgumentSyntax { Parent.Parent: var call } && !(call is ExpressionSyntax called && IsSpoken(called)))
        || (end.Parent is AssignmentExpressionSyntax given && given.Right == end);

    private static string? Place(SyntaxNode end, SemanticModel model) => end.Parent switch
    {
        InterpolationSyntax { Parent: InterpolatedStringExpressionSyntax whole } => model.GetTypeInfo(whole).ConvertedType?.Name is "SpokenText" or "Sentence" ? Hole : null,
        ArgumentSyntax { Parent: TupleExpressionSyntax tuple } argument => model.GetTypeInfo(tuple).ConvertedType is INamedTypeSymbol { IsTupleType: true } type ? Named(type.TupleElements[tuple.Arguments.IndexOf(argument)]) : null,
        ArgumentSyntax argument => (model.GetOperation(argument) as IArgumentOperation)?.Parameter is { } parameter ? Named(parameter) : null,
        AssignmentExpressionSyntax given => Named(model.GetSymbolInfo(given.Left).Symbol),
        EqualsValueClauseSyntax { Parent: { } declared } => Named(model.GetDeclaredSymbol(declared)),
        _ => Named(Result(end, model)),
    };

    private static ISymbol? Result(SyntaxNode returned, SemanticModel model)
        => returned.Ancestors().FirstOrDefault(up => up is AnonymousFunctionExpressionSyntax or LocalFunctionStatementSyntax or MemberDeclarationSyntax) is { } member and not AnonymousFunctionExpressionSyntax
            ? model.GetDeclaredSymbol(member)
            : null;

    // Ours alone, and the terminal: what the system's other methods are given goes anywhere.
    private static string? Named(ISymbol? symbol)
    {
        var meant = (symbol as IMethodSymbol)?.ReducedFrom ?? symbol?.OriginalDefinition;
        return meant switch
        {
            ILocalSymbol local => $"{local.ContainingSymbol.ToDisplayString()}: {local.Name}",
            IParameterSymbol { ContainingSymbol: IMethodSymbol { MethodKind: MethodKind.AnonymousFunction } } given => $"{given.ContainingSymbol.ContainingSymbol.ToDisplayString()}: {given.Name} at {given.Locations[0].SourceSpan.Start}",
            IParameterSymbol { ContainingSymbol: IMethodSymbol { Name: "Write" or "WriteLine", ContainingType.Name: "Console" or "TextWriter" } } => Terminal,
            IParameterSymbol parameter when IsOurs(parameter) && Method(parameter) is { } method => $"{method}({parameter.Name})",
            IFieldSymbol { ContainingType.IsTupleType: true } field => $"{field.ContainingType.ToDisplayString()}.{field.Name}",
            IFieldSymbol or IPropertySymbol or IMethodSymbol when IsOurs(meant) => $"{meant.ContainingType.Name}.{meant.Name}",
            _ => null,
        };
    }

    private static string? Method(IParameterSymbol parameter) => parameter.ContainingSymbol is { } method ? $"{method.ContainingType?.Name}.{method.Name}" : null;

    private static bool IsOurs(ISymbol symbol) => symbol.ContainingNamespace?.ToDisplayString().StartsWith("BuildLog", StringComparison.Ordinal) == true;

    [GeneratedRegex(@"\p{Ll}{2,}|\bI\b")]
    private static partial Regex Word();

    [GeneratedRegex(@"\b(mm|cm|km|mph|kg|lb|bar|psi|ft|in)\b|\{\}")]
    private static partial Regex Unit();
}
