#include "wording/counted.h"
#include "wording/spoken.h"

#include <gtest/gtest.h>

namespace hammerline::wording {
namespace {

TEST(Spoken, IdsOfAQuantityAndItsNoteAreSaidAsPeopleSayThem)
{
    EXPECT_EQ(spoken("let_off C#4: say why; let_off, E2 too"), "Let-off C♯4: say why; Let-off, E2 too");
}

TEST(Spoken, PlainWordsStayAsTheyAre)
{
    for (const char *plain : {"a blow to the rim", "no such id E2", "drop the file here", "let_off of all notes", ""})
        EXPECT_EQ(spoken(plain), plain);
}

TEST(Counted, OneIsSpokenOfAsOne)
{
    EXPECT_EQ(counted(1, "1 note", "%1 notes"), "1 note");
    EXPECT_EQ(counted(0, "1 note", "%1 notes"), "0 notes");
    EXPECT_EQ(counted(1200, "1 note", "%1 notes", "1,200"), "1,200 notes");
}

} // namespace
} // namespace hammerline::wording
