#include "seal/dress.h"

#include "outcome/outcome.h"
#include "small_pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::seal {
namespace {

using testing::HasSubstr;

TEST(Dress, TheSameInputGivesTheSameBytes)
{
    EXPECT_EQ(dress(smallPdf(), smallDressing()), dress(smallPdf(), smallDressing()));
}

TEST(Dress, TheMetadataSaysWhatThePageSays)
{
    const std::string pdf = dress(smallPdf(), smallDressing());
    EXPECT_THAT(pdf, HasSubstr("<pdfaid:part>3</pdfaid:part>"));
    EXPECT_THAT(pdf, HasSubstr("<pdfaid:conformance>B</pdfaid:conformance>"));
    EXPECT_THAT(pdf, HasSubstr("Gr\xC3\xB6\xC3\x9F"
                               "e &amp; &lt;Klang&gt;"));
    EXPECT_THAT(pdf, HasSubstr("<xmp:CreateDate>2026-03-02T09:00:00Z</xmp:CreateDate>"));
    EXPECT_THAT(pdf, HasSubstr("/CreationDate (D:20260302090000Z)"));
    EXPECT_THAT(pdf, HasSubstr("/Lang (en)"));
    EXPECT_THAT(pdf, HasSubstr("/S /GTS_PDFA1"));
    EXPECT_THAT(pdf, HasSubstr("/ID ["));
}

TEST(Dress, AttachmentsCarryWhatAnArchiveAsksFor)
{
    const std::string pdf = dress(smallPdf(), smallDressing());
    EXPECT_THAT(pdf, HasSubstr("/AFRelationship /Data"));
    EXPECT_THAT(pdf, HasSubstr("/UF (record.json)"));
    EXPECT_THAT(pdf, HasSubstr("/Subtype /application#2fjson"));
    EXPECT_THAT(pdf, HasSubstr("/AF ["));
    EXPECT_THAT(pdf, HasSubstr("/CheckSum"));
}

TEST(Dress, WithoutAttachmentsNoneAreNamed)
{
    Dressing dressing = smallDressing();
    dressing.attachments.clear();
    EXPECT_THAT(dress(smallPdf(), dressing), testing::Not(HasSubstr("/AF [")));
}

TEST(Dress, WhatIsNoPdfIsRefused)
{
    EXPECT_THROW((void)dress("", smallDressing()), outcome::BrokenWorld);
    EXPECT_THROW((void)dress("not a document at all", smallDressing()), outcome::BrokenWorld);
}

} // namespace
} // namespace hammerline::seal
