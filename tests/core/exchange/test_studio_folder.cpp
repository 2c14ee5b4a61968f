#include "core/exchange/studio_folder.h"

#include "tests/support/small_studio.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

void writeText(const QString& name, const char* text)
{
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
}

}  // namespace

TEST(StudioFolder, GivesBackTheFilesThatWereWrittenIntoIt)
{
    const QTemporaryDir folder;
    const StudioFiles files = writeStudio(test::smallStudio());
    ASSERT_TRUE(writeFilesInto(folder.filePath(QStringLiteral("deep/studio")), files));
    writeText(folder.filePath(QStringLiteral("deep/studio/clients/notes.txt")), "left alone");
    const auto read = studioFilesIn(folder.filePath(QStringLiteral("deep/studio")));
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(*read, files);
}

TEST(StudioFolder, WithoutAHeaderThereIsNoStudio)
{
    const QTemporaryDir folder;
    EXPECT_EQ(studioFilesIn(folder.path()).error().message(), QStringLiteral("studio.json: is missing"));
    EXPECT_EQ(studioFilesIn(folder.filePath(QStringLiteral("nowhere"))).error().message(), QStringLiteral("studio.json: is missing: there is no such folder"));
}

TEST(StudioFolder, AClientOfAnotherStudioIsNotWrittenOver)
{
    const QTemporaryDir folder;
    ASSERT_TRUE(QDir(folder.path()).mkpath(QStringLiteral("clients")));
    writeText(folder.filePath(QStringLiteral("clients/07-somebody-else.json")), "{}");
    const auto written = writeFilesInto(folder.path(), writeStudio(test::smallStudio()));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().file, QStringLiteral("clients/07-somebody-else.json"));
    EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("studio.json"))));
}

}  // namespace chalk::exchange
