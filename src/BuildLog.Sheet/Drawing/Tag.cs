using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Drawing;

/// <summary>What a piece of the page is, for readers that do not look: the names are those of the PDF standard.</summary>
internal enum Tag
{
    /// <summary>Decoration, and whatever repeats on every page: no part of the text.</summary>
    Artifact,
    Sect,
    H1,
    H2,
    P,
    L,
    LI,
    LBody,
    Table,
    THead,
    TBody,
    TR,
    TH,
    TD,
    Figure,
}

/// <summary>Which cells a table head speaks for.</summary>
internal enum HeadScope
{
    None,
    Column,
    Row,
}

/// <summary>A tag with what some kinds need: a figure its words, its place and the numbers it is drawn from, a head cell its scope.</summary>
internal sealed record TagInfo(Tag Tag, HeadScope Scope = HeadScope.None, string? AlternativeText = null, Box? Bounds = null, Chart? Chart = null);
