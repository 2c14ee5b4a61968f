#include "ui/floor/report_strip.h"

#include "tests/support/accessible_audit.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/floor/entry_field.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/report_field.h"

#include <QApplication>
#include <QLabel>
#include <QTest>

#include <algorithm>

namespace chalk::ui::floor {

using sessions::SessionReport;

class ReportStripTest : public ::testing::Test {
protected:
    ReportStripTest()
    {
        m_strip.resize(900, 60);
        m_strip.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_strip));
        QObject::connect(&m_strip, &ReportStrip::told, &m_strip, [this](base::SessionId session, const SessionReport& report) { m_told.emplace_back(session, report); });
        m_strip.setReport(kSession, {}, true);
    }

    ReportField& field(const QString& name)
    {
        for (ReportField* one : m_strip.findChildren<ReportField*>()) {
            if (one->accessibleName().startsWith(name)) {
                return *one;
            }
        }
        throw std::logic_error(name.toStdString());
    }
    void press(int key) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key)); }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text)); }

    static constexpr base::SessionId kSession{7};
    const common::Look m_look;
    ReportStrip m_strip{m_look};
    std::vector<std::pair<base::SessionId, SessionReport>> m_told;
};

TEST_F(ReportStripTest, IsFilledInByTheKeyboardAlone)
{
    m_strip.takeFocus();
    type("4");
    ASSERT_EQ(m_told.size(), 1U) << "a digit says it at once";
    EXPECT_EQ(m_told.back(), std::pair(kSession, (SessionReport{4, {}, {}, {}, {}, {}})));
    press(Qt::Key_Tab);
    type("2");
    press(Qt::Key_Tab);
    type("1");
    press(Qt::Key_Tab);
    type("7.5");
    EXPECT_EQ(m_told.size(), 3U) << "it could become 7.5 still";
    press(Qt::Key_Tab);
    EXPECT_EQ(m_told.size(), 4U);
    type("55");
    press(Qt::Key_Tab);
    type("Late from work");
    bool isLeft = false;
    QObject::connect(&m_strip, &ReportStrip::left, &m_strip, [&isLeft] { isLeft = true; });
    press(Qt::Key_Return);
    EXPECT_TRUE(isLeft);
    EXPECT_EQ(m_told.back().second, (SessionReport{4, 2, 1, 75, 55, "Late from work"}));
    EXPECT_EQ(m_told.size(), 6U);
}

TEST_F(ReportStripTest, ADigitTakesThePlaceOfTheOneBeforeAndCanBeTakenOut)
{
    m_strip.setReport(kSession, {4, {}, {}, {}, {}, {}}, true);
    m_strip.takeFocus();
    type("2");
    EXPECT_EQ(field(QStringLiteral("Sleep")).text(), QStringLiteral("2"));
    type("9a0");
    EXPECT_EQ(field(QStringLiteral("Sleep")).text(), QStringLiteral("2")) << "1 to 5 alone";
    EXPECT_EQ(m_told.size(), 1U);
    press(Qt::Key_Backspace);
    press(Qt::Key_Tab);
    EXPECT_EQ(m_told.back().second, SessionReport());
}

TEST_F(ReportStripTest, WhatCannotBeIsNotSaidAndWhyIsShown)
{
    ReportField& effort = field(QStringLiteral("Effort"));
    for (const char* wrong : {"11", "7.2", "x"}) {
        effort.setFocus();
        effort.selectAll();
        type(wrong);
        press(Qt::Key_Tab);
        EXPECT_TRUE(m_told.empty()) << wrong;
        EXPECT_TRUE(effort.property("invalid").toBool()) << wrong;
        EXPECT_TRUE(m_strip.faultText().contains(QLatin1String(wrong))) << m_strip.faultText().toStdString();
    }
    effort.setFocus();
    effort.selectAll();
    type("7,5");
    press(Qt::Key_Tab);
    EXPECT_EQ(m_strip.faultText(), QString());
    EXPECT_FALSE(effort.property("invalid").toBool());
    EXPECT_EQ(m_told.back().second.effortTenths, 75);
}

