#pragma once
// An invented instrument of which there is much to tell: work, a departure, condition, photographs, a concession, a
// signature, a sale, and a record before this one.

#include "support/sample_records.h"

#include <QBuffer>
#include <QImage>

#include <gtest/gtest.h>

namespace hammerline::record_pdf {

/// A picture of two colours, as a camera's JPEG.
inline std::string inventedPicture(QRgb left, QRgb right)
{
    QImage picture(640, 480, QImage::Format_RGB32);
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            picture.setPixel(x, y, x < picture.width() / 2 ? left : right);
    QBuffer buffer;
    EXPECT_TRUE(picture.save(&buffer, "JPG"));
    return buffer.data().toStdString();
}

inline dossier::WorkEntry inventedWork(dossier::WorkKind kind, const std::string &what)
{
    dossier::WorkEntry entry;
    entry.kind = kind;
    entry.what = what;
    entry.person = "Technician One";
    entry.day = std::chrono::sys_days(std::chrono::year(2026) / 2 / 14);
    return entry;
}

/// An instrument of which there is much to tell.
inline sale_record::RecordInput fullInput()
{
    auto input = support::sampleInput({});
    input.dossier.work = {inventedWork(dossier::WorkKind::PartsRenewed, "hammers"),
                          inventedWork(dossier::WorkKind::PartsRenewed, "bridle straps"),
                          inventedWork(dossier::WorkKind::FoundAltered, "key coverings")};
    input.dossier.work[0].notes = keyboard::NoteRange{keyboard::Note(1), keyboard::Note(88)};
    input.dossier.work[0].material = "felt, medium";
    input.dossier.work[0].took = std::chrono::minutes(150);
    input.dossier.work[2].departure = true;
    input.dossier.work[2].why = "acrylic laid over the old coverings before it came to us";
    for (const auto moment : {dossier::Moment::AsReceived, dossier::Moment::AsItLeaves}) {
        const bool came = moment == dossier::Moment::AsReceived;
        input.dossier.conditions[{moment, dossier::Area::Soundboard}] = {
            came ? dossier::Grade::Poor : dossier::Grade::Good, came ? "two cracks" : "cracks shimmed"};
        const std::string name(64, came ? 'a' : 'b');
        input.dossier.photographs.push_back({"", moment, "front", "in daylight", name, 640, 480});
        input.pictures[name] = came ? inventedPicture(0xff705030, 0xff908070) : inventedPicture(0xff204060, 0xffa0b0c0);
    }
    const auto day = input.issued;
    input.concessions = {{catalogue::Quantity::LetOff, keyboard::Note(40), units::Length::millimetres(2.1),
                          "the rail is bent here", "Lead One", day}};
    input.signatures = {{"Lead One", day, 2, "let-off read again"}};
    input.history = {512, std::string(64, '7')};
    input.replaces = sale_record::Replaced{1, day - std::chrono::hours(24), std::string(64, 'd')};
    input.dossier.sale = {"A private buyer", "3400 EUR", ""};
    return input;
}

} // namespace hammerline::record_pdf
