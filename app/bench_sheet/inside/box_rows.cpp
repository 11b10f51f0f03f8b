#include "bench_sheet/inside/box_rows.h"

#include <algorithm>
#include <span>

namespace hammerline::bench_sheet {

namespace {

using Stops = std::span<const route::Stop>;

constexpr std::size_t mostColumns = 8;

/// Null for a note in no section.
const keyboard::Section *sectionOf(keyboard::Note note, const keyboard::Sections &sections)
{
    const auto found = std::ranges::find_if(
        sections, [note](const keyboard::Section &section) { return section.notes.contains(note); });
    return found == sections.end() ? nullptr : &*found;
}

/// Length of the run at the front whose stops are alike in `trait`.
template <typename Trait>
std::size_t runLength(Stops stops, Trait trait)
{
    const auto other =
        std::ranges::find_if(stops, [&](const route::Stop &stop) { return trait(stop) != trait(stops.front()); });
    return static_cast<std::size_t>(other - stops.begin());
}

/// Fills the rows of one block, stop after stop.
class Filler {
public:
    Filler(Block &block, const keyboard::Sections &sections) : m_block(block), m_sections(sections) {}

    void fill(Stops stops, int firstNumber)
    {
        m_number = firstNumber;
        while (!stops.empty()) {
            const keyboard::Section *section = sectionOf(stops.front().note, m_sections);
            const std::size_t length =
                runLength(stops, [this](const route::Stop &stop) { return sectionOf(stop.note, m_sections); });
            beginSection(section, length);
            addSection(stops.first(length));
            stops = stops.subspan(length);
        }
    }

private:
    void beginSection(const keyboard::Section *section, std::size_t length)
    {
        if (m_sections.empty())
            return;
        const QString name = section ? QString::fromStdString(section->name) : QString();
        m_bar = length < columns();
        m_barName = name;
        if (!m_bar)
            m_block.rows.push_back({.caption = name});
    }

    /// The boxes of a note stay in one row as long as a row holds them.
    void addSection(Stops stops)
    {
        while (!stops.empty()) {
            const std::size_t together =
                m_block.quantity ? 1 : runLength(stops, [](const route::Stop &stop) { return stop.note; });
            if (m_block.rows.empty() || taken() + together > columns())
                beginRow();
            for (const route::Stop &stop : stops.first(together))
                add(stop);
            stops = stops.subspan(together);
        }
    }

    void beginRow()
    {
        if (m_block.rows.empty() || taken() > 0)
            m_block.rows.emplace_back();
    }

    void add(const route::Stop &stop)
    {
        if (taken() == columns())
            beginRow();
        m_block.rows.back().boxes.push_back(
            {.stop = stop, .number = m_number++, .barBefore = m_bar ? m_barName : QString(), .bar = m_bar});
        m_bar = false;
    }

    [[nodiscard]] std::size_t columns() const { return static_cast<std::size_t>(m_block.columns); }
    [[nodiscard]] std::size_t taken() const { return m_block.rows.back().boxes.size(); }

    Block &m_block;
    const keyboard::Sections &m_sections;
    int m_number = 1;
    bool m_bar = false;
    QString m_barName{};
};

/// As many whole notes a row as there is room for; a note with more boxes than that takes rows of even length.
int columnsNoteByNote(std::size_t quantities)
{
    const std::size_t asked = std::max<std::size_t>(quantities, 1);
    if (asked <= mostColumns)
        return static_cast<int>(mostColumns / asked * asked);
    const std::size_t lines = (asked + mostColumns - 1) / mostColumns;
    return static_cast<int>((asked + lines - 1) / lines);
}

} // namespace

std::vector<Block> blocksOf(const route::Choice &choice, const std::vector<route::Stop> &stops,
                            const keyboard::Sections &sections)
{
    const bool along = choice.sweep == route::Sweep::AlongTheNotes;
    std::vector<Block> blocks;
    Stops rest(stops);
    int number = 1;
    while (!rest.empty()) {
        const std::size_t length =
            along ? runLength(rest, [](const route::Stop &stop) { return stop.quantity; }) : rest.size();
        Block &block = blocks.emplace_back();
        if (along)
            block.quantity = rest.front().quantity;
        else
            block.columns = columnsNoteByNote(choice.quantities.size());
        Filler(block, sections).fill(rest.first(length), number);
        number += static_cast<int>(length);
        rest = rest.subspan(length);
    }
    return blocks;
}

} // namespace hammerline::bench_sheet
