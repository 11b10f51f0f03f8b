#include "seal/inside/written.h"

#include "seal/inside/seal_form.h"

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

#include <memory>

namespace hammerline::seal {

std::string written(QPDF &pdf)
{
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setDeterministicID(true);
    // Both asked for by PDF/A: a line end before `endstream`, and a version that knows embedded files' relationships.
    writer.setNewlineBeforeEndstream(true);
    writer.setMinimumPDFVersion("1.6");
    writer.setExtraHeaderText(std::string(ourHeaderLine));
    writer.write();
    const std::unique_ptr<Buffer> buffer(writer.getBuffer());
    return {reinterpret_cast<const char *>(buffer->getBuffer()), buffer->getSize()};
}

} // namespace hammerline::seal
