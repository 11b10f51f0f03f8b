#include "exchange/readings_csv.h"

#include "exchange/csv_text.h"
#include "exchange/inside/csv_header.h"
#include "exchange/inside/csv_rows.h"
#include "exchange/inside/place_bits.h"
#include "exchange/inside/places_seen.h"
#include "units/parse_amount.h"

#include <algorithm>
#include <array>

namespace hammerline::exchange {
namespace {

using catalogue::Quantity;
using readings::Place;
using readings::Reading;

constexpr std::size_t mostFaults = 100'000;
constexpr std::size_t mostTakeDigits = 6;

/// A guess at the rows to come, so that a long file is not copied again and again while it grows.
constexpr std::size_t bytesOfRow = 24;
constexpr std::size_t mostExpected = 1u << 20;

std::string onePhysicalLine(std::string problem)
{
    std::ranges::replace_if(
        problem, [](char character) { return static_cast<unsigned char>(character) < 0x20; }, ' ');
    return problem;
}

} // namespace

/// Reads one file: header, then row by row, every fault with the row's line.
class CsvReadings::File {
public:
    /// `text`: a std::string_view or a TextSource; it must outlive the file.
    template <typename Text>
    File(Text &text, const CsvReadingOptions &options) : m_rows(text), m_options(options)
    {
    }

    /// Appends readings until there would be more than `most`. False: none was left.
    outcome::Outcome<bool> read(std::vector<Reading> &into, std::size_t most)
    {
        const std::size_t before = into.size();
        if (!m_begun)
            begin();
        bool ended = !m_usable;
        while (!ended && m_faults.empty() && into.size() + m_mostOfRow <= most)
            ended = !readRow(into);
        m_count += into.size() - before;
        if (ended)
            end();
        if (!m_faults.empty())
            return m_faults.front();
        return into.size() > before;
    }

    /// All of the file, which nothing was read of yet. This wants a line in memory for every place.
    std::vector<outcome::Fault> faults()
    {
        m_lines.emplace();
        begin();
        for (std::vector<Reading> unused; m_usable && readRow(unused); unused.clear())
            m_count += unused.size();
        end();
        return std::move(m_faults);
    }

    [[nodiscard]] std::size_t count() const { return m_count; }

private:
    void begin()
    {
        m_begun = true;
        m_usable = readHeaderRow();
        for (std::size_t kind = 0; kind < m_columnOf.size(); ++kind)
            m_columnOf[kind] = m_header.find(static_cast<ColumnKind>(kind));
        m_mostOfRow = m_header.isLong ? 1 : m_header.columns.size();
    }

    void end()
    {
        if (m_rows.fault())
            m_faults = {*m_rows.fault()};
        else if (m_faults.empty() && m_count == 0)
            addAt(m_headerLine, "the file has no reading; one value at least would be right");
    }

    bool readHeaderRow()
    {
        do {
            if (!m_rows.next(m_row)) {
                addAt(1, "the file is empty; a first row such as note,let_off (mm) would be right");
                return false;
            }
        } while (isBlank());
        m_headerLine = m_row.line;
        if (!isSound())
            return false;
        m_header = readHeader(m_row, m_options.action);
        for (const std::string &problem : m_header.problems)
            add(problem);
        return m_header.usable;
    }

    /// False: there was none.
    bool readRow(std::vector<Reading> &into)
    {
        if (!m_rows.next(m_row))
            return false;
        m_into = &into;
        if (!isBlank() && isSound() && hasAllFields())
            m_header.isLong ? readLongRow() : readWideRow();
        return true;
    }

    [[nodiscard]] bool isBlank() const { return m_row.blank() && m_row.broken.empty(); }

    bool isSound()
    {
        if (!std::ranges::all_of(m_row.fields, isCleanUtf8)) {
            add("the row is not UTF-8 text; saving the file as CSV in UTF-8 would be right");
            return false;
        }
        if (!m_row.broken.empty())
            add(std::string(m_row.broken));
        return m_row.broken.empty();
    }

    bool hasAllFields()
    {
        const std::size_t wanted = m_header.columns.size();
        const std::size_t found = m_row.fields.size();
        if (found != wanted)
            add("the row has " + std::to_string(found) + " fields where the header has " + std::to_string(wanted) +
                "; as many would be right (a field with a comma in it needs quotation marks)");
        return found == wanted;
    }

