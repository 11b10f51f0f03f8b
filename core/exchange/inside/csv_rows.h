#pragma once
// Rows of a CSV text after RFC 4180, one at a time, without copying what need not be unescaped.
//
// Lines may end in CRLF, LF or a lone CR; a byte order mark at the start is skipped; a row knows the physical line it
// began on, however many its quoted fields span. Blanks are part of a field. What breaks the grammar is told and the
// rest of the row is read as well as can be, so that later rows are still judged.
//
// A text that comes in pieces gives the same rows wherever it is cut. No more of it is held than a piece and the row
// at hand; a quotation mark that is never closed makes the rest of the text one row.

#include "exchange/exchange.h"

#include <cstddef>
#include <deque>
#include <optional>
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
    /// Asks for `piece` bytes at a time, for more where a row is longer. `source` must outlive the rows.
    explicit CsvRows(TextSource &source, std::size_t piece = 1u << 16);
    CsvRows(const CsvRows &) = delete;
    CsvRows &operator=(const CsvRows &) = delete;

    /// False at the end. The row's fields stay valid until the next call.
    [[nodiscard]] bool next(CsvRow &row);
    /// What kept the source from being read to its end; then that was no end.
    [[nodiscard]] const std::optional<outcome::Fault> &fault() const { return m_fault; }

private:
    /// Reads over the byte order mark, which may come in pieces itself.
    void begin();
    /// False at the end of what is held. A row that ends there may go on in the next piece.
    bool readRow(CsvRow &row);
    void readField(CsvRow &row);
    void readPlain(CsvRow &row);
    void readQuoted(CsvRow &row);
    void skipToFieldEnd();
    /// Steps over one line end, whichever kind.
    void endLine();
    /// Lets go of what lies before `m_at` and takes the next piece.
    void more();
    [[nodiscard]] bool atEnd() const { return m_at == m_text.size(); }
    [[nodiscard]] bool atLineEnd() const { return m_text[m_at] == '\n' || m_text[m_at] == '\r'; }

    TextSource *m_source = nullptr;
    std::size_t m_piece = 0;
    std::string m_held{};
    std::optional<outcome::Fault> m_fault{};
    bool m_begun = false;
    bool m_allHere = true; ///< nothing comes after m_text
    std::string_view m_text{};
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::deque<std::string> m_unescaped{}; ///< fields of the current row that held doubled quotation marks
};

} // namespace hammerline::exchange
