using System.Globalization;
using System.Runtime.CompilerServices;

namespace BuildLog.Gearing.Languages;

/// <summary>An interpolated text on its way to a person. In English it is written as it comes; in any other language its pieces wait for their order.</summary>
[InterpolatedStringHandler]
public ref struct SpokenText
{
    private readonly Language language;
    private readonly Template? template;
    private DefaultInterpolatedStringHandler written;

    /// <summary>Called by the compiler.</summary>
    public SpokenText(int literalLength, int formattedCount)
    {
        language = Language.Spoken;
        if (language.IsWritten) written = new(literalLength, formattedCount, CultureInfo.InvariantCulture);
        else template = new(formattedCount);
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string value)
    {
        if (template is null) written.AppendLiteral(value);
        else template.Add(value);
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value)
    {
        if (template is null) written.AppendFormatted(value);
        else template.AddValue(Text(value, 0, null));
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value, string? format)
    {
        if (template is null) written.AppendFormatted(value, format);
        else template.AddValue(Text(value, 0, format));
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value, int alignment)
    {
        if (template is null) written.AppendFormatted(value, alignment);
        else template.AddValue(Text(value, alignment, null));
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value, int alignment, string? format)
    {
        if (template is null) written.AppendFormatted(value, alignment, format);
        else template.AddValue(Text(value, alignment, format));
    }

    internal string ToText() => template is null ? written.ToStringAndClear() : template.In(language);

    private readonly string Text<T>(T value, int alignment, string? format)
    {
        var piece = new DefaultInterpolatedStringHandler(0, 1, language.Culture);
        piece.AppendFormatted(value, alignment, format);
        return piece.ToStringAndClear();
    }
}
