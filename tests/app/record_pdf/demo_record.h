#pragma once
// Records of the invented workshop, for the tests of their pages.

#include "record_file.h"

#include "demo_workshop/write_logbook.h"
#include "logbook/logbook.h"
#include "record_pdf/record_input.h"

#include <algorithm>
#include <memory>

namespace hammerline::record_pdf {

class DemoRecord : public RecordFile {
protected:
    static void SetUpTestSuite()
    {
        m_shop = std::make_unique<QTemporaryDir>();
        EXPECT_TRUE(demo_workshop::writeLogbook(demo_workshop::makeWorkshop(),
                                                {.path = m_shop->filePath("shop.hammerline").toStdString(),
                                                 .overwrite = false,
                                                 .scratchPath = m_shop->filePath("scratch").toStdString(),
                                                 .drawer = {}}));
    }
    static void TearDownTestSuite() { m_shop.reset(); }

    /// The record of an instrument as the command would make it.
    static sale_record::SaleRecord recordOf(const std::string &name)
    {
        const auto book =
            logbook::Logbook::open(m_shop->filePath("shop.hammerline").toStdString(), logbook::Access::ReadOnly);
        const auto all = book.instruments();
        const auto found = std::ranges::find(all, name, &instrument::Instrument::name);
        EXPECT_NE(found, all.end());
        const readings::Instant at = std::chrono::sys_days(std::chrono::year(2026) / 3 / 4);
        return sale_record::assemble(recordInputOf(book, *found, {at, "Lead One", "1.0", {}}).value()).value();
    }

    inline static std::unique_ptr<QTemporaryDir> m_shop;
};

} // namespace hammerline::record_pdf
