#pragma once
// A bench view at work on a workshop on disk, and the keys a technician presses on it.

#include "bench/bench.h"
#include "bench/big_text.h"
#include "support/workshop_on_disk.h"

#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::bench {

class BenchDesk : public ::testing::Test {
protected:
    BenchDesk() { work(catalogue::Quantity::LetOff); }

    [[nodiscard]] std::unique_ptr<EntrySession> session(const readings::Pass &pass)
    {
        return std::make_unique<EntrySession>(shop.book, shop.grand, pass, support::plainSet(),
                                              [this] { return shop.stamp(); });
    }
    void work(catalogue::Quantity quantity)
    {
        view.work(session(shop.pass), quantity);
        view.resize(1100, 560);
        view.show();
        view.focusField();
    }

    [[nodiscard]] QLineEdit *field() { return view.findChild<QLineEdit *>("entryField"); }
    void type(const QString &text)
    {
        QTest::keyClicks(field(), text);
        press(Qt::Key_Return);
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { QTest::keyClick(field(), key, with); }
    void press(char sign) { QTest::keyClick(field(), sign); }

    [[nodiscard]] QString big(const char *name) { return view.findChild<BigText *>(name)->text(); }
    [[nodiscard]] QString said(const char *name) { return view.findChild<QLabel *>(name)->text(); }
    [[nodiscard]] std::string askedNote() { return big("askedNote").replace("♯", "#").toStdString(); }
    [[nodiscard]] std::size_t stored() { return shop.book.readings(shop.pass.id).size(); }
    [[nodiscard]] double storedMm(int note, int take = 1, catalogue::Quantity quantity = catalogue::Quantity::LetOff)
    {
        for (const readings::Reading &reading : shop.book.readings(shop.pass.id))
            if (reading.place == readings::Place{quantity, keyboard::Note(note), take})
                return reading.value.inDisplay();
        return -1;
    }

    support::WorkshopOnDisk shop;
    BenchView view;
};

} // namespace hammerline::bench
