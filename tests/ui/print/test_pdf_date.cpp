#include "ui/print/pdf_date.h"

#include <gtest/gtest.h>

namespace chalk::ui::print {

TEST(PdfDate, IsReplacedWithoutMovingAnything)
{
    const QDate day(2026, 11, 24);
    EXPECT_EQ(withCreationDate("a /CreationDate (D:20250102030405Z) b", day), QByteArray("a /CreationDate (D:20261124120000Z) b"));
    EXPECT_EQ(withCreationDate("a /CreationDate (D:20250102030405+01'00') b", day), QByteArray("a /CreationDate (D:20261124120000+00'00') b"));
}

TEST(PdfDate, WhatIsNotUnderstoodStays)
{
    const QDate day(2026, 11, 24);
    for (const char* text : {"", "no date", "/CreationDate (D:20250102", "/CreationDate (D:2025)"}) {
        EXPECT_EQ(withCreationDate(text, day), QByteArray(text));
    }
}

}  // namespace chalk::ui::print
