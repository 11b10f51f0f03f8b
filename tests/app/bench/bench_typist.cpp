// Types passes at the bench with real key events until it is killed: pass after pass, every tenth value ten times too
// large and confirmed. Once the verdict of a value is shown, a line on standard output says so: pass, quantity, note,
// value in nanometres, and 1 where it was confirmed.
#include "bench/bench.h"
#include "bench/big_text.h"
#include "exchange/tolerance_json.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <string>
#include <unistd.h>

namespace hammerline {
namespace {

class Typist {
public:
    explicit Typist(const std::string &path) : m_book(logbook::Logbook::open(path))
    {
        m_view.resize(1100, 560);
        m_view.show();
    }

    [[noreturn]] void typeForEver()
    {
        for (;;) {
            beginPass();
            for (int typed = 1; m_view.session()->asked(); ++typed)
                typeOne(typed);
        }
    }

private:
    logbook::Stamp stamp()
    {
        m_now += std::chrono::seconds(1);
        return {m_now, "Ada"};
    }
    void beginPass()
    {
        const instrument::Instrument grand = m_book.instruments().front();
        const readings::Pass pass = m_book.beginPass({.instrument = grand.id, .began = stamp().at}, stamp());
        auto session = std::make_unique<bench::EntrySession>(
            m_book, grand, pass, exchange::readToleranceSet(grand.toleranceText, "set").value(),
            [this] { return stamp(); });
        m_view.work(std::move(session), catalogue::Quantity::LetOff);
    }
    void typeOne(int typed)
    {
        const readings::Place place = *m_view.session()->asked();
        auto *field = m_view.findChild<QLineEdit *>("entryField");
        const bool slip = typed % 10 == 0;
        const std::string text = std::to_string(30 + typed % 5);
        QTest::keyClicks(field, QString::fromStdString(slip ? text : text.substr(0, 1) + '.' + text.substr(1)));
        QTest::keyClick(field, Qt::Key_Return);
        if (slip)
            QTest::keyClick(field, Qt::Key_Return);
        QCoreApplication::processEvents();
        tell(place, slip);
    }
    void tell(const readings::Place &place, bool slip) const
    {
        const auto found = m_view.session()->readings().find(place);
        const auto *shown = m_view.findChild<bench::BigText *>("lastValue");
        if (found == m_view.session()->readings().end() || shown->text().isEmpty())
            _exit(2);
        const std::string line = std::to_string(m_view.session()->pass().id) + ' ' +
                                 std::to_string(static_cast<int>(place.quantity)) + ' ' +
                                 std::to_string(place.note.number()) + ' ' +
                                 std::to_string(found->second.value.baseCount()) + (slip ? " 1\n" : " 0\n");
        if (write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
            _exit(3);
    }

    logbook::Logbook m_book;
    readings::Instant m_now = readings::parseRfc3339("2026-03-02T09:00:00Z").value();
    bench::BenchView m_view;
};

} // namespace
} // namespace hammerline

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc != 2)
        return 1;
    hammerline::Typist(argv[1]).typeForEver();
}