TEST_F(ReportStripTest, WithoutConsentHealthIsNotAsked)
{
    m_strip.setReport(kSession, {3, {}, {}, {}, {}, {}}, false);
    EXPECT_FALSE(field(QStringLiteral("Sleep")).isVisible());
    EXPECT_FALSE(field(QStringLiteral("Soreness")).isVisible());
    EXPECT_FALSE(field(QStringLiteral("Stress")).isVisible());
    m_strip.takeFocus();
    EXPECT_EQ(QApplication::focusWidget(), &field(QStringLiteral("Effort")));
    type("8");
    press(Qt::Key_Tab);
    EXPECT_EQ(m_told.back().second, (SessionReport{3, {}, {}, 80, {}, {}})) << "what was kept before stays";
}

TEST_F(ReportStripTest, WhatIsTypedBelongsToTheSessionItWasTypedFor)
{
    field(QStringLiteral("Effort")).setFocus();
    type("8");
    m_strip.setReport(base::SessionId(8), {{}, {}, {}, 50, {}, {}}, true);
    ASSERT_EQ(m_told.size(), 1U);
    EXPECT_EQ(m_told.back(), std::pair(kSession, (SessionReport{{}, {}, {}, 80, {}, {}})));
    EXPECT_EQ(field(QStringLiteral("Effort")).text(), QStringLiteral("5"));
    press(Qt::Key_Tab);
    EXPECT_EQ(m_told.size(), 1U);
}

TEST_F(ReportStripTest, ReadingAgainKeepsWhatIsBeingTyped)
{
    field(QStringLiteral("Note")).setFocus();
    type("Late");
    m_strip.setReport(kSession, {4, {}, {}, {}, {}, {}}, true);
    EXPECT_EQ(field(QStringLiteral("Note")).text(), QStringLiteral("Late"));
    EXPECT_EQ(field(QStringLiteral("Sleep")).text(), QStringLiteral("4"));
    press(Qt::Key_Return);
    EXPECT_EQ(m_told.back().second, (SessionReport{4, {}, {}, {}, {}, "Late"}));
}

TEST_F(ReportStripTest, LinesOfANoteStandBehindEachOtherAndStayLines)
{
    const SessionReport before{{}, {}, {}, {}, {}, "Late\nBack squat: belt on"};
    m_strip.setReport(kSession, before, true);
    EXPECT_EQ(field(QStringLiteral("Note")).text(), QStringLiteral("Late · Back squat: belt on"));
    field(QStringLiteral("Note")).setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(m_told.empty());
    type(".");
    press(Qt::Key_Return);
    EXPECT_EQ(m_told.back().second.note, before.note + ".");
}

TEST_F(ReportStripTest, WhereThereIsLittleRoomItIsOneButtonUntilItIsWorkedIn)
{
    auto& button = *m_strip.findChild<common::ActionButton*>();
    EXPECT_FALSE(m_strip.isFolded());
    EXPECT_FALSE(button.isVisible());
    m_strip.setTight(true);
    EXPECT_TRUE(m_strip.isFolded());
    EXPECT_TRUE(button.isVisible());
    EXPECT_FALSE(field(QStringLiteral("Sleep")).isVisible());
    m_strip.setReport(kSession, {4, {}, {}, 75, {}, {}}, true);
    const auto labels = m_strip.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text() == QStringLiteral("effort 7.5 of 10, sleep 4 of 5");
    }));
    button.setFocus();
    press(Qt::Key_Return);
    EXPECT_FALSE(m_strip.isFolded());
    EXPECT_EQ(QApplication::focusWidget(), &field(QStringLiteral("Sleep")));
}

