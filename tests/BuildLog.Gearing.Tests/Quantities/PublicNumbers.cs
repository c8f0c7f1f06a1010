using System.Reflection;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Every number that somebody outside the engine can put into one of its values.</summary>
internal static class PublicNumbers
{
    private static readonly Type[] Kinds = [typeof(Known), typeof(Measured), typeof(double)];

    /// <summary>Such as <c>Axle.Ratio</c>: what a public constructor takes, and what <c>with</c> and braces can set.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. typeof(QuantityText).Assembly.GetExportedTypes()
            .Where(type => !typeof(Exception).IsAssignableFrom(type))
            .SelectMany(type => Taken(type).Concat(Set(type)).Select(name => $"{type.Name}.{name}"))
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Order(StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Taken(Type type)
        => type.GetConstructors().SelectMany(made => made.GetParameters()).Where(taken => IsNumber(taken.ParameterType)).Select(taken => taken.Name!);

    private static IEnumerable<string> Set(Type type)
        => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(value => value.SetMethod is { IsPublic: true } && IsNumber(value.PropertyType)).Select(value => value.Name);

    private static bool IsNumber(Type type) => Kinds.Contains(Nullable.GetUnderlyingType(type) ?? type);
}
