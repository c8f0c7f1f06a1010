using System.Reflection;
using System.Runtime.CompilerServices;
using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Tests.Readers;

/// <summary>Whatever is typed into a form or a command, the readers of the record and of the workbench answer as the engine's do.</summary>
/// <remarks>They are found, not listed: a static reader of typed text, whoever may call it, meets the texts as soon as it is written.</remarks>
public sealed class ReadersTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);

    // What a reader wants to know besides the text. One that wants something else is asked for here.
    private static readonly Dictionary<Type, object> Beside = new()
    {
        [typeof(DateOnly)] = Today,
        [typeof(Currency)] = Currency.Euro,
        [typeof(OdometerUnit)] = OdometerUnit.Kilometres,
        [typeof(Source)] = Source.MakersData,
        [typeof(PhotoMoment)] = PhotoMoment.Any,
    };

    private static readonly Dictionary<string, Func<string, Refusal?>> Readers = Found()
        .Concat(Enum.GetValues<Trait>().Select(trait => ($"{nameof(TraitLine)}.{nameof(TraitLine.Read)} {trait}", (Func<string, Refusal?>)(text => trait.Line().Read(text).Refusal))))
        .ToDictionary();

    public static TheoryData<string> Names => [.. Readers.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_makes_a_reader_throw_and_every_refusal_is_one_short_line_that_names_the_place(string name) => AnyTyped.Meets(name, Readers[name]);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_of_text_is_answered_as_quickly_as_a_word(string name) => AnyTyped.MeetsPages(name, Readers[name]);

    [Fact]
    public void The_readers_people_type_into_most_are_among_them()
        => Assert.All(
            (string[])["WorkTime.Read", "LooseDayText.Read", "LooseDay.Read", "MoneyText.Read", "OdometerReading.Read", "TorqueText.Read", "CardPartWords.Read", "DayText.ReadPast", "SheetFile.Read", "TallyFraction.Read", "CopyFile.Read"],
            name => Assert.Contains(name, Readers.Keys));

    private static IEnumerable<(string Name, Func<string, Refusal?> Reader)> Found()
        => ((Assembly[])[typeof(Shop).Assembly, typeof(CommandLine).Assembly]).SelectMany(assembly => assembly.GetTypes())
            .Where(type => !type.IsDefined(typeof(CompilerGeneratedAttribute)))
            .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(method => !method.IsDefined(typeof(CompilerGeneratedAttribute)) && method.GetParameters() is [{ ParameterType: { } first, Name: "text" or "typed" or "path" }, ..] && first == typeof(string) && ReadsText(method))
            .Where(method => method.GetParameters().Skip(1).All(parameter => Beside.ContainsKey(parameter.ParameterType)))
            .GroupBy(method => $"{method.DeclaringType!.Name}.{method.Name}")
            .SelectMany(same => same.Select((method, k) => (k == 0 ? same.Key : $"{same.Key} {k + 1}", Reader(method))));

    private static bool ReadsText(MethodInfo method)
        => Answers(method.ReturnType) || (!method.IsPrivate && method.Name is "Read" or "Parse" or "TryParse" && method.DeclaringType!.Name is nameof(LooseDay) or nameof(OdometerReading));

    private static bool Answers(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Parsed<>);

    private static Func<string, Refusal?> Reader(MethodInfo method)
    {
        var beside = method.GetParameters().Skip(1).Select(parameter => Beside[parameter.ParameterType]).ToArray();
        var refusalOf = Answers(method.ReturnType) ? method.ReturnType.GetProperty(nameof(Parsed<int>.Refusal)) : null;
        return text =>
        {
            try
            {
                var read = method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [text, .. beside], null);
                return (Refusal?)refusalOf?.GetValue(read);
            }
            catch (RefusedException refused)
            {
                return refused.Refusal;
            }
        };
    }
}
