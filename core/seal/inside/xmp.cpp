#include "seal/inside/xmp.h"

namespace hammerline::seal {

namespace {

/// A character that XML 1.0 has no place for, not even escaped: controls but tab and line ends, U+FFFE and U+FFFF.
bool isForbidden(const std::string &text, std::size_t at)
{
    const auto byte = static_cast<unsigned char>(text[at]);
    if (byte < 0x20)
        return byte != '\t' && byte != '\n' && byte != '\r';
    return text.compare(at, 3, "\xEF\xBF\xBE") == 0 || text.compare(at, 3, "\xEF\xBF\xBF") == 0;
}

std::string escaped(const std::string &text)
{
    std::string out;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (isForbidden(text, at)) {
            out += "\xEF\xBF\xBD"; // the replacement character
            at += static_cast<unsigned char>(text[at]) < 0x20 ? 0u : 2u;
        } else if (text[at] == '&') {
            out += "&amp;";
        } else if (text[at] == '<') {
            out += "&lt;";
        } else if (text[at] == '>') {
            out += "&gt;";
        } else {
            out += text[at];
        }
    }
    return out;
}

/// The document information knows whole seconds only, and both must agree.
std::string toTheSecond(readings::Instant instant)
{
    return readings::rfc3339(std::chrono::floor<std::chrono::seconds>(instant));
}

std::string languageAlternative(const std::string &element, const std::string &text)
{
    return "   <" + element + "><rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(text) + "</rdf:li></rdf:Alt></" +
           element + ">\n";
}

} // namespace

std::string xmpPacket(const Dressing &dressing)
{
    const std::string made = toTheSecond(dressing.made);
    std::string packet = "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                         "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                         " <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                         "  <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                         " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
                         " xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
                         "   <pdfaid:part>3</pdfaid:part>\n"
                         "   <pdfaid:conformance>B</pdfaid:conformance>\n"
                         "   <dc:format>application/pdf</dc:format>\n";
    packet += languageAlternative("dc:title", dressing.title);
    if (!dressing.author.empty())
        packet += "   <dc:creator><rdf:Seq><rdf:li>" + escaped(dressing.author) + "</rdf:li></rdf:Seq></dc:creator>\n";
    packet += "   <dc:language><rdf:Bag><rdf:li>" + escaped(dressing.language) + "</rdf:li></rdf:Bag></dc:language>\n";
    packet += "   <xmp:CreatorTool>" + escaped(dressing.creator) + "</xmp:CreatorTool>\n";
    packet += "   <pdf:Producer>" + escaped(dressing.creator) + "</pdf:Producer>\n";
    packet += "   <xmp:CreateDate>" + made + "</xmp:CreateDate>\n   <xmp:ModifyDate>" + made + "</xmp:ModifyDate>\n";
    packet += "  </rdf:Description>\n </rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    return packet;
}

std::string pdfDate(readings::Instant instant)
{
    const std::string text = toTheSecond(instant);
    std::string date = "D:";
    for (const char c : text)
        if (c >= '0' && c <= '9')
            date += c;
    return date + "Z";
}

} // namespace hammerline::seal
