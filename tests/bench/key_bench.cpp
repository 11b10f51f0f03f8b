// A key pressed at the bench until the window is painted anew, without the disk's part: the logbook lies in memory. The
// whole window is open, with the strip, a pass before and eight quantities half read.
#include "main_window/main_window.h"
#include "prompts/queued_prompts.h"
#include "support/workshop_on_disk.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>

#include <algorithm>
#include <chrono>

namespace hammerline {
namespace {

using catalogue::Quantity;

double quantile(std::vector<double> times, double share)
{
    const auto place = times.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(times.size() - 1));
    std::nth_element(times.begin(), place, times.end());
    return *place;
}

void read(support::WorkshopOnDisk &shop, const readings::Pass &pass, int everyNth)
{
    for (const Quantity quantity : {Quantity::KeyHeight, Quantity::Blow, Quantity::LetOff, Quantity::Drop,
                                    Quantity::Dip, Quantity::Aftertouch, Quantity::Checking, Quantity::DownWeight})
        for (int note = 1; note <= 88; note += everyNth) {
            readings::Reading reading;
            reading.place = {quantity, keyboard::Note(note), 1};
            const bool mass = catalogue::infoOf(quantity).dimension == units::Dimension::Mass;
            reading.value = mass ? units::Amount(units::Dimension::Mass, 50'000 + note)
                                 : units::Amount(units::Length::millimetres(3.0 + note % 7 * 0.1));
            shop.book.enter(pass.id, reading, shop.stamp());
        }
}

/// The window at work on let-off, all its notes to come.
class Desk {
public:
    Desk() : m_settings(m_shop.filePath("settings.ini"), QSettings::IniFormat)
    {
        read(m_shop, m_shop.pass, 1);
        m_pass = m_shop.begin(readings::Purpose::AsLeft);
        read(m_shop, m_pass, 2);
        m_window = std::make_unique<main_window::MainWindow>(
            main_window::Surroundings{m_prompts, m_settings, [this] { return m_shop.stamp().at; }});
        m_window->openLogbook(QString::fromStdString(m_shop.path()));
        m_window->resize(1366, 768);
        m_window->show();
        m_window->views().bench()->ask(Quantity::LetOff, keyboard::Note(1));
        m_field = m_window->findChild<QLineEdit *>("entryField");
        QCoreApplication::processEvents();
    }

    /// Milliseconds until everything that the key changed is painted.
    double press(int key, const QString &text)
    {
        const auto begin = std::chrono::steady_clock::now();
        QKeyEvent event(QEvent::KeyPress, key, Qt::KeypadModifier, text);
        QCoreApplication::sendEvent(m_field, &event);
        QCoreApplication::processEvents();
        return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    }
    void ask(int note)
    {
        m_window->views().bench()->ask(Quantity::LetOff, keyboard::Note(note));
        QCoreApplication::processEvents();
    }
    logbook::DeedId newestDeed() const { return m_shop.book.newestDeed(); }

private:
    support::WorkshopOnDisk m_shop;
    readings::Pass m_pass;
    QSettings m_settings;
    prompts::QueuedPrompts m_prompts;
    std::unique_ptr<main_window::MainWindow> m_window;
    QLineEdit *m_field = nullptr;
};

void keyToRepaint(benchmark::State &state)
{
    Desk desk;
    std::vector<double> digits, enters;
    const logbook::DeedId before = desk.newestDeed();
    int round = 0;
    for (auto _ : state) {
        state.PauseTiming();
        desk.ask(round++ % 88 + 1);
        state.ResumeTiming();
        const int tenth = round * 7 % 5; // another one when the note comes round again: a correction
        digits.push_back(desk.press(Qt::Key_3, "3"));
        digits.push_back(desk.press(Qt::Key_Period, "."));
        digits.push_back(desk.press(Qt::Key_0 + tenth, QString::number(tenth)));
        enters.push_back(desk.press(Qt::Key_Enter, "\r"));
    }
    state.counters["stored"] = static_cast<double>(desk.newestDeed() - before);
    state.counters["digit_p50_ms"] = quantile(digits, 0.5);
    state.counters["digit_p99_ms"] = quantile(digits, 0.99);
    state.counters["enter_p50_ms"] = quantile(enters, 0.5);
    state.counters["enter_p99_ms"] = quantile(enters, 0.99);
}
BENCHMARK(keyToRepaint)->Iterations(2'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace hammerline

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TMPDIR", "/dev/shm");
    const QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
