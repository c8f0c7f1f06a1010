namespace BuildLog.Sheet.Papers.Cards;

/// <summary>The paper a card is printed on; too small for any other paper of the shop.</summary>
public enum CardPaper
{
    /// <summary>105 × 148 mm.</summary>
    A6,

    /// <summary>5½ × 8½ in.</summary>
    HalfLetter,
}