TEST_F(ReportStripTest, ItIsOneLineOrAButton)
{
    for (int width = 300; width <= 1200; width += 20) {
        m_strip.resize(width, 60);
        QTest::qWait(1);
        if (m_strip.isFolded()) {
            EXPECT_LT(width, 900);
            continue;
        }
        EXPECT_EQ(field(QStringLiteral("Sleep")).mapTo(&m_strip, QPoint()).y(), field(QStringLiteral("Note")).mapTo(&m_strip, QPoint()).y()) << width;
        EXPECT_LE(field(QStringLiteral("Note")).mapTo(&m_strip, QPoint(field(QStringLiteral("Note")).width(), 0)).x(), width);
    }
    m_strip.resize(300, 60);
    EXPECT_TRUE(m_strip.isFolded());
}

TEST_F(ReportStripTest, EverythingHasAName)
{
    EXPECT_GE(tests::focusableCount(m_strip), 6);
    EXPECT_EQ(tests::unnamedFocusables(m_strip), QStringList());
}

/// The strip on its page: Ada consented.
class FloorPageReportTest : public test::FloorTest {
protected:
    static exchange::StudioDocument consented()
    {
        exchange::StudioDocument document = test::floorStudio();
        clients::Profile profile;
        profile.consentOn = document.today - 10;
        document.clients.front().forms = {{document.today - 10, true, profile}};
        return document;
    }
    FloorPageReportTest() : FloorTest(consented())
    {
        m_page.resize(1440, 900);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        m_page.open({});
    }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key), modifiers); }
    SessionReport report() { return m_page.desk().client()->report; }

    const common::Look m_look;
    FloorPage m_page{{m_look, m_clock, m_acts, m_presenter}};
};

TEST_F(FloorPageReportTest, AltELeadsIntoItAndEnterBack)
{
    EXPECT_FALSE(m_page.findChild<ReportStrip*>()->isFolded());
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("8 8"));
    press(Qt::Key_E, Qt::AltModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("4"));
    EXPECT_EQ(report(), (SessionReport{4, {}, {}, {}, {}, {}}));
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("How the session felt, for Ada"));
    press(Qt::Key_Tab);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2"));
    EXPECT_EQ(report(), (SessionReport{4, 2, {}, {}, {}, {}}));
    press(Qt::Key_Return);
    auto& entry = *m_page.findChild<EntryField*>();
    EXPECT_EQ(QApplication::focusWidget(), &entry);
    EXPECT_EQ(entry.text(), QStringLiteral("8 8")) << "what is typed for the lift stays";
    m_acts.undo();
    m_page.refresh();
    EXPECT_EQ(report(), (SessionReport{4, {}, {}, {}, {}, {}}));
}

TEST_F(FloorPageReportTest, TheNoteTakesTheRoomThatIsLeftAndHoldsNoneOfIt)
{
    const int least = m_page.minimumSizeHint().width();
    m_page.resize(1900, 900);
    QTest::qWait(1);
    EXPECT_FALSE(m_page.findChild<ReportStrip*>()->isFolded());
    EXPECT_LE(m_page.minimumSizeHint().width(), least);
    m_page.resize(1200, 900);
    QTest::qWait(1);
    auto* strip = m_page.findChild<ReportStrip*>();
    EXPECT_TRUE(strip->isFolded());
    press(Qt::Key_E, Qt::AltModifier);
    QTest::qWait(1);
    for (const ReportField* field : strip->findChildren<ReportField*>()) {
        const QRect place(field->mapTo(strip, QPoint()), field->size());
        EXPECT_TRUE(strip->rect().contains(place)) << field->accessibleName().toStdString();
    }
}

TEST_F(FloorPageReportTest, FoldsOnALowPage)
{
    m_page.resize(1440, 560);
    QTest::qWait(1);
    EXPECT_TRUE(m_page.findChild<ReportStrip*>()->isFolded());
    press(Qt::Key_E, Qt::AltModifier);
    EXPECT_FALSE(m_page.findChild<ReportStrip*>()->isFolded());
    press(Qt::Key_Return);
    EXPECT_TRUE(m_page.findChild<ReportStrip*>()->isFolded());
}

}  // namespace chalk::ui::floor
