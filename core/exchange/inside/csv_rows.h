#pragma once
// Rows of a CSV text after RFC 4180, one at a time, without copying what need not be unescaped.
//
// Lines may end in CRLF, LF or a lone CR; a byte order mark at the start is skipped; a row knows the physical line it
// began on, however many its quoted fields span. Blanks are part of a field. What breaks the grammar is told and the
// rest of the row is read as well as can be, so that later rows are still judged.

#include <cstddef>
#include <deque>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

struct CsvRow {
    std::size_t line = 0; ///< physical line, from 1
    std::vector<std::string_view> fields{};
    std::string_view broken{}; ///< what breaks the grammar and what would be right; empty: nothing

    /// True where every field is empty or blanks: an empty line, or a spreadsheet's row of commas.
    [[nodiscard]] bool blank() const;
};

class CsvRows {
public:
    /// `text` must outlive the rows.
    explicit CsvRows(std::string_view text);
    /// False at the end. The row's fields stay valid until the next call.
    [[nodiscard]] bool next(CsvRow &row);

private:
    void readField(CsvRow &row);
    void readPlain(CsvRow &row);
    void readQuoted(CsvRow &row);
    void skipToFieldEnd();
    /// Steps over one line end, whichever kind.
    void endLine();
    [[nodiscard]] bool atEnd() const { return m_at == m_text.size(); }
    [[nodiscard]] bool atLineEnd() const { return m_text[m_at] == '\n' || m_text[m_at] == '\r'; }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::deque<std::string> m_unescaped{}; ///< fields of the current row that held doubled quotation marks
};

} // namespace hammerline::exchange
