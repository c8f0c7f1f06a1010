using System.Globalization;
using System.Text;

namespace BuildLog.Gearing.Languages;

/// <summary>A text as catalogues have it, <c>rolled out: {0}</c>, and what stands in its places. Braces of the text itself are doubled.</summary>
internal sealed class Template(int values)
{
    private readonly StringBuilder text = new();
    private readonly List<string> values = new(values);

    public void Add(string literal)
        => text.Append(literal.AsSpan().ContainsAny('{', '}') ? literal.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal) : literal);

    public void AddValue(string value)
    {
        text.Append('{').Append(values.Count).Append('}');
        values.Add(value);
    }

    public string In(Language language) => string.Format(CultureInfo.InvariantCulture, language.Of(text.ToString()), [.. values]);
}
