#include "strict_json/strict_json.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace hammerline::strict_json {

namespace {

constexpr std::int64_t largestExact = std::int64_t{1} << 53;
constexpr std::size_t longestSaid = 200;

std::size_t lineAt(std::string_view text, std::size_t position)
{
    const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(position, text.size()));
    return 1 + static_cast<std::size_t>(std::count(text.begin(), end, '\n'));
}

/// What the parser's message says behind its own number and place.
std::string expectedIn(const std::string &message)
{
    const auto lastRead = message.find("; last read");
    const auto place = message.rfind(": ", lastRead);
    return place == std::string::npos ? std::string() : message.substr(place + 2);
}

/// Takes the parser's events; each answers whether to read on.
class TreeBuilder {
public:
    TreeBuilder(std::string_view text, const Bounds &bounds) : m_text(text), m_bounds(bounds) {}

    bool null() { return plain() ? stop(Why::Null) : put(nullptr); }
    bool boolean(bool value) { return plain() ? stop(Why::Boolean) : put(value); }
    bool number_integer(std::int64_t value)
    {
        return plain() && value < -largestExact ? stop(Why::BeyondExact, std::to_string(value)) : put(value);
    }
    bool number_unsigned(std::uint64_t value)
    {
        if (plain() && value > std::uint64_t{largestExact})
            return stop(Why::BeyondExact, std::to_string(value));
        return std::in_range<std::int64_t>(value) ? put(static_cast<std::int64_t>(value)) : put(value);
    }
    bool number_float(double value, const std::string &written)
    {
        return plain() ? stop(Why::NoWholeNumber, written) : put(value);
    }
    bool string(std::string &value) { return put(std::move(value)); }
    bool binary(Json::binary_t &) { return stop(Why::NotJson); } // no text holds any
    bool start_object(std::size_t) { return open(Json::object()); }
    bool start_array(std::size_t) { return open(Json::array()); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }

    bool key(std::string &name)
    {
        const auto [member, isNew] = m_open.back()->get_ref<Json::object_t &>().try_emplace(std::move(name));
        m_member = &member->second;
        return isNew || stop(Why::MemberTwice, member->first);
    }

    bool parse_error(std::size_t position, const std::string &, const nlohmann::detail::exception &error)
    {
        m_stop.line = lineAt(m_text, position == 0 ? 0 : position - 1);
        return stop(Why::NotJson, expectedIn(error.what()));
    }

    /// Once the parser has ended well: it takes a NUL for the end of the text, whatever comes behind it.
    bool reachedTheEnd()
    {
        const std::size_t nul = m_text.find('\0');
        if (nul == std::string_view::npos)
            return true;
        m_stop.line = lineAt(m_text, nul);
        return stop(Why::NotJson, "a NUL stands behind the value; expected end of input");
    }

    [[nodiscard]] Json take() { return std::move(m_root); }
    [[nodiscard]] const Stop &stopped() const { return m_stop; }

private:
    [[nodiscard]] bool plain() const { return m_bounds.kinds == Kinds::TextsAndWholeNumbers; }

    bool stop(Why why, const std::string &said = {})
    {
        m_stop.why = why;
        m_stop.said = clipped(said, longestSaid);
        for (std::size_t depth = 0; depth < m_open.size(); ++depth)
            m_stop.path.push_back(stepFrom(depth));
        return false;
    }

    /// To the next one that is open; from the innermost to what is being read.
    [[nodiscard]] Step stepFrom(std::size_t depth) const
    {
        const bool innermost = depth + 1 == m_open.size();
        if (m_open[depth]->is_array())
            return {{}, m_open[depth]->size() + (innermost ? 1 : 0)};
        const Json *member = innermost ? m_member : m_open[depth + 1];
        for (const auto &[name, value] : m_open[depth]->get_ref<const Json::object_t &>())
            if (&value == member)
                return {clipped(name, longestSaid), 0};
        return {};
    }

    bool put(Json value)
    {
        if (++m_values > m_bounds.values)
            return stop(Why::TooManyValues);
        if (m_open.empty())
            *(m_newest = &m_root) = std::move(value);
        else if (m_open.back()->is_array())
            m_newest = &m_open.back()->emplace_back(std::move(value));
        else
            *(m_newest = m_member) = std::move(value);
        return true;
    }

    bool open(Json value)
    {
        if (m_open.size() == m_bounds.depth)
            return stop(Why::TooDeep);
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
    Bounds m_bounds;
    Json m_root{};
    std::vector<Json *> m_open{}; ///< from the root down; a child is only added to the innermost, so these stay valid
    Json *m_member = nullptr;     ///< of the innermost object, whose value comes next or came last
    Json *m_newest = nullptr;
    std::size_t m_values = 0;
    Stop m_stop{};
};

} // namespace

outcome::Outcome<Json> read(std::string_view text, const Bounds &bounds,
                            const std::function<outcome::Fault(const Stop &)> &words)
{
    if (text.size() > bounds.bytes)
        return words({.why = Why::TooLarge});
    TreeBuilder builder(text, bounds);
    if (Json::sax_parse(text.begin(), text.end(), &builder) && builder.reachedTheEnd())
        return builder.take();
    return words(builder.stopped());
}

std::string clipped(std::string text, std::size_t most)
{
    if (text.size() <= most)
        return text;
    std::size_t kept = most - 3;
    while (kept > 0 && (static_cast<unsigned char>(text[kept]) & 0xc0) == 0x80) // within a letter of UTF-8
        --kept;
    return text.substr(0, kept) + "...";
}

} // namespace hammerline::strict_json
