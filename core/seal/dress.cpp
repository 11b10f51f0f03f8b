#include "seal/dress.h"

#include "outcome/outcome.h"
#include "seal/inside/written.h"
#include "seal/inside/xmp.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFFileSpecObjectHelper.hh>
#include <qpdf/QPDFObjectHandle.hh>

namespace hammerline::seal {

namespace {

void nameDocument(QPDF &pdf, const Dressing &dressing)
{
    QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
    info.replaceKey("/Title", QPDFObjectHandle::newUnicodeString(dressing.title));
    if (!dressing.author.empty())
        info.replaceKey("/Author", QPDFObjectHandle::newUnicodeString(dressing.author));
    info.replaceKey("/Creator", QPDFObjectHandle::newUnicodeString(dressing.creator));
    info.replaceKey("/Producer", QPDFObjectHandle::newUnicodeString(dressing.creator));
    info.replaceKey("/CreationDate", QPDFObjectHandle::newString(pdfDate(dressing.made)));
    info.replaceKey("/ModDate", QPDFObjectHandle::newString(pdfDate(dressing.made)));
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));

    QPDFObjectHandle metadata = pdf.newStream(xmpPacket(dressing));
    metadata.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/XML"));
    QPDFObjectHandle root = pdf.getRoot();
    root.replaceKey("/Metadata", metadata);
    root.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(dressing.language));
    root.replaceKey("/ViewerPreferences", QPDFObjectHandle::parse("<< /DisplayDocTitle true >>"));
}

void nameColours(QPDF &pdf, const Dressing &dressing)
{
    QPDFObjectHandle profile = pdf.newStream(dressing.iccProfile);
    profile.getDict().replaceKey("/N", QPDFObjectHandle::newInteger(3));
    profile.getDict().replaceKey("/Alternate", QPDFObjectHandle::newName("/DeviceRGB"));
    QPDFObjectHandle intent = QPDFObjectHandle::parse("<< /Type /OutputIntent /S /GTS_PDFA1"
                                                      " /OutputConditionIdentifier (sRGB) /Info (sRGB) >>");
    intent.replaceKey("/DestOutputProfile", profile);
    QPDFObjectHandle intents = QPDFObjectHandle::newArray();
    intents.appendItem(intent);
    pdf.getRoot().replaceKey("/OutputIntents", intents);
}

QPDFFileSpecObjectHelper embedded(QPDF &pdf, const Attachment &attachment, readings::Instant made)
{
    auto stream = QPDFEFStreamObjectHelper::createEFStream(pdf, attachment.content);
    stream.setSubtype(attachment.mimeType).setCreationDate(pdfDate(made)).setModDate(pdfDate(made));
    auto file = QPDFFileSpecObjectHelper::createFileSpec(pdf, attachment.name, stream);
    file.setDescription(attachment.description);
    file.getObjectHandle().replaceKey("/AFRelationship", QPDFObjectHandle::newName("/Data"));
    return file;
}

void attachFiles(QPDF &pdf, const Dressing &dressing)
{
    pdf.getRoot().removeKey("/Names");
    QPDFEmbeddedFileDocumentHelper files(pdf);
    QPDFObjectHandle associated = QPDFObjectHandle::newArray();
    for (const Attachment &attachment : dressing.attachments) {
        const QPDFFileSpecObjectHelper file = embedded(pdf, attachment, dressing.made);
        files.replaceEmbeddedFile(attachment.name, file);
        QPDFObjectHandle reference = QPDFFileSpecObjectHelper(file).getObjectHandle();
        associated.appendItem(reference);
    }
    if (!dressing.attachments.empty())
        pdf.getRoot().replaceKey("/AF", associated);
}

} // namespace

std::string dress(std::string_view pdf, const Dressing &dressing)
{
    try {
        QPDF file;
        file.setSuppressWarnings(true);
        file.processMemoryFile("the drawn pages", pdf.data(), pdf.size());
        nameDocument(file, dressing);
        nameColours(file, dressing);
        attachFiles(file, dressing);
        return written(file);
    } catch (const std::exception &fault) {
        throw outcome::BrokenWorld("The record's pages cannot be put together: " + std::string(fault.what()) +
                                   ". Nothing was written.");
    }
}

} // namespace hammerline::seal
