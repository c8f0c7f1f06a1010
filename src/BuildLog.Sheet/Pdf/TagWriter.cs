using BuildLog.Sheet.Drawing;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace BuildLog.Sheet.Pdf;

/// <summary>Carries our tags into the file's structure. They nest across page ends; inside an artifact nothing is structure.</summary>
internal sealed class TagWriter(StructureBuilder structure)
{
    private readonly Stack<bool> written = [];
    private int artifactDepth;

    public void Begin(TagInfo tag, double pageHeight)
    {
        var write = artifactDepth == 0;
        if (artifactDepth > 0 || tag.Tag == Tag.Artifact) artifactDepth++;
        if (write) Write(tag, pageHeight);
        written.Push(write);
    }

    public void End()
    {
        if (artifactDepth > 0) artifactDepth--;
        if (written.Pop()) structure.End();
    }

    /// <summary>Marked content stops at a page's end; the structure goes on.</summary>
    public void EndPage() => structure.EndMarkedContentsWithId();

    private void Write(TagInfo tag, double pageHeight)
    {
        switch (tag)
        {
            case { Tag: Tag.Artifact }:
                structure.BeginArtifact();
                break;
            case { Tag: Tag.Figure, Bounds: { } box }:
                var bounds = new XRect(box.X, pageHeight - box.Bottom, box.Width, box.Height);
                structure.BeginElement(PdfIllustrationElementTag.Figure, tag.AlternativeText ?? "", bounds);
                break;
            case { Tag: Tag.Sect }:
                structure.BeginGroupingElement("Sect");
                break;
            default:
                structure.BeginBlockLevelElement(tag.Tag.ToString());
                break;
        }

        if (tag.Scope != HeadScope.None)
            structure.CurrentStructureElement.TableAttributes.Elements.SetName("/Scope", $"/{tag.Scope}");
    }
}
