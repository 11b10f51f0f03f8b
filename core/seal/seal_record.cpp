// Putting the seal in: libqpdf writes the file with an empty signature, its bytes are signed, the signature is filled
// in at equal length. Nothing else of the file changes after it was signed.

#include "seal/inside/hex.h"
#include "seal/inside/openssl_handles.h"
#include "seal/inside/seal_form.h"
#include "seal/inside/signed_data.h"
#include "seal/inside/written.h"
#include "seal/inside/xmp.h"
#include "seal/seal.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>

namespace hammerline::seal {

namespace {

QPDFObjectHandle emptySignature(const SigningKey &key, readings::Instant at)
{
    QPDFObjectHandle signature = QPDFObjectHandle::parse("<< /Type /Sig /Filter /Adobe.PPKLite /SubFilter "
                                                         "/ETSI.CAdES.detached >>");
    signature.replaceKey("/ByteRange", QPDFObjectHandle::parse(std::string(rangePlaceholder)));
    signature.replaceKey("/Contents", QPDFObjectHandle::newString(std::string(reservedBytes, '\0')));
    signature.replaceKey("/M", QPDFObjectHandle::newString(pdfDate(at)));
    signature.replaceKey("/Name", QPDFObjectHandle::newUnicodeString(key.name()));
    return signature;
}

/// The field that holds the signature; its widget has no size, since the page says in words that it is sealed.
void addField(QPDF &pdf, QPDFObjectHandle signature)
{
    QPDFObjectHandle page = QPDFPageDocumentHelper(pdf).getAllPages().at(0).getObjectHandle();
    QPDFObjectHandle look = pdf.newStream(std::string());
    look.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/XObject"));
    look.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/Form"));
    look.getDict().replaceKey("/BBox", QPDFObjectHandle::parse("[0 0 0 0]"));
    QPDFObjectHandle field = QPDFObjectHandle::parse("<< /Type /Annot /Subtype /Widget /FT /Sig /T (Seal) "
                                                     "/Rect [0 0 0 0] /F 132 /AP << >> >>");
    field.getKey("/AP").replaceKey("/N", look);
    field.replaceKey("/P", page);
    field.replaceKey("/V", pdf.makeIndirectObject(signature));
    field = pdf.makeIndirectObject(field);
    QPDFObjectHandle annotations = QPDFObjectHandle::newArray();
    annotations.appendItem(field);
    page.replaceKey("/Annots", annotations);
    QPDFObjectHandle form = QPDFObjectHandle::parse("<< /SigFlags 3 /Fields [] >>");
    form.getKey("/Fields").appendItem(field);
    pdf.getRoot().replaceKey("/AcroForm", form);
}

std::string withEmptySeal(std::string_view dressed, const SigningKey &key, readings::Instant at)
{
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processMemoryFile("the dressed record", dressed.data(), dressed.size());
    addField(pdf, emptySignature(key, at));
    return written(pdf);
}

std::size_t mustFind(std::string_view needle, std::string_view file)
{
    const auto place = onlyPlaceOf(needle, file);
    must(place.has_value(), "find the place of the seal in the record");
    return *place;
}

/// Where the empty seal lies; its offsets are filled in.
SealPlace placeSeal(std::string &file)
{
    const std::string empty = '<' + std::string(2 * reservedBytes, '0') + '>';
    SealPlace place;
    place.open = mustFind(empty, file);
    place.close = place.open + empty.size();
    place.size = file.size();
    (void)mustFind(rangeKey, file);
    file.replace(mustFind(rangePlaceholder, file), rangePlaceholder.size(), rangeText(place));
    return place;
}

} // namespace

std::string sealRecord(std::string_view dressed, const SigningKey &key, readings::Instant at)
{
    std::string file;
    try {
        file = withEmptySeal(dressed, key, at);
    } catch (const std::exception &fault) {
        throw outcome::BrokenWorld("The record cannot be sealed: " + std::string(fault.what()) +
                                   ". Nothing was written.");
    }
    const SealPlace place = placeSeal(file);
    const std::string attributes = signedAttributes(sha256(signedBytes(file, place)), key.certificate());
    const std::string seal = signedData(key.certificate(), attributes, key.sign(attributes));
    must(seal.size() <= reservedBytes, "fit the seal into the record");
    file.replace(place.open + 1, 2 * seal.size(), hexOf(seal));
    return file;
}

std::string_view idOf(SealVerdict verdict)
{
    switch (verdict) {
    case SealVerdict::Unaltered:
        return "unaltered";
    case SealVerdict::UnknownKey:
        return "unknown-key";
    case SealVerdict::Altered:
        return "altered";
    case SealVerdict::NotOurs:
        break;
    }
    return "not-ours";
}

} // namespace hammerline::seal
