#include "ui/print/roster_week_sheet.h"

#include "tests/ui/print/pdf_checks.h"
#include "tests/ui/print/sheet_checks.h"

#include <gtest/gtest.h>

namespace chalk::ui::print {

namespace {

using test::textOf;

/// `perSlot` clients at each of `slots` times of every day from Monday to Saturday.
RosterWeek wallWeek(int slots, int perSlot, const std::string& name)
{
    RosterWeek week{*base::Date::fromYmd(2026, 11, 23), QStringLiteral("Ketch Lane Studio"), {}, {}, false, false};
    for (int day = 0; day < 6; ++day) {
        for (int i = 0; i < slots * perSlot; ++i) {
            week::Booking booking;
            booking.clientName = name + std::to_string(i);
            booking.coachName = i % 2 == 0 ? "Ines" : "Tobias";
            booking.date = week.monday + day;
            booking.startMinute = 420 + i / perSlot * 30;
            week.bookings.push_back(booking);
        }
    }
    week.notes[5] = QStringLiteral("Closed from 12:00: Harbour lights along the whole quay");
    return week;
}

}  // namespace

TEST(RosterWeekSheet, NothingClipsOrOverlaps)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        for (const char* name : {"Ada Lund ", "Maximiliane-Theodora Featherstonehaugh-Cholmondeley "}) {
            for (const int slots : {0, 3, 26}) {
                const auto sheets = rosterWeekSheets(wallWeek(slots, 3, name), paper);
                test::expectSheetsSound(sheets, millimetresOf(paper).transposed(), name + std::to_string(slots));
            }
        }
    }
}

TEST(RosterWeekSheet, ACrowdedWeekGoesOnAndLosesNobody)
{
    const auto sheets = rosterWeekSheets(wallWeek(26, 3, "Client "), PaperSize::A4);
    EXPECT_GT(sheets.size(), 1U);
    const QString text = textOf(sheets);
    EXPECT_EQ(text.count(QStringLiteral("Client ")), 6 * 26 * 3);
    EXPECT_TRUE(text.contains(QStringLiteral("Harbour")));
}

TEST(RosterWeekSheet, WhatWasCalledOffIsLeftOutAndNamesCanBeInitials)
{
    RosterWeek week = wallWeek(1, 2, "Ada Lund");
    week.bookings[0].state = week::BookingState::Cancelled;
    week.hasInitialsOnly = true;
    week.isOneCoach = true;
    const QString text = textOf(rosterWeekSheets(week, PaperSize::A4));
    EXPECT_FALSE(text.contains(QStringLiteral("Lund")));
    EXPECT_FALSE(text.contains(QStringLiteral("Ines")));
    EXPECT_EQ(text.count(QStringLiteral("A. L.")), 11);
}

}  // namespace chalk::ui::print
