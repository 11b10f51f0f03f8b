#include "main_window/edited_watch.h"

#include "logbook/verify_instrument.h"

#include <algorithm>
#include <filesystem>

namespace hammerline::main_window {

namespace {

namespace fs = std::filesystem;
using std::chrono::steady_clock;

/// So that a round takes a tenth of one processor at most.
constexpr int pausesToLooks = 9;

QString nameOf(const Workshop &workshop, instrument::InstrumentId id)
{
    const auto line = std::ranges::find(workshop.instruments(), id, &logbook::InstrumentLine::id);
    return line == workshop.instruments().end() ? QString() : QString::fromStdString(line->name);
}

} // namespace

EditedWatch::EditedWatch(Workshop &workshop, QObject *parent) : QObject(parent), m_workshop(workshop), m_timer(this)
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &EditedWatch::step);
    connect(&workshop, &Workshop::instrumentsChanged, this, &EditedWatch::follow);
}

void EditedWatch::setPace(const Pace &pace)
{
    m_pace = pace;
    m_path.clear();
    follow();
}

void EditedWatch::goOn()
{
    if (!m_path.empty())
        m_timer.start(m_pace.look);
}

void EditedWatch::follow()
{
    const std::string path = m_workshop.isOpen() ? m_workshop.book().path() : std::string();
    if (path != m_path) {
        m_path = path;
        begin();
    }
}

void EditedWatch::begin()
{
    m_timer.stop();
    m_waiting.clear();
    m_rounds = 0;
    m_roundEnded.reset();
    m_found.clear();
    emit begun();
    if (!m_path.empty())
        m_timer.start(m_pace.first);
}

void EditedWatch::step()
{
    const auto began = steady_clock::now();
    m_timer.start(m_pace.round); // in case that what follows is thrown out of
    if (!m_waiting.empty())
        checkNext();
    else if (!m_roundEnded || changedOutside() || began - *m_roundEnded >= m_pace.round)
        gather();
    const auto took = std::chrono::ceil<std::chrono::milliseconds>(steady_clock::now() - began);
    m_timer.start(m_waiting.empty() ? m_pace.look : std::max(m_pace.step, took * pausesToLooks));
}

void EditedWatch::gather()
{
    m_stamp = stamp();
    m_newest = m_workshop.book().newestDeed();
    for (const logbook::InstrumentLine &each : m_workshop.instruments())
        if (each.state != instrument::State::Delivered)
            m_waiting.push_back(each.id);
    std::ranges::reverse(m_waiting);
    if (const auto *chosen = m_workshop.instrument()) {
        std::erase(m_waiting, chosen->id);
        m_waiting.push_back(chosen->id);
    }
    m_roundEnded = steady_clock::now();
}

void EditedWatch::checkNext()
{
    const instrument::InstrumentId id = m_waiting.back();
    const logbook::HistoryCheck check = logbook::verifyInstrument(m_path, id);
    m_waiting.pop_back();
    const Found before = m_found;
    m_found.erase(id);
    if (!check.whole())
        m_found[id] = {nameOf(m_workshop, id), check.alterations.size()};
    if (m_waiting.empty()) {
        ++m_rounds;
        m_roundEnded = steady_clock::now();
    }
    if (m_found != before)
        emit changed();
}

/// Whoever writes by this program leaves a deed; files that changed without one were written by something else, or put
/// in order by SQLite, which a round finds to be nothing.
bool EditedWatch::changedOutside()
{
    const Stamp now = stamp();
    const logbook::DeedId newest = m_workshop.book().newestDeed();
    const bool outside = now != m_stamp && newest == m_newest;
    m_stamp = now;
    m_newest = newest;
    return outside;
}

EditedWatch::Stamp EditedWatch::stamp() const
{
    const auto of = [](const fs::path &file) -> std::pair<std::int64_t, std::int64_t> {
        std::error_code gone;
        const auto at = fs::last_write_time(file, gone);
        if (gone)
            return {0, 0};
        const auto size = fs::file_size(file, gone);
        return {at.time_since_epoch().count(), gone ? 0 : static_cast<std::int64_t>(size)};
    };
    const auto [fileAt, fileSize] = of(m_path);
    const auto [logAt, logSize] = of(m_path + "-wal");
    return {fileAt, fileSize, logAt, logSize};
}

} // namespace hammerline::main_window
