namespace BuildLog.Gearing.Measurements;

/// <summary>How an input's error is spread about zero (JCGM 101:2008, Table 1).</summary>
public enum Spread
{
    /// <summary>Normal; with finite degrees of freedom Student's t of that many, scaled by the standard uncertainty.</summary>
    Normal,

    /// <summary>Anywhere between stated limits, and nowhere else.</summary>
    Rectangular,
}
