#include "small_pdf.h"

#include <cstdio>
#include <vector>

namespace hammerline::seal {

std::string smallPdf()
{
    std::string pdf = "%PDF-1.4\n";
    std::vector<std::size_t> places;
    for (const char *object : {"<< /Type /Catalog /Pages 2 0 R >>", "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                               "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 200] /Resources << >> >>"}) {
        places.push_back(pdf.size());
        pdf += std::to_string(places.size()) + " 0 obj\n" + object + "\nendobj\n";
    }
    const std::size_t table = pdf.size();
    pdf += "xref\n0 4\n0000000000 65535 f \n";
    for (const std::size_t place : places) {
        char line[24];
        std::snprintf(line, sizeof line, "%010zu 00000 n \n", place);
        pdf += line;
    }
    return pdf + "trailer\n<< /Root 1 0 R /Size 4 >>\nstartxref\n" + std::to_string(table) + "\n%%EOF\n";
}

Dressing smallDressing()
{
    Dressing dressing;
    dressing.title = "Gr\xC3\xB6\xC3\x9F"
                     "e & <Klang>";
    dressing.author = "Invented Workshop";
    dressing.creator = "Hammerline 0.1.0";
    dressing.language = "en";
    dressing.made = someDay();
    dressing.iccProfile = "not a profile, but bytes";
    dressing.attachments = {{"record.json", "application/json", "for machines", "{\"format\":\"x\"}\n"},
                            {"readings.csv", "text/csv", "readings", "note,quantity\r\n1,let_off\r\n"}};
    return dressing;
}

readings::Instant someDay()
{
    return readings::Instant(std::chrono::sys_days(std::chrono::year(2026) / 3 / 2) + std::chrono::hours(9) +
                             std::chrono::milliseconds(250));
}

const SigningKey &someKey()
{
    static const SigningKey key = makeSigningKey("Invented Workshop", someDay()).value();
    return key;
}

std::string smallSealedRecord()
{
    return sealRecord(dress(smallPdf(), smallDressing()), someKey(), someDay());
}

} // namespace hammerline::seal
