#pragma once
// Reads the shop out of a logbook in small steps, so that a window stays alive while ten thousand instruments are read:
// an instrument a step, its readings judged as they come and let go again; then the kept plans, a plan a step, because
// each is worked out anew from what it was made from, up to a point: one that takes too long counts as not known. What
// was read stays; `begin` forgets only what was touched since.

#include "logbook/logbook.h"
#include "shop/judges.h"
#include "shop/shop.h"

#include <string>
#include <vector>

namespace hammerline::shop {

class ShopReader {
public:
    ShopReader() = default;

    /// Of the same logbook as before: keeps what nobody touched since. Of another one: `forget` first.
    void begin(const logbook::Logbook &book);
    void forget();
    /// One step. False: all is read.
    bool readNext(const logbook::Logbook &book);

    [[nodiscard]] const Tallies &tallies() const { return m_tallies; }
    [[nodiscard]] std::size_t stepsDone() const { return m_done; }
    [[nodiscard]] std::size_t stepsToDo() const { return m_done + m_waiting.size() + m_plans.size(); }

private:
    struct KeptPlan {
        instrument::InstrumentId instrument = 0;
        std::size_t pass = 0; ///< of its passes
        std::string inputs{};
    };
    void readInstrument(const logbook::Logbook &book, const instrument::Instrument &instrument);
    void readPlan(const KeptPlan &plan);

    Tallies m_tallies{};
    logbook::DeedId m_seen = 0;
    std::vector<instrument::InstrumentId> m_waiting{}; ///< the next one last
    std::vector<KeptPlan> m_plans{};
    std::size_t m_done = 0;
    Judges m_judges{};
};

} // namespace hammerline::shop
