#include "ui/people/mapping_memory.h"

#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace chalk::ui::people {
namespace {

TEST(MappingMemory, KnowsAListByItsHeadings)
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    const auto file = exchange::inspectTable("Who,When,What,How much,How often\nAda Cole,03/04/2025,Back squat,80,8\n");
    ASSERT_TRUE(file);
    tables::TableLayout layout = file->layout;
    EXPECT_FALSE(recallMapping(settings, *file, layout));
    layout.columns = {tables::Field::Name, tables::Field::Day, tables::Field::Exercise, tables::Field::Load, tables::Field::Reps};
    layout.days = tables::DateOrder::Mdy;
    layout.unit = base::MassUnit::Pound;
    rememberMapping(settings, *file, layout);
    const auto later = exchange::inspectTable("WHO,when,What,How much,How often\nBo Lind,05/06/2025,Deadlift,90,5\n");
    tables::TableLayout recalled = later->layout;
    EXPECT_TRUE(recallMapping(settings, *later, recalled));
    EXPECT_EQ(recalled.columns, layout.columns);
    EXPECT_EQ(recalled.days, tables::DateOrder::Mdy);
    EXPECT_EQ(recalled.unit, base::MassUnit::Pound);
    const auto other = exchange::inspectTable("Who,When\nBo Lind,05/06/2025\n");
    tables::TableLayout untouched = other->layout;
    EXPECT_FALSE(recallMapping(settings, *other, untouched));
    EXPECT_EQ(untouched, other->layout);
    for (const QString& key : settings.allKeys()) {
        EXPECT_FALSE(settings.value(key).toStringList().join(QLatin1Char(' ')).contains(QStringLiteral("Ada")));
    }
}

}  // namespace
}  // namespace chalk::ui::people
