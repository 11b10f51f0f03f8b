#pragma once
// A pass of two quantities that somebody has read, and a lead who draws a sample of it through the window.

#include "app/main_window/window_desk.h"

#include <cmath>

namespace hammerline::main_window {

class SpotCheckDesk : public WindowDesk {
protected:
    /// Let-off of all 88 notes, one in eleven far out, and blow, by Ada.
    void fillFirstPass()
    {
        for (int n = 1; n <= 88; ++n) {
            put(catalogue::Quantity::LetOff, n, n % 11 == 0 ? 4.6 : 3.2 + 0.04 * ((n * 37) % 9 - 4));
            put(catalogue::Quantity::Blow, n, 46 + 0.1 * ((n * 29) % 13 - 6));
        }
    }
    void put(catalogue::Quantity quantity, int note, double mm)
    {
        readings::Reading reading;
        reading.place = {quantity, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(std::round(mm * 100) / 100);
        reading.typed = std::to_string(mm);
        reading.person = "Ada";
        shop.book.enter(shop.pass.id, reading, shop.stamp());
    }
    void draw(const MainWindow &window, const QString &person, const QString &size)
    {
        prompts.willType(person);
        prompts.willType(size);
        trigger(window, "drawSample");
    }
    /// What was read first, and a little more: the lead's hand is heavier.
    [[nodiscard]] QString secondReading(const readings::Place &place) const
    {
        const auto first = shop.book.values(shop.pass.id).value(place.quantity, place.note);
        const double more = 0.06 + 0.02 * ((place.note.number() * 5) % 7 - 3);
        return QString::number((first ? first->inDisplay() : 46) + more, 'f', 2);
    }
    /// Until `left` places of the way are not read.
    void readAgain(MainWindow &window, int left = 0)
    {
        const auto *session = window.views().bench()->session();
        while (session->progress().read + left < session->progress().all && session->asked())
            type(window, secondReading(*session->asked()));
    }
    [[nodiscard]] static decisions::SpotCheck checkOf(const MainWindow &window)
    {
        return window.workshop().pass()->check.value();
    }
};

} // namespace hammerline::main_window
