#include "core/exchange/plateau_csv.h"

#include <gtest/gtest.h>

#include <QFile>

#include <cmath>

namespace chalk::exchange {
namespace {

QByteArray simulatedText(const char* name)
{
    QFile file(QStringLiteral(CHALKRUNG_TEST_DATA "/plateau/") + QLatin1String(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    return file.readAll();
}

std::vector<JudgedCheck> simulatedChecks()
{
    const auto logs = readExposuresCsv(simulatedText("exposures.csv"));
    const auto checks = readCheckinsCsv(simulatedText("checkins.csv"));
    EXPECT_TRUE(logs && checks);
    return judgeAll(*logs, *checks);
}

/// Whether two cells are the same: reals within 1e-9, everything else by letter.
bool isSameCell(const QByteArray& one, const QByteArray& other)
{
    bool areNumbers = true;
    bool isNumber = false;
    const double first = one.toDouble(&isNumber);
    areNumbers = isNumber;
    const double second = other.toDouble(&isNumber);
    areNumbers = areNumbers && isNumber && one != "nan" && other != "nan";
    return one == other || (areNumbers && std::abs(first - second) <= 1e-9);
}

TEST(PlateauCsvWriting, TheTraceIsThatOfTheReference)
{
    const QList<QByteArray> wanted = simulatedText("trace.csv").split('\n');
    const QList<QByteArray> written = traceCsvOf(simulatedChecks()).replace("\r\n", "\n").split('\n');
    ASSERT_EQ(written.size(), wanted.size());
    EXPECT_EQ(written.front(), wanted.front());
    for (qsizetype i = 1; i < wanted.size(); ++i) {
        const QList<QByteArray> cells = written[i].split(',');
        const QList<QByteArray> reference = wanted[i].split(',');
        ASSERT_EQ(cells.size(), reference.size()) << wanted[i].constData();
        for (qsizetype j = 0; j < cells.size(); ++j) {
            EXPECT_TRUE(isSameCell(cells[j], reference[j])) << wanted[i].constData() << ": " << cells[j].constData();
        }
    }
}

TEST(PlateauCsvWriting, TheVerdictsAreTheFirstColumnsOfTheTrace)
{
    const auto judged = simulatedChecks();
    const QList<QByteArray> trace = traceCsvOf(judged).replace("\r\n", "\n").split('\n');
    const QList<QByteArray> verdicts = verdictsCsvOf(judged).replace("\r\n", "\n").split('\n');
    ASSERT_EQ(verdicts.size(), trace.size());
    for (qsizetype i = 0; i < verdicts.size(); ++i) {
        EXPECT_EQ(verdicts[i], trace[i].split(',').mid(0, 4).join(','));
    }
}

TEST(PlateauCsvWriting, QuotesNamesWhereItMust)
{
    const LiftCheck check{{"Lind, Maya", "squat"}, {*base::Date::parse("2026-11-29"), 8, 8}};
    EXPECT_EQ(verdictsCsvOf(judgeAll({}, {check})), QByteArray("client,lift,check_date,verdict\r\n\"Lind, Maya\",squat,2026-11-29,not_enough_data\r\n"));
    EXPECT_TRUE(traceCsvOf(judgeAll({}, {check})).endsWith("\"Lind, Maya\",squat,2026-11-29,not_enough_data,,,,,,,,,,,nan,,,no_exposures,0,\r\n"));
}

}  // namespace
}  // namespace chalk::exchange
