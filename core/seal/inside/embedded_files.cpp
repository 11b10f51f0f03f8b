#include "seal/inside/embedded_files.h"

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>

#include <stdexcept>

namespace hammerline::seal {

namespace {

constexpr std::size_t largestFile = 64u << 20;

/// Collects up to the bound. libqpdf turns what a pipeline throws into a warning and goes on, so the overflow is
/// remembered.
class BoundedText : public Pipeline {
public:
    BoundedText() : Pipeline("bounded text", nullptr) {}
    void write(unsigned char const *data, size_t length) override
    {
        if (m_overflown || m_text.size() + length > largestFile)
            m_overflown = true;
        else
            m_text.append(reinterpret_cast<const char *>(data), length);
        if (m_overflown)
            throw std::length_error("an embedded file is too large");
    }
    void finish() override {}
    [[nodiscard]] bool overflown() const { return m_overflown; }
    [[nodiscard]] const std::string &text() const { return m_text; }

private:
    std::string m_text;
    bool m_overflown = false;
};

std::vector<EmbeddedFile> readAll(QPDF &pdf)
{
    std::vector<EmbeddedFile> files;
    // The name tree is sorted by name.
    for (auto &[name, specification] : QPDFEmbeddedFileDocumentHelper(pdf).getEmbeddedFiles()) {
        BoundedText text;
        specification->getEmbeddedFileStream().pipeStreamData(&text, 0, qpdf_dl_all);
        if (text.overflown())
            throw std::length_error("an embedded file is too large");
        files.push_back({name, text.text()});
    }
    return files;
}

} // namespace

std::optional<std::vector<EmbeddedFile>> embeddedFilesOf(std::string_view bytes)
{
    try {
        QPDF pdf;
        pdf.setSuppressWarnings(true);
        pdf.setAttemptRecovery(false);
        pdf.processMemoryFile("the record", bytes.data(), bytes.size());
        auto files = readAll(pdf);
        if (pdf.anyWarnings())
            return std::nullopt;
        return files;
    } catch (const std::exception &) {
        // The verdict says it: what cannot be read does not say what was sealed.
        return std::nullopt;
    }
}

} // namespace hammerline::seal
