#include "ui/print/card_dialog.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/common/look.h"

#include <QAbstractButton>
#include <QFile>
#include <QPrinter>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::print {

class CardDialogTest : public ::testing::Test {
protected:
    CardDialog& open(std::vector<sessions::CardContent> cards)
    {
        m_dialog = std::make_unique<CardDialog>(CardDialogServices{m_look, m_dialogs, m_choose}, std::move(cards), QDate(2026, 11, 24), QStringList());
        m_dialog->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_dialog.get()));
        return *m_dialog;
    }

    const common::Look m_look;
    const QTemporaryDir m_folder;
    tests::ScriptedDialogs m_dialogs;
    QString m_printTo;
    std::function<bool(QPrinter&, QWidget*)> m_choose = [this](QPrinter& printer, QWidget*) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(m_printTo);
        return !m_printTo.isEmpty();
    };
    std::unique_ptr<CardDialog> m_dialog;
};

TEST_F(CardDialogTest, ShowsEverySheetOfEveryCard)
{
    CardDialog& dialog = open({test::ferroCard(), test::crowdedCard()});
    const int count = dialog.sheetCount();
    EXPECT_GE(count, 3);
    dialog.showSheet(99);
    EXPECT_EQ(dialog.sheet(), count - 1);
    QTest::keyClick(&dialog, Qt::Key_PageUp);
    EXPECT_EQ(dialog.sheet(), count - 2);
    dialog.setFamily(PaperFamily::NorthAmerican);
    EXPECT_EQ(dialog.paper(), PaperSize::HalfLetter);
    EXPECT_EQ(tests::unnamedFocusables(dialog), QStringList());
}

TEST_F(CardDialogTest, SavesWhereThePersonSaysAndNamesThePlace)
{
    CardDialog& dialog = open({test::ferroCard()});
    const QSignalSpy made(&dialog, &CardDialog::cardsMade);
    const QString file = m_folder.filePath(QStringLiteral("a.pdf"));
    m_dialogs.paths = {file};
    QTest::keyClick(&dialog, Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(m_dialogs.askedFiles.size(), 1U);
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("card-joaquin-ferro-2026-11-24.pdf"));
    QFile saved(file);
    ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
    EXPECT_TRUE(saved.read(5).startsWith("%PDF-"));
    EXPECT_TRUE(dialog.saying().contains(file));
    EXPECT_EQ(made.count(), 1);
}

TEST_F(CardDialogTest, AFailureNamesThePlaceAndKeepsTheDialogOpen)
{
    CardDialog& dialog = open({test::ferroCard()});
    const QSignalSpy made(&dialog, &CardDialog::cardsMade);
    const QString nowhere = m_folder.filePath(QStringLiteral("no/such/folder/a.pdf"));
    m_dialogs.paths = {nowhere};
    dialog.save();
    EXPECT_TRUE(dialog.saying().contains(nowhere)) << dialog.saying().toStdString();
    EXPECT_TRUE(dialog.saying().startsWith(QStringLiteral("Not saved.")));
    EXPECT_EQ(made.count(), 0);
    EXPECT_TRUE(dialog.isVisible());
}

TEST_F(CardDialogTest, PrintsAllSheetsOrNothingWhereItWasCalledOff)
{
    CardDialog& dialog = open({test::ferroCard()});
    const QSignalSpy made(&dialog, &CardDialog::cardsMade);
    dialog.print();
    EXPECT_EQ(made.count(), 0);
    m_printTo = m_folder.filePath(QStringLiteral("printed.pdf"));
    dialog.print();
    EXPECT_EQ(made.count(), 1);
    EXPECT_GT(QFile(m_printTo).size(), 1000);
}

