#pragma once
// Invented instruments with readings that look measured, for tests and benchmarks of the record. Seeded: the same call
// always gives the same record.

#include "sale_record/sale_record.h"

#include <cstdint>

namespace hammerline::support {

struct SampleWish {
    catalogue::ActionKind action = catalogue::ActionKind::Vertical;
    int lastNote = 88;
    bool withAsFound = true;
    bool guarded = false;
    /// Spread of the as-left readings in half-widths: 0.3 leaves hardly an exception, 1 leaves many.
    double spreadAsLeft = 0.3;
    std::uint32_t seed = 1;
};

/// The passes and the set, as the logbook would hand them over.
[[nodiscard]] sale_record::RecordInput sampleInput(const SampleWish &wish);
[[nodiscard]] sale_record::SaleRecord sampleRecord(const SampleWish &wish);

} // namespace hammerline::support
