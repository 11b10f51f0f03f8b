// Source: ISO 16:1975 (A4 = 440 Hz), equal temperament; MIDI note numbers 21 (A0) to 108 (C8); data/notes88.csv.
#include "check_data.h"

#include "keyboard/keyboard.h"

namespace hammerline::reference {
namespace {

TEST(NoteChart, AgreesOnNumberNameAndPitchOfEightyEightKeys)
{
    const auto rows = rowsOf("notes88.csv");
    ASSERT_EQ(rows.size(), 88U);
    for (const auto &row : rows) {
        const auto note = keyboard::parseNote(row[2]).value();
        EXPECT_EQ(note.number(), std::stoi(row[0]));
        EXPECT_EQ(note.midi(), std::stoi(row[1]));
        EXPECT_EQ(note.name(), row[2]);
        EXPECT_NEAR(note.frequencyHz(), std::stod(row[3]), 0.5e-6 * 1.001) << row[2];
    }
}

} // namespace
} // namespace hammerline::reference