TEST_F(CardDialogTest, EveryLayoutIsShownOnItsPaper)
{
    CardDialog& dialog = open({test::ferroCard(), test::ferroCard(), test::ferroCard()});
    EXPECT_EQ(dialog.sheetCount(), 3);
    for (const SheetLayout layout : {SheetLayout::FourCards, SheetLayout::Group, SheetLayout::Week}) {
        dialog.setLayoutOfSheets(layout);
        EXPECT_EQ(dialog.sheetCount(), 1) << static_cast<int>(layout);
        dialog.setFamily(PaperFamily::Iso);
        EXPECT_EQ(dialog.paper(), PaperSize::A4);
        dialog.setFamily(PaperFamily::NorthAmerican);
        EXPECT_EQ(dialog.paper(), PaperSize::Letter);
        const QSizeF size = dialog.sheets().front().size;
        EXPECT_EQ(size.width() > size.height(), layout == SheetLayout::Group);
    }
}

TEST_F(CardDialogTest, InitialsAloneAreShownAndNotInTheFilesName)
{
    CardDialog& dialog = open({test::ferroCard()});
    dialog.setInitialsOnly(true);
    EXPECT_TRUE(test::textOf(dialog.sheets()).contains(QStringLiteral("J. F.")));
    EXPECT_FALSE(test::textOf(dialog.sheets()).contains(QStringLiteral("Ferro")));
    m_dialogs.paths = {m_folder.filePath(QStringLiteral("a.pdf"))};
    dialog.save();
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("cards-2026-11-24.pdf"));
}

TEST_F(CardDialogTest, OneClientAloneIsNoGroup)
{
    const auto isOffered = [](CardDialog& dialog, const char* text) {
        const auto buttons = dialog.findChildren<QAbstractButton*>();
        return std::any_of(buttons.begin(), buttons.end(), [text](const QAbstractButton* one) { return one->text() == QLatin1String(text) && one->isVisible(); });
    };
    EXPECT_FALSE(isOffered(open({test::ferroCard()}), "Group"));
    EXPECT_TRUE(isOffered(*m_dialog, "Four"));
    EXPECT_TRUE(isOffered(open({test::ferroCard(), test::crowdedCard()}), "Group"));
}

TEST_F(CardDialogTest, TheWeekIsReadWhenItIsAskedFor)
{
    CardDialog& dialog = open({test::ferroCard()});
    EXPECT_FALSE(dialog.isWholeWeek());
    dialog.setWholeWeek(true);
    EXPECT_FALSE(dialog.isWholeWeek()) << "nobody offered one";
    int reads = 0;
    dialog.offerWeek(test::ferroCard().date, [&reads] {
        ++reads;
        std::vector<sessions::CardContent> week(3, test::ferroCard());
        week[1].date = week[1].date + 1;
        week[2].date = week[2].date + 2;
        return week;
    });
    dialog.setWholeWeek(false);
    EXPECT_EQ(dialog.sheetCount(), 1);
    dialog.setLayoutOfSheets(SheetLayout::Week);
    EXPECT_TRUE(dialog.isWholeWeek());
    EXPECT_TRUE(test::textOf(dialog.sheets()).contains(QStringLiteral("Thu 26 Nov 2026")));
    dialog.setLayoutOfSheets(SheetLayout::Card);
    EXPECT_EQ(dialog.sheetCount(), 1);
    dialog.setWholeWeek(true);
    EXPECT_EQ(dialog.sheetCount(), 3);
    EXPECT_EQ(reads, 1);
    m_dialogs.paths = {m_folder.filePath(QStringLiteral("a.pdf"))};
    dialog.save();
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("cards-2026-W48.pdf"));
}

TEST_F(CardDialogTest, NoCardsIsSaid)
{
    CardDialog& dialog = open({});
    EXPECT_EQ(dialog.sheetCount(), 0);
    EXPECT_TRUE(dialog.saying().contains(QStringLiteral("no card to make")));
    dialog.save();
    dialog.print();
    EXPECT_TRUE(m_dialogs.askedFiles.empty());
}

}  // namespace chalk::ui::print
