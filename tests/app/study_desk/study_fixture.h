#pragma once
// Studies in a workshop on disk, taken with invented values.

#include "study_desk/study_findings.h"
#include "study_desk/taking.h"
#include "support/workshop_on_disk.h"

#include <gtest/gtest.h>

namespace hammerline::study_desk {

class StudyTest : public ::testing::Test {
protected:
    [[nodiscard]] Clock clock()
    {
        return [this] { return shop.stamp().at; };
    }
    [[nodiscard]] logbook::PlannedStudy planned(const std::string &gauge = "rule 3",
                                                catalogue::Quantity quantity = catalogue::Quantity::LetOff)
    {
        logbook::PlannedStudy study{.gauge = {.name = gauge}, .quantity = quantity};
        study.plan = {.notes = {keyboard::Note(4), keyboard::Note(30), keyboard::Note(61)},
                      .people = {"Ada", "Ben"},
                      .takes = 2,
                      .seed = 9};
        return logbook::GaugeStudies(shop.book).plan(study, shop.stamp()).value();
    }
    /// What the person would read: notes differ by a millimetre, Ben reads longer, takes scatter a little.
    [[nodiscard]] static std::string valueOf(const analysis::StudyStop &stop, double ben = 0.1, double scatter = 0.02)
    {
        const double mm = 2.5 + stop.note.number() / 30.0 + (stop.person == "Ben" ? ben : 0) +
                          scatter * (((stop.note.number() * 7 + stop.take * 5) % 3) - 1);
        return units::exactDecimal(units::Length::millimetres(mm));
    }
    void takeAll(Taking &taking, double ben = 0.1, double scatter = 0.02)
    {
        while (const auto stop = taking.asked())
            ASSERT_TRUE(taking.enter(valueOf(*stop, ben, scatter)).ok());
    }

    support::WorkshopOnDisk shop;
};

} // namespace hammerline::study_desk
