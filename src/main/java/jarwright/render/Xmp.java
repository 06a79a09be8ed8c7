package jarwright.render;

import jarwright.page.Sheet;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** The metadata packet (ISO 16684-1), which claims PDF/UA-1 and PDF/A-2a and says the title. */
final class Xmp {
  static final String PRODUCER = "jarwright";

  private Xmp() {}

  static String pdfDate(LocalDate day) {
    return "D:" + day.toString().replace("-", "") + "000000Z";
  }

  static byte[] packet(Sheet.About about, String language) {
    String day = about.created() + "T00:00:00Z";
    StringBuilder out = new StringBuilder(3000);
    out.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
    out.append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
    out.append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
    open(out, "dc", "http://purl.org/dc/elements/1.1/");
    out.append("<dc:format>application/pdf</dc:format>\n");
    alternative(out, "dc:title", about.title());
    if (!about.subject().isEmpty()) {
      alternative(out, "dc:description", about.subject());
    }
    out.append("<dc:language><rdf:Bag><rdf:li>").append(language);
    out.append("</rdf:li></rdf:Bag></dc:language>\n</rdf:Description>\n");
    open(out, "xmp", "http://ns.adobe.com/xap/1.0/");
    out.append("<xmp:CreateDate>").append(day).append("</xmp:CreateDate>\n");
    out.append("<xmp:ModifyDate>").append(day).append("</xmp:ModifyDate>\n</rdf:Description>\n");
    open(out, "pdf", "http://ns.adobe.com/pdf/1.3/");
    out.append("<pdf:Producer>").append(PRODUCER).append("</pdf:Producer>\n");
    if (!about.keywords().isEmpty()) {
      out.append("<pdf:Keywords>").append(escaped(String.join(", ", about.keywords())));
      out.append("</pdf:Keywords>\n");
    }
    out.append("</rdf:Description>\n");
    open(out, "pdfaid", "http://www.aiim.org/pdfa/ns/id/");
    out.append("<pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>\n");
    out.append("</rdf:Description>\n");
    open(out, "pdfuaid", "http://www.aiim.org/pdfua/ns/id/");
    out.append("<pdfuaid:part>1</pdfuaid:part>\n</rdf:Description>\n");
    out.append(EXTENSION);
    out.append("</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** PDF/A wants every schema described that it does not know itself; it does not know PDF/UA. */
  private static final String EXTENSION =
      """
      <rdf:Description rdf:about=""
        xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
        xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
        xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>part of ISO 14289 this file follows</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;

  private static void open(StringBuilder out, String prefix, String namespace) {
    out.append("<rdf:Description rdf:about=\"\" xmlns:").append(prefix).append("=\"");
    out.append(namespace).append("\">\n");
  }

  private static void alternative(StringBuilder out, String name, String text) {
    out.append('<').append(name).append("><rdf:Alt><rdf:li xml:lang=\"x-default\">");
    out.append(escaped(text)).append("</rdf:li></rdf:Alt></").append(name).append(">\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
