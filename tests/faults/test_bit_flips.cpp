#include "core/store/roster_reader.h"
#include "core/store/studio_check.h"
#include "tests/faults/child_process.h"
#include "tests/faults/children.h"
#include "tests/faults/studio_content.h"
#include "tests/support/small_studio.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <iostream>
#include <map>
#include <random>

#include <unistd.h>

namespace chalk::faults {

namespace {

#ifdef __SANITIZE_ADDRESS__
constexpr int kFlips = 1000;
#else
constexpr int kFlips = 10'000;
#endif
constexpr int kFlipsAChild = 1000;
constexpr quint32 kSeedOfFlips = 1124;
constexpr unsigned kMostSecondsAFlip = 60;  // of the clock: more is a hang

QByteArray wholeFile(const QString& file)
{
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

/// One bit of a file, chosen at random.
struct Flip {
    qsizetype at = 0;
    int bit = 0;
};

std::vector<Flip> flipsIn(qsizetype size, quint32 seed, int count)
{
    std::mt19937_64 random(seed);
    std::vector<Flip> flips;
    for (int i = 0; i < count; ++i) {
        flips.push_back({static_cast<qsizetype>(random() % static_cast<quint64>(size)), static_cast<int>(random() % 8)});
    }
    return flips;
}

/// A flipped studio is opened, its roster read, and verified. What came of it: `named` where damage was found and told, `same` where everything that it holds is what
/// it was, `other` with what is not.
QString judge(const QString& file, const StudioContent& before)
{
    const auto named = [&file](const store::StoreError& error) {
        return QStringLiteral("%1 %2").arg(error.message.contains(file) ? QStringLiteral("named") : QStringLiteral("nameless")).arg(error.message);
    };
    const auto opened = store::Database::open(file, store::OpenMode::MustExist);
    if (!opened) {
        return named(opened.error());
    }
    const auto roster = store::RosterReader(**opened).read(test::smallStudioDay());
    const auto check = store::checkStudio(**opened);
    if (!check) {
        return named(check.error());
    }
    if (!check->isSound()) {
        return QStringLiteral("named ") + check->faults.front().message;
    }
    if (!roster) {
        return QStringLiteral("unreadable ") + roster.error().message;
    }
    const std::vector<ChangedValue> changes = changesBetween(before, contentOf(**opened));
    if (changes.empty()) {
        return QStringLiteral("same");
    }
    int values = 0;
    QStringList where;
    for (const ChangedValue& change : changes) {
        values += change.rows;
        where.append(change.table + QLatin1Char('.') + change.column);
    }
    return QStringLiteral("other %1 %2").arg(values).arg(where.join(QLatin1Char('+')));
}

}  // namespace

int flipBits(const QString& file, quint32 seed, int from, int count)
{
    const QByteArray original = wholeFile(file);
    const StudioContent before = contentOfFile(file);
    const QString work = file + QStringLiteral(".%1").arg(from);
    const std::vector<Flip> flips = flipsIn(original.size(), seed, from + count);
    for (std::size_t i = static_cast<std::size_t>(from); i < flips.size(); ++i) {
        ::alarm(kMostSecondsAFlip);
        for (const char* ending : {"-wal", "-shm", "-journal"}) {
            QFile::remove(work + QLatin1String(ending));
        }
        QByteArray bytes = original;
        bytes[flips[i].at] = static_cast<char>(bytes[flips[i].at] ^ (1 << flips[i].bit));
        QFile out(work);
        if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size()) {
            return 1;
        }
        out.close();
        const QByteArray line = QStringLiteral("%1 %2 ").arg(flips[i].at).arg(flips[i].bit).toUtf8() + judge(work, before).simplified().toUtf8() + '\n';
        if (::write(STDOUT_FILENO, line.constData(), static_cast<size_t>(line.size())) != line.size()) {
            return 1;
        }
    }
    return 0;
}

class BitFlipTest : public ::testing::Test {
protected:
    void take(const QString& line)
    {
        const QString outcome = line.section(QLatin1Char(' '), 2, 2);
        ++m_outcomes[outcome.toStdString()];
        if (outcome == QLatin1String("other")) {
            ++m_kinds[line.section(QLatin1Char(' '), 4).toStdString()];
            if (line.section(QLatin1Char(' '), 3, 3).toInt() > 1) {
                std::cout << "several values: " << line.toStdString() << '\n';
                ++m_severalValues;
            }
        }
        if (outcome != QLatin1String("same") && outcome != QLatin1String("other") && outcome != QLatin1String("named")) {
            ADD_FAILURE() << line.toStdString();
        }
    }

    std::map<std::string, int> m_outcomes;
    std::map<std::string, int> m_kinds;  ///< of the values that nobody can know, by table and column
    int m_severalValues = 0;
};

TEST_F(BitFlipTest, NoFlipEndsTheProgramAndDamageIsNamed)
{
    test::StudioOnTest studio;
    studio.close();
    int told = 0;
    for (int from = 0; from < kFlips; from += kFlipsAChild) {
        ChildProcess child({QStringLiteral("flip"), studio.file(), QString::number(kSeedOfFlips), QString::number(from), QString::number(kFlipsAChild)});
        QString last;
        while (const auto line = child.readLine()) {
            take(*line);
            last = *line;
            ++told;
        }
        EXPECT_EQ(child.wait(), 0) << "after the flip " << last.toStdString();
    }
    EXPECT_EQ(told, kFlips);
    for (const auto& [outcome, count] : m_outcomes) {
        std::cout << outcome << ": " << count << '\n';
    }
    for (const auto& [kind, count] : m_kinds) {
        std::cout << "  another value in " << kind << ": " << count << '\n';
    }
    EXPECT_GT(m_outcomes["named"], kFlips / 20);
    EXPECT_EQ(m_severalValues, 0) << "what is not found is one value that is as good as another";
}

}  // namespace chalk::faults
