namespace BuildLog.Sheet.Content;

/// <summary>The paper a sheet is laid out for.</summary>
public enum Paper
{
    /// <summary>210 × 297 mm.</summary>
    A4,

    /// <summary>8½ × 11 in.</summary>
    Letter,

    /// <summary>105 × 148 mm, for a card.</summary>
    A6,

    /// <summary>5½ × 8½ in, for a card.</summary>
    HalfLetter,
}
