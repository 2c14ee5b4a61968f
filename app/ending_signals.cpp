#include "app/ending_signals.h"

#include <QCoreApplication>
#include <QSocketNotifier>

#include <csignal>

#include <fcntl.h>
#include <unistd.h>

namespace chalk::app {

namespace {

constexpr int kSignals[] = {SIGTERM, SIGINT, SIGHUP};

/// A signal handler may do next to nothing, so it writes a byte into this pipe, and the event loop reads it. Set by EndingSignals alone.
int endingPipe[2] = {-1, -1};

void noteSignal(int)
{
    const char byte = 0;
    [[maybe_unused]] const ssize_t written = ::write(endingPipe[1], &byte, 1);
}

}  // namespace

EndingSignals::EndingSignals()
{
    if (::pipe2(endingPipe, O_CLOEXEC | O_NONBLOCK) != 0) {
        return;  // the signals end the program as they always do
    }
    auto* notifier = new QSocketNotifier(endingPipe[0], QSocketNotifier::Read, &m_context);
    QObject::connect(notifier, &QSocketNotifier::activated, &m_context, [notifier] {
        notifier->setEnabled(false);
        QCoreApplication::quit();
    });
    for (const int number : kSignals) {
        std::signal(number, noteSignal);
    }
}

EndingSignals::~EndingSignals()
{
    for (const int number : kSignals) {
        std::signal(number, SIG_DFL);
    }
    for (int& end : endingPipe) {
        if (end >= 0) {
            ::close(end);
            end = -1;
        }
    }
}

}  // namespace chalk::app