    std::optional<keyboard::Note> readNote()
    {
        const auto note = keyboard::parseNote(cell(ColumnKind::Note));
        if (!note) {
            add(note.fault().problem);
            return std::nullopt;
        }
        if (m_options.compass.contains(note.value()))
            return note.value();
        add("note " + std::to_string(note.value().number()) + " (" + note.value().name() +
            ") is not on the instrument; a note from " + std::to_string(m_options.compass.first.number()) + " to " +
            std::to_string(m_options.compass.last.number()) + " would be right");
        return std::nullopt;
    }

    void readWideRow()
    {
        const auto note = readNote();
        if (!note || isAgain({{}, *note, 1}, [&] { return "note " + note->name(); }))
            return;
        for (std::size_t at = 0; at < m_row.fields.size(); ++at) {
            const Column &column = m_header.columns[at];
            if (column.kind == ColumnKind::Measured)
                readValue({column.quantity, *note, 1}, m_row.fields[at], column.unit, {});
        }
    }

    void readLongRow()
    {
        const auto note = readNote();
        const auto quantity = readQuantity();
        const auto take = readTake();
        const auto unit = quantity ? readUnit(*quantity) : std::nullopt;
        if (!note || !quantity || !take || m_unitRefused)
            return;
        const Place place{*quantity, *note, *take};
        if (isAgain(place, [&] {
                return std::string(catalogue::idOf(*quantity)) + " of note " + note->name() + ", take " +
                       std::to_string(*take);
            }))
            return;
        readValue(place, cell(ColumnKind::Value), unit, plainText(cell(ColumnKind::Remark)));
    }

    /// The cell of a column that may be absent: then empty.
    std::string_view cell(ColumnKind kind) const
    {
        const auto at = m_columnOf[static_cast<std::size_t>(kind)];
        return at ? m_row.fields[*at] : std::string_view();
    }

    std::optional<Quantity> readQuantity()
    {
        const std::string_view id = trimmedCell(cell(ColumnKind::QuantityId));
        const auto quantity = catalogue::findQuantity(id);
        if (!quantity) {
            add(quotedCell(id) + " is no quantity; these are: " + quantitiesOf(m_options.action));
            return std::nullopt;
        }
        const std::string problem = notOnAction(*quantity, m_options.action);
        if (problem.empty())
            return quantity;
        add(problem);
        return std::nullopt;
    }

    std::optional<int> readTake()
    {
        const std::string_view typed = trimmedCell(cell(ColumnKind::Take));
        if (typed.empty())
            return 1;
        const bool digits = std::ranges::all_of(typed, [](char one) { return one >= '0' && one <= '9'; });
        const int take = digits && typed.size() <= mostTakeDigits ? std::stoi(std::string(typed)) : 0;
        if (take >= 1)
            return take;
        add("take " + quotedCell(typed) + " is no number of a take; a whole number from 1 to 999999 would be right");
        return std::nullopt;
    }

    /// The row's unit, else its column's; m_unitRefused where what stands there does not fit.
    std::optional<units::Unit> readUnit(Quantity quantity)
    {
        m_unitRefused = false;
        auto unit = m_header.columns[*m_columnOf[static_cast<std::size_t>(ColumnKind::Value)]].unit;
        const std::string_view typed = trimmedCell(cell(ColumnKind::Unit));
        if (!typed.empty()) {
            const auto parsed = units::parseUnit(typed);
            if (!parsed)
                return refuseUnit(parsed.fault().problem);
            unit = parsed.value();
        }
        if (unit && !unfitUnit(quantity, *unit).empty())
            return refuseUnit(unfitUnit(quantity, *unit));
        return unit;
    }

    std::optional<units::Unit> refuseUnit(const std::string &problem)
    {
        m_unitRefused = true;
        add(problem);
        return std::nullopt;
    }

    /// An empty cell is a missing reading.
    void readValue(const Place &place, std::string_view field, std::optional<units::Unit> unit, std::string remark)
    {
        const std::string_view typed = trimmedCell(field);
        if (typed.empty())
            return;
        const auto &info = catalogue::infoOf(place.quantity);
        const auto parsed =
            units::parseAmount(typed, {info.dimension, unit.value_or(m_options.unit), info.mayBeNegative});
        if (!parsed)
            return add(std::string(info.id) + " " + parsed.fault().problem);
        Reading reading;
        reading.place = place;
        reading.value = parsed.value().value;
        reading.typed = typedText(typed, parsed.value().unit);
        reading.remark = std::move(remark);
        m_into->push_back(std::move(reading));
    }

