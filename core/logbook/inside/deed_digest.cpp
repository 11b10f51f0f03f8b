#include "logbook/inside/deed_digest.h"

#include "logbook/inside/canonical_json.h"

#include <utility>

namespace hammerline::logbook::inside {

namespace {

void appendMember(std::string &json, std::string_view name, std::string_view text)
{
    appendCanonical(json, name);
    json += ':';
    appendCanonical(json, text);
    json += ',';
}

void appendMember(std::string &json, std::string_view name, std::int64_t number)
{
    appendCanonical(json, name);
    json += ':';
    appendCanonical(json, number);
    json += ',';
}

} // namespace

DeedDigest::DeedDigest(const Deed &entry, std::string_view previous)
{
    std::string head = "{";
    appendMember(head, "at", entry.stamp.at.time_since_epoch().count());
    appendMember(head, "deed", entry.id);
    if (entry.instrument != 0)
        appendMember(head, "instrument", entry.instrument);
    appendMember(head, "name", entry.name);
    if (entry.pass != 0)
        appendMember(head, "pass", entry.pass);
    appendMember(head, "person", entry.stamp.person);
    appendMember(head, "previous", hexOf(previous));
    appendMember(head, "reason", entry.reason);
    m_whole.add(head + "\"rows\":[");

    m_tail = "],";
    appendMember(m_tail, "subject", entry.subject);
    if (entry.undoes)
        appendMember(m_tail, "undoes", *entry.undoes);
    m_tail.back() = '}';
}

void DeedDigest::add(const Row &row)
{
    m_buffer.clear();
    appendCanonical(m_buffer, row);
    if (m_any)
        m_whole.add(",");
    m_any = true;
    m_whole.add(m_buffer);
    m_one.add(m_buffer);
    m_marks.append(m_one.finish(), 0, markSize);
}

std::string DeedDigest::takeMarks()
{
    return std::exchange(m_marks, {});
}

DeedDigest::Result DeedDigest::finish()
{
    m_whole.add(m_tail);
    return {m_whole.finish(), m_marks};
}

} // namespace hammerline::logbook::inside
