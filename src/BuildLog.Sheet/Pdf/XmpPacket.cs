using System.Globalization;
using System.Security;
using System.Text;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Pdf;

/// <summary>The file's properties as XMP. PDFsharp makes its own while saving, unescaped and with random ids; this one takes its place.</summary>
internal static class XmpPacket
{
    private const string ArchiveClaim = """
        <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
        <pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>
        </rdf:Description>
        """;

    public static byte[] Of(DocumentInfo info)
    {
        var date = info.Created.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'+00:00'", CultureInfo.InvariantCulture);
        return Encoding.UTF8.GetBytes($"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Escaped(info.Title)}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{Escaped(info.Author)}</rdf:li></rdf:Seq></dc:creator>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{Escaped(info.Subject)}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{info.Language}</rdf:li></rdf:Bag></dc:language>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <pdf:Producer>{Escaped(PdfSharp.PdfSharpProductVersionInformation.Creator)}</pdf:Producer>
            <pdf:Keywords>{Escaped(info.Keywords)}</pdf:Keywords>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
            <xmp:CreatorTool>{Escaped(info.Creator)}</xmp:CreatorTool>
            <xmp:CreateDate>{date}</xmp:CreateDate><xmp:ModifyDate>{date}</xmp:ModifyDate>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/">
            <xmpMM:DocumentID>uuid:{info.Id}</xmpMM:DocumentID><xmpMM:InstanceID>uuid:{info.Id}</xmpMM:InstanceID>
            </rdf:Description>
            {(info.ClaimsPdfA ? ArchiveClaim : "")}
            </rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>
            """);
    }

    private static string Escaped(string text) => SecurityElement.Escape(text);
}
