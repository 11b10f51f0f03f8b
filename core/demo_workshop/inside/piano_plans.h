#pragma once
// Which pianos stand in the invented workshop, and what happens to each.

#include "catalogue/catalogue.h"
#include "instrument/instrument.h"
#include "readings/readings.h"

#include <string>
#include <vector>

namespace hammerline::demo_workshop {

/// How a person writes what the gauge shows.
enum class Writing {
    TwentiethsOfMillimetre, ///< 3.15
    TenthsOfMillimetre,     ///< 3.2
    SixtyFourthsOfInch,     ///< 1/8, 1 27/32
    ThousandthsOfInch,      ///< 0.125
};

/// What the lead does about a pass, each at a moment (RFC 3339); empty: not (yet).
struct LeadPlan {
    std::string sampled{};    ///< reads a sample again
    std::string looked{};     ///< sends back what is out, and some of what is uneven
    double sendsBackFrom = 0; ///< half-widths from which on
    int unevenSentBack = 0;   ///< how many of them
    std::string mended{};     ///< the reader sets and reads again what was sent back
    std::string accepted{};   ///< accepts what is left
    std::string whyMissing{}; ///< of what could not be read
    std::string signedAt{};
    std::string reopened{};
    std::string whyReopened{};
    std::string readLate{}; ///< gaps that are closed then are read
    std::string signedAgain{};
    std::string delivered{};
    std::string cameBack{}; ///< for a revisit; in review again
};

struct PassPlan {
    readings::Purpose purpose = readings::Purpose::AsFound;
    std::string began{}; ///< RFC 3339
    std::string person{};
    readings::Climate climate{};
    Writing writing = Writing::TwentiethsOfMillimetre;
    int takes = 1;
    /// Empty: whatever the set names.
    std::vector<catalogue::Quantity> quantities{};
    /// The worker's spread around the target, in distances to the nearer limit, and how often a note is forgotten.
    double spread = 0.22;
    double forgotten = 0;
    std::string remark{};
    LeadPlan lead{};
};

/// A note that cannot be read (its hammer or string is gone), or a single reading that was left out.
struct Gap {
    keyboard::Note note{};
    std::vector<catalogue::Quantity> quantities{}; ///< empty: all
    std::string until{};                           ///< read by passes from this moment on (RFC 3339); empty: by none
};

/// Something heard or felt rather than measured; stands beside the let-off of its note as found.
struct HeardFault {
    keyboard::Note note{};
    std::string words{};
};

struct PianoPlan {
    instrument::Instrument instrument{};
    std::string setId{};
    std::string alsoReadBy{}; ///< a second set whose quantities are read too, and not judged; empty: none
    double wear = 1;          ///< 1: played for a generation without regulation
    std::vector<Gap> gaps{};
    std::vector<HeardFault> heard{};
    std::vector<PassPlan> passes{};
};

[[nodiscard]] std::vector<PianoPlan> pianoPlans();

} // namespace hammerline::demo_workshop
