#include "app/commands/command.h"

#include <QCoreApplication>
#include <QDate>
#include <QHashSeed>

#include <csignal>
#include <cstdio>

namespace {

/// The day by the clock: nothing else in the program asks it.
chalk::base::Date clockDay()
{
    const QDate day = QDate::currentDate();
    return *chalk::base::Date::fromYmd(day.year(), day.month(), day.day());
}

}  // namespace

int main(int argc, char** argv)
{
    QHashSeed::setDeterministicGlobalSeed();  // the same bytes in every PDF
    std::signal(SIGXFSZ, SIG_IGN);            // a full disk is an error to report, not an end
    std::signal(SIGPIPE, SIG_IGN);
    const QCoreApplication app(argc, argv);
    QTextStream out(stdout);
    QTextStream err(stderr);
    return chalk::app::runCommand(QCoreApplication::arguments().mid(1), clockDay(), out, err);
}
