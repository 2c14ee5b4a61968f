#include "ui/trends/chart_export.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"
#include "ui/common/whole_file.h"

#include <QFile>
#include <QPainter>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

namespace {

NamedChart redBox()
{
    return {QStringLiteral("A box"), QStringLiteral("A box & more"), QStringLiteral("box"),
            [](QPainter& painter, const QRectF& area, const common::Theme&) {
                painter.fillRect(area, Qt::red);
                return HotSpots();
            },
            QSizeF(200, 100)};
}

/// The title of a drawing; empty where it is not well-formed.
QString titleOf(const QByteArray& svg)
{
    QXmlStreamReader reader(svg);
    QString title;
    while (!reader.atEnd()) {
        if (reader.readNext() == QXmlStreamReader::StartElement && reader.name() == QLatin1String("title")) {
            title = reader.readElementText();
        }
    }
    return reader.hasError() ? QString() : title;
}

}  // namespace

TEST(ChartExport, APngIsSharp)
{
    const common::Look look;
    const QImage image = QImage::fromData(pngOf(redBox(), look.theme()), "PNG");
    EXPECT_EQ(image.size(), QSize(2 * 232, 2 * 164)) << "edges, a title, and two pixels for one";
    EXPECT_EQ(image.pixelColor(image.width() / 2, image.height() - 60), QColor(Qt::red));
    EXPECT_EQ(image.pixelColor(4, 4), look.theme().surface);
}

TEST(ChartExport, AnSvgHasItsTitle)
{
    const common::Look look;
    const QByteArray svg = svgOf(redBox(), look.theme());
    EXPECT_TRUE(svg.startsWith("<?xml")) << svg.left(80).toStdString();
    EXPECT_EQ(titleOf(svg), QStringLiteral("A box & more"));
    EXPECT_TRUE(svg.contains("viewBox=\"0 0 232 164\""));
    EXPECT_TRUE(svg.contains("#ff0000"));
}

TEST(ChartExport, AFileIsWrittenWholeOrNotAtAll)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("box.svg"));
    EXPECT_FALSE(common::writeWhole(file, "one"));
    EXPECT_FALSE(common::writeWhole(file, "two"));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_EQ(written.readAll(), QByteArray("two"));
    EXPECT_TRUE(common::writeWhole(folder.filePath(QStringLiteral("no/such/folder.svg")), "three"));
}

}  // namespace chalk::ui::trends
