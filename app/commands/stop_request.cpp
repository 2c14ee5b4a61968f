#include "app/commands/stop_request.h"

#include <csignal>

namespace chalk::app {

namespace {

constexpr int kStopSignals[] = {SIGINT, SIGTERM, SIGHUP};

/// All that a signal handler may touch. Set by StopRequest alone.
volatile std::sig_atomic_t isStopAsked = 0;

void askToStop(int)
{
    isStopAsked = 1;
}

}  // namespace

StopRequest::StopRequest()
{
    isStopAsked = 0;
    for (const int number : kStopSignals) {
        std::signal(number, askToStop);
    }
}

StopRequest::~StopRequest()
{
    for (const int number : kStopSignals) {
        std::signal(number, SIG_DFL);
    }
}

bool StopRequest::isMade()
{
    return isStopAsked != 0;
}

}  // namespace chalk::app