    /// As typed; a bare decimal that was not mm or g carries the unit that it took from elsewhere, so that the text
    /// alone still means the same value.
    static std::string typedText(std::string_view typed, units::Unit unit)
    {
        const char last = typed.back();
        const bool bare = ((last >= '0' && last <= '9') || last == '.') && typed.find('/') == std::string_view::npos;
        const bool elsewhere = unit == units::Unit::Inch || unit == units::Unit::Mil;
        return bare && elsewhere ? std::string(typed) + " " + units::symbolOf(unit) : std::string(typed);
    }

    /// True, with the fault added, where an earlier row was about the same; `what` says about what.
    template <typename What>
    bool isAgain(const Place &place, const What &what)
    {
        if (!m_lines) {
            const bool again = m_seen.again(place);
            if (again)
                add(what() + " stands here again; once would be right");
            return again;
        }
        const auto before = m_lines->before(place, m_row.line);
        if (before)
            add(what() + " stands here again, after line " + std::to_string(*before) + "; once would be right");
        return before.has_value();
    }

    void add(const std::string &problem) { addAt(m_row.line, problem); }

    void addAt(std::size_t line, const std::string &problem)
    {
        if (m_faults.size() < mostFaults)
            m_faults.push_back({m_options.file, line, onePhysicalLine(problem)});
        else if (m_faults.size() == mostFaults)
            m_faults.push_back({m_options.file, line, "there are more faults from here on; mend those above first"});
    }

    CsvRows m_rows;
    const CsvReadingOptions &m_options;
    CsvRow m_row{};
    CsvHeader m_header{};
    std::size_t m_headerLine = 1;
    std::array<std::optional<std::size_t>, static_cast<std::size_t>(ColumnKind::Unknown)> m_columnOf{};
    std::size_t m_mostOfRow = 1; ///< readings
    bool m_begun = false;
    bool m_usable = false;
    bool m_unitRefused = false;
    PlaceBits m_seen{};
    std::optional<PlacesSeen> m_lines{};    ///< instead of m_seen, where every fault is to be told
    std::vector<Reading> *m_into = nullptr; ///< where the readings of the row at hand go
    std::size_t m_count = 0;
    std::vector<outcome::Fault> m_faults{};
};

CsvReadings::CsvReadings(std::unique_ptr<TextSource> text, CsvReadingOptions options)
    : m_text(std::move(text)), m_options(std::move(options)), m_file(std::make_unique<File>(*m_text, m_options))
{
}

CsvReadings::~CsvReadings() = default;

outcome::Outcome<bool> CsvReadings::next(std::vector<Reading> &batch)
{
    batch.clear();
    auto more = m_file->read(batch, readings::mostInBatch);
    if (!more)
        m_first = more.fault();
    return more;
}

std::vector<outcome::Fault> CsvReadings::faults()
{
    m_text->rewind();
    auto all = File(*m_text, m_options).faults();
    return all.empty() ? std::vector{m_first} : all;
}

std::size_t CsvReadings::count() const
{
    return m_file->count();
}

outcome::Outcome<std::vector<Reading>> readReadingsCsv(std::string_view text, const CsvReadingOptions &options)
{
    CsvReadings::File file(text, options);
    std::vector<Reading> all;
    all.reserve(std::min(text.size() / bytesOfRow, mostExpected));
    if (!file.read(all, all.max_size()))
        return CsvReadings::File(text, options).faults();
    return all;
}

std::string writeReadingsCsv(const std::vector<Reading> &readings)
{
    std::vector<const Reading *> sorted;
    sorted.reserve(readings.size());
    for (const Reading &reading : readings)
        sorted.push_back(&reading);
    std::ranges::stable_sort(sorted, {}, [](const Reading *one) { return one->place; });
    std::string text = "note,quantity,value,unit,take,remark\r\n";
    for (const Reading *one : sorted) {
        text += std::to_string(one->place.note.number()) + ',';
        text.append(catalogue::idOf(one->place.quantity)) += ',';
        text += units::exactDecimal(one->value) + ',';
        text += units::displaySymbol(one->value.dimension());
        text += ',' + std::to_string(one->place.take) + ',';
        text += csvText(one->remark) + "\r\n";
    }
    return text;
}

} // namespace hammerline::exchange
