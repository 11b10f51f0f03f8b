#include "exchange/inside/csv_rows.h"

#include <algorithm>
#include <span>

namespace hammerline::exchange {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

constexpr std::string_view bareMark = "a quotation mark stands inside a field that does not begin with one; would be "
                                      "right: the whole field in quotation marks and each mark in it doubled";
constexpr std::string_view trailingText =
    "text follows a closing quotation mark; would be right: a comma or the end of "
    "the line there, and marks inside the field doubled";
constexpr std::string_view unclosed = "a quotation mark is opened and never closed; would be right: a closing mark at "
                                      "the end of the field";

bool isBlank(char character)
{
    return character == ' ' || character == '\t';
}

std::string undoubled(std::string_view raw)
{
    std::string plain;
    for (std::size_t at = 0; at < raw.size(); ++at) {
        plain += raw[at];
        if (raw[at] == '"')
            ++at; // its twin
    }
    return plain;
}

} // namespace

bool CsvRow::blank() const
{
    return std::ranges::all_of(fields, [](std::string_view field) { return std::ranges::all_of(field, isBlank); });
}

CsvRows::CsvRows(std::string_view text) : m_text(text) {}

CsvRows::CsvRows(TextSource &source, std::size_t piece) : m_source(&source), m_piece(piece), m_allHere(false) {}

void CsvRows::begin()
{
    m_begun = true;
    while (!m_allHere && m_text.size() < byteOrderMark.size())
        more();
    if (m_text.starts_with(byteOrderMark))
        m_at = byteOrderMark.size();
}

bool CsvRows::next(CsvRow &row)
{
    if (!m_begun)
        begin();
    const std::size_t line = m_line;
    for (;;) {
        const std::size_t first = m_at;
        const bool found = readRow(row);
        if (m_allHere || !atEnd())
            return found && !m_fault;
        // What comes next may belong to this row: its last line end, a quotation mark's twin, or all the rest.
        m_at = first;
        m_line = line;
        more();
    }
}

void CsvRows::more()
{
    m_held.erase(0, m_at);
    m_at = 0;
    const std::size_t held = m_held.size();
    m_held.resize(held + std::max(m_piece, held)); // twice as much each time: a long row is not gone over for ever
    const auto count = m_source->read(std::span(m_held).subspan(held));
    if (!count)
        m_fault = count.fault();
    m_held.resize(held + (count ? count.value() : 0));
    m_allHere = m_held.size() == held;
    m_text = m_held;
}

bool CsvRows::readRow(CsvRow &row)
{
    row.fields.clear();
    row.broken = {};
    row.line = m_line;
    m_unescaped.clear();
    if (atEnd())
        return false;
    readField(row);
    while (!atEnd() && !atLineEnd()) {
        ++m_at; // the comma
        readField(row);
    }
    if (!atEnd())
        endLine();
    return true;
}

void CsvRows::readField(CsvRow &row)
{
    if (!atEnd() && m_text[m_at] == '"')
        readQuoted(row);
    else
        readPlain(row);
}

void CsvRows::readPlain(CsvRow &row)
{
    const std::size_t begin = m_at;
    skipToFieldEnd();
    const std::string_view field = m_text.substr(begin, m_at - begin);
    if (row.broken.empty() && field.find('"') != std::string_view::npos)
        row.broken = bareMark;
    row.fields.push_back(field);
}

void CsvRows::readQuoted(CsvRow &row)
{
    const std::size_t begin = ++m_at;
    bool doubled = false;
    for (;;) {
        if (atEnd()) {
            row.broken = unclosed;
            row.fields.push_back(m_text.substr(begin));
            return;
        }
        if (m_text[m_at] != '"') {
            atLineEnd() ? endLine() : static_cast<void>(++m_at);
        } else if (m_at + 1 < m_text.size() && m_text[m_at + 1] == '"') {
            doubled = true;
            m_at += 2;
        } else {
            break;
        }
    }
    const std::string_view raw = m_text.substr(begin, m_at - begin);
    row.fields.push_back(doubled ? std::string_view(m_unescaped.emplace_back(undoubled(raw))) : raw);
    ++m_at; // the closing mark
    const std::size_t after = m_at;
    skipToFieldEnd();
    if (m_at != after && row.broken.empty())
        row.broken = trailingText;
}

void CsvRows::skipToFieldEnd()
{
    while (!atEnd() && m_text[m_at] != ',' && !atLineEnd())
        ++m_at;
}

void CsvRows::endLine()
{
    const bool pair = m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n';
    m_at += pair ? 2 : 1;
    ++m_line;
}

} // namespace hammerline::exchange
