#include "logbook/inside/handed_tree.h"

#include "logbook/inside/canonical_tree.h"

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

using Json = nlohmann::json;

constexpr std::size_t mostDepth = 5; ///< document, deeds, deed, rows, row
/// No document that a logbook writes within the size allowed has as many: each value takes some ten letters.
constexpr std::size_t mostValues = 16u << 20;
/// Beyond it no double is exact, and no logbook holds such a number.
constexpr std::int64_t largest = std::int64_t{1} << 53;

std::string shown(const std::string &text)
{
    return '"' + clipped(text) + '"';
}

/// Builds the tree from the parser's events; stops at the first thing that no hand-over has.
class TreeBuilder : public nlohmann::json_sax<Json> {
public:
    explicit TreeBuilder(std::string_view text) : m_text(text) {}

    bool null() override { return stop("holds null, which no hand-over does; what is absent is left out"); }
    bool boolean(bool) override { return stop("holds true or false, which no hand-over does"); }
    bool number_integer(number_integer_t value) override
    {
        return value < -largest ? stop("holds " + std::to_string(value) + ", beyond what can be kept") : put(value);
    }
    bool number_unsigned(number_unsigned_t value) override
    {
        return value > std::uint64_t{largest} ? stop("holds " + std::to_string(value) + ", beyond what can be kept")
                                              : put(static_cast<std::int64_t>(value));
    }
    bool number_float(number_float_t, const string_t &typed) override
    {
        return stop("holds " + shown(typed) + ", which is no whole number");
    }
    bool string(string_t &value) override { return put(std::move(value)); }
    bool binary(binary_t &) override { return stop("holds binary data"); }
    bool start_object(std::size_t) override { return open(Json::object()); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t &name) override
    {
        m_key = name;
        if (m_open.size() == 1)
            m_member = name;
        return !m_open.back()->contains(name) || stop(shown(name) + " stands there twice; once would be right");
    }

    bool parse_error(std::size_t position, const std::string &, const nlohmann::detail::exception &) override
    {
        const auto end = m_text.begin() + static_cast<std::ptrdiff_t>(std::min(position, m_text.size()));
        const auto line = 1 + static_cast<std::size_t>(std::count(m_text.begin(), end, '\n'));
        m_fault.line = line == 1 ? 0 : line;
        m_fault.problem =
            line == 1 ? "this is no JSON document" : "from here on it is no JSON; it was cut off or altered";
        m_fault.problem += "; give a file made by handing an instrument over";
        return false;
    }

    [[nodiscard]] const outcome::Fault &fault() const { return m_fault; }
    [[nodiscard]] Json take() { return std::move(m_root); }

private:
    /// The deed or picture that is being read, or the document.
    [[nodiscard]] std::string place() const
    {
        if (m_open.size() < 2 || !m_open[1]->is_array() || m_open[1]->empty())
            return "the document";
        const std::size_t number = m_open[1]->size();
        return m_member == "deeds" ? placeOfDeed(number) : m_member + ", " + std::to_string(number);
    }

    bool stop(const std::string &problem)
    {
        m_fault.problem = place() + ": " + problem;
        return false;
    }

    bool put(Json value)
    {
        if (++m_values > mostValues)
            return stop("there are more values than in any hand-over");
        if (m_open.empty())
            m_newest = &(m_root = std::move(value));
        else if (m_open.back()->is_array())
            m_newest = &m_open.back()->emplace_back(std::move(value));
        else
            m_newest = &((*m_open.back())[m_key] = std::move(value));
        return true;
    }

    bool open(Json value)
    {
        if (m_open.size() == mostDepth)
            return stop("objects and lists are nested deeper than in any hand-over");
        if (!put(std::move(value)))
            return false;
        m_open.push_back(m_newest);
        return true;
    }

    bool close()
    {
        m_open.pop_back();
        return true;
    }

    std::string_view m_text;
    Json m_root{};
    std::vector<Json *> m_open{}; ///< from the root down; a child is only added to the innermost, so these stay valid
    Json *m_newest = nullptr;
    std::string m_key{};
    std::string m_member{}; ///< of the document
    std::size_t m_values = 0;
    outcome::Fault m_fault{};
};

/// `"name":[` and each element on a line of its own.
void layOutList(const char *name, const Json &list, const std::function<void(std::string_view)> &piece)
{
    piece(std::string(",\n\"") + name + "\":[");
    std::string line = "\n";
    for (const Json &element : list) {
        appendCanonical(line, element);
        piece(line);
        line = ",\n";
    }
    piece("]");
}

} // namespace

std::string clipped(std::string text)
{
    constexpr std::size_t most = 80;
    if (text.size() <= most)
        return text;
    std::size_t kept = most - 3;
    while (kept > 0 && (static_cast<unsigned char>(text[kept]) & 0xc0) == 0x80) // within a letter of UTF-8
        --kept;
    return text.substr(0, kept) + "...";
}

std::string placeOfDeed(std::size_t number)
{
    return "deed " + std::to_string(number);
}

void layOut(const Json &document, const std::function<void(std::string_view)> &piece)
{
    std::string head;
    for (const char *name : {"format", "version", "digest", "instrument", "without"}) {
        if (!document.contains(name))
            continue;
        head += (head.empty() ? "{\"" : ",\"") + std::string(name) + "\":";
        appendCanonical(head, document[name]);
    }
    piece(head);
    layOutList("deeds", document["deeds"], piece);
    layOutList("pictures", document["pictures"], piece);
    piece("}\n");
}

std::size_t firstLineOff(const Json &document, std::string_view text)
{
    std::size_t line = 1;
    bool same = true;
    layOut(document, [&](std::string_view piece) {
        if (!same)
            return;
        const auto [ours, theirs] = std::ranges::mismatch(piece, text);
        line += static_cast<std::size_t>(std::count(piece.begin(), ours, '\n'));
        same = ours == piece.end();
        text.remove_prefix(static_cast<std::size_t>(theirs - text.begin()));
    });
    return same && text.empty() ? 0 : line;
}

outcome::Outcome<Json> readHandedTree(std::string_view text, const std::string &file)
{
    TreeBuilder builder(text);
    if (Json::sax_parse(text.begin(), text.end(), &builder))
        return builder.take();
    outcome::Fault fault = builder.fault();
    fault.file = file;
    return fault;
}

} // namespace hammerline::logbook::inside
