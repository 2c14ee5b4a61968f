#include "tests/ui/print/card_fixture.h"
#include "tests/ui/print/report_fixture.h"
#include "tests/ui/print/sheet_checks.h"
#include "ui/print/report_sheet.h"
#include "ui/print/sheet_layout.h"

#include <QCoreApplication>
#include <QTranslator>

#include <gtest/gtest.h>

#include <memory>

namespace chalk::ui::print {

namespace {

/// A language in which everything on paper takes twice the room.
class TwiceAsLong : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* /*comment*/, int /*n*/) const override
    {
        const QString text = QString::fromUtf8(source);
        // Formats put numbers and units together; all else are words.
        return qstrcmp(context, "Formats") == 0 ? QString() : text + QLatin1Char(' ') + text;
    }
};

}  // namespace

class LongWords : public ::testing::Test {
protected:
    LongWords() { QCoreApplication::installTranslator(m_translator.get()); }
    ~LongWords() override { QCoreApplication::removeTranslator(m_translator.get()); }

private:
    std::unique_ptr<QTranslator> m_translator = std::make_unique<TwiceAsLong>();
};

TEST_F(LongWords, NothingClipsOrOverlapsOnAnyLayout)
{
    for (const auto layout : {SheetLayout::Card, SheetLayout::FourCards, SheetLayout::Group, SheetLayout::Week}) {
        for (const auto family : {PaperFamily::Iso, PaperFamily::NorthAmerican}) {
            SheetRequest request;
            request.layout = layout;
            request.family = family;
            std::vector<sessions::CardContent> cards(4, test::crowdedCard());
            cards[0] = test::ferroCard();
            const QSizeF size = millimetresOf(paperOf(layout, family));
            const auto sheets = sheetsOf(cards, request);
            const QString flowing = test::textOf(sheets).replace(QLatin1Char('\n'), QLatin1Char(' '));
            EXPECT_TRUE(flowing.contains(QStringLiteral("rest rest")) || flowing.contains(QStringLiteral("Rest Rest"))) << flowing.toStdString();
            test::expectSheetsSound(sheets, layout == SheetLayout::Group ? size.transposed() : size, "layout " + std::to_string(static_cast<int>(layout)));
        }
    }
}

TEST_F(LongWords, NothingClipsOrOverlapsInAReport)
{
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        test::expectSheetsSound(reportSheets(test::ferroReport(), paper), millimetresOf(paper), "usual report");
        test::expectSheetsSound(reportSheets(test::crowdedReport(), paper), millimetresOf(paper), "crowded report");
    }
}

}  // namespace chalk::ui::print
